package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/** The order in which a shear cuts a sheet of rectangles: every cut goes from edge to edge of the part it is made in. */
final class ShearPlan {
    private static final double SAME_MM = 1e-4;
    private final List<ShearCut> cuts = new ArrayList<>();

    private ShearPlan() {
    }

    /** The cuts; empty where a piece is no rectangle or no such order exists. */
    static Optional<List<ShearCut>> of(SheetSize size, List<Placement> placements) {
        if (!placements.stream().allMatch(one -> one.piece().rectangle())) {
            return Optional.empty();
        }
        List<Bounds> boxes = placements.stream().map(one -> one.outline().bounds()).toList();
        ShearPlan plan = new ShearPlan();
        return plan.cut(new Bounds(0, 0, size.lengthMm(), size.widthMm()), boxes) ? Optional.of(List.copyOf(plan.cuts)) : Optional.empty();
    }

    private boolean cut(Bounds part, List<Bounds> boxes) {
        if (boxes.isEmpty() || boxes.size() == 1 && same(part, boxes.get(0))) {
            return true;
        }
        for (boolean across : new boolean[] {true, false}) {
            Optional<Double> line = line(part, boxes, across);
            if (line.isPresent()) {
                return split(part, boxes, across, line.get());
            }
        }
        return false;
    }

    private boolean split(Bounds part, List<Bounds> boxes, boolean across, double at) {
        Bounds before = across ? new Bounds(part.minX(), part.minY(), at, part.maxY()) : new Bounds(part.minX(), part.minY(), part.maxX(), at);
        Bounds after = across ? new Bounds(at, part.minY(), part.maxX(), part.maxY()) : new Bounds(part.minX(), at, part.maxX(), part.maxY());
        cuts.add(across ? new ShearCut(new Vec2(at, part.minY()), new Vec2(at, part.maxY()))
                : new ShearCut(new Vec2(part.minX(), at), new Vec2(part.maxX(), at)));
        return cut(before, boxes.stream().filter(box -> high(box, across) <= at + SAME_MM).toList())
                && cut(after, boxes.stream().filter(box -> low(box, across) >= at - SAME_MM).toList());
    }

    /** Where it can be cut: along an edge of a piece, inside the part, through no piece. */
    private static Optional<Double> line(Bounds part, List<Bounds> boxes, boolean across) {
        return boxes.stream().flatMap(box -> Stream.of(low(box, across), high(box, across))).sorted()
                .filter(at -> at > low(part, across) + SAME_MM && at < high(part, across) - SAME_MM)
                .filter(at -> boxes.stream().allMatch(box -> high(box, across) <= at + SAME_MM || low(box, across) >= at - SAME_MM))
                .findFirst();
    }

    private static double low(Bounds box, boolean across) {
        return across ? box.minX() : box.minY();
    }

    private static double high(Bounds box, boolean across) {
        return across ? box.maxX() : box.maxY();
    }

    private static boolean same(Bounds a, Bounds b) {
        return Math.abs(a.minX() - b.minX()) + Math.abs(a.minY() - b.minY()) + Math.abs(a.maxX() - b.maxX())
                + Math.abs(a.maxY() - b.maxY()) < 4 * SAME_MM;
    }
}

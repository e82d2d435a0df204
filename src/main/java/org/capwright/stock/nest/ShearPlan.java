package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/**
 * The order in which a shear cuts a sheet of rectangles: every cut goes from edge to edge of the part it is made in. What is
 * free of pieces comes off first, the largest first, and the remnant stays whole where that is possible.
 */
final class ShearPlan {
    private static final double SAME_MM = 1e-4;
    private final List<ShearCut> cuts = new ArrayList<>();
    private final Optional<Bounds> remnant;

    private ShearPlan(Optional<Bounds> remnant) {
        this.remnant = remnant;
    }

    /** The cuts; empty where a piece is no rectangle or no such order exists. */
    static Optional<List<ShearCut>> of(SheetSize size, List<Placement> placements, Optional<Bounds> remnant) {
        if (!placements.stream().allMatch(one -> one.piece().rectangle())) {
            return Optional.empty();
        }
        List<Bounds> boxes = placements.stream().map(one -> one.outline().bounds()).toList();
        Bounds sheet = new Bounds(0, 0, size.lengthMm(), size.widthMm());
        return remnant.flatMap(rest -> new ShearPlan(remnant).order(sheet, boxes))
                .or(() -> new ShearPlan(Optional.empty()).order(sheet, boxes));
    }

    private Optional<List<ShearCut>> order(Bounds sheet, List<Bounds> boxes) {
        return cut(sheet, boxes) ? Optional.of(List.copyOf(cuts)) : Optional.empty();
    }

    /** Any cut that goes through nothing will do: what can be cut in order can still be cut in order on either side of it. */
    private boolean cut(Bounds part, List<Bounds> boxes) {
        if (boxes.isEmpty() || boxes.size() == 1 && same(part, boxes.get(0))) {
            return true;
        }
        return Stream.of(true, false).flatMap(across -> lines(part, boxes, across).map(at -> new Line(across, at)))
                .max(Comparator.comparingDouble(line -> free(part, boxes, line)))
                .filter(line -> split(part, boxes, line.across(), line.at())).isPresent();
    }

    /** A cut across the length, or along it. */
    private record Line(boolean across, double at) {
    }

    /** Area of the larger side without pieces; 0 where both hold some. */
    private static double free(Bounds part, List<Bounds> boxes, Line line) {
        double other = line.across() ? part.height() : part.width();
        boolean before = boxes.stream().allMatch(box -> low(box, line.across()) >= line.at() - SAME_MM);
        boolean after = boxes.stream().allMatch(box -> high(box, line.across()) <= line.at() + SAME_MM);
        return Math.max(before ? (line.at() - low(part, line.across())) * other : 0, after
                ? (high(part, line.across()) - line.at()) * other : 0);
    }

    private boolean split(Bounds part, List<Bounds> boxes, boolean across, double at) {
        Bounds before = across ? new Bounds(part.minX(), part.minY(), at, part.maxY())
                : new Bounds(part.minX(), part.minY(), part.maxX(), at);
        Bounds after = across ? new Bounds(at, part.minY(), part.maxX(), part.maxY())
                : new Bounds(part.minX(), at, part.maxX(), part.maxY());
        cuts.add(across ? new ShearCut(new Vec2(at, part.minY()), new Vec2(at, part.maxY()))
                : new ShearCut(new Vec2(part.minX(), at), new Vec2(part.maxX(), at)));
        return cut(before, boxes.stream().filter(box -> high(box, across) <= at + SAME_MM).toList())
                && cut(after, boxes.stream().filter(box -> low(box, across) >= at - SAME_MM).toList());
    }

    /** Where it can be cut: along an edge of a piece, inside the part, through no piece and not through the remnant. */
    private Stream<Double> lines(Bounds part, List<Bounds> boxes, boolean across) {
        return boxes.stream().flatMap(box -> Stream.of(low(box, across), high(box, across))).sorted()
                .filter(at -> at > low(part, across) + SAME_MM && at < high(part, across) - SAME_MM)
                .filter(at -> boxes.stream().allMatch(box -> clear(box, across, at)))
                .filter(at -> remnant.filter(rest -> !apart(rest, part)).map(rest -> clear(rest, across, at)).orElse(true));
    }

    private static boolean clear(Bounds box, boolean across, double at) {
        return high(box, across) <= at + SAME_MM || low(box, across) >= at - SAME_MM;
    }

    private static boolean apart(Bounds a, Bounds b) {
        return a.minX() > b.maxX() - SAME_MM || b.minX() > a.maxX() - SAME_MM || a.minY() > b.maxY() - SAME_MM
                || b.minY() > a.maxY() - SAME_MM;
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

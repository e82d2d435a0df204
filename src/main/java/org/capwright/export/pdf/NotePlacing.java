package org.capwright.export.pdf;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.capwright.geom.Vec2;

/**
 * Finds heights for references in a column: near the heights of their places, so that leaders do not cross and do not run along
 * lines of the drawing, where they would be taken for a part of it (leaders are not parallel to lines next to them: ISO 128-22
 * practice, from memory). Each reference in turn takes the height that is best as the others stand, until none gains.
 */
final class NotePlacing {
    private static final double CROSSING_COST = 4;
    private static final double ALONG_COST = 8;
    private static final int STEPS = 12;
    private static final int ROUNDS = 6;

    private final List<Note> notes;
    private final double endX;
    private final double least;
    private final double most;
    private final List<Vec2[]> ink;
    private final double[] moved;

    /**
     * A column to fill.
     *
     * @param notes its references
     * @param endX where leaders end
     * @param least lowest middle of a reference
     * @param most highest middle of a reference
     * @param ink lines drawn
     */
    NotePlacing(List<Note> notes, double endX, double least, double most, List<Vec2[]> ink) {
        this.notes = notes;
        this.endX = endX;
        this.least = least;
        this.most = most;
        this.ink = ink;
        this.moved = new double[notes.size()];
    }

    /** Heights of the middles of the references, in their own order. */
    double[] heights() {
        double best = cost(placed());
        for (int round = 0; round < ROUNDS; round++) {
            double before = best;
            for (int i = 0; i < notes.size(); i++) {
                best = improve(i, best);
            }
            if (best >= before) {
                break;
            }
        }
        return placed();
    }

    private double improve(int index, double cost) {
        double best = cost;
        double kept = moved[index];
        for (int step = -STEPS; step <= STEPS; step++) {
            moved[index] = step * DrawingStyle.ROW_MM / 2;
            double here = cost(placed());
            if (here < best - 1e-9) {
                best = here;
                kept = moved[index];
            }
        }
        moved[index] = kept;
        return best;
    }

    private double[] placed() {
        List<Integer> order = IntStream.range(0, notes.size()).boxed().sorted(Comparator.comparingDouble(this::wanted)
                .thenComparingDouble(i -> -Math.abs(endX - notes.get(i).at().x()))).toList();
        List<Double> sizes = order.stream().map(i -> notes.get(i).heightMm()).toList();
        List<Double> spread = LabelSpread.spread(order.stream().map(this::wanted).toList(), sizes);
        List<Double> within = LabelSpread.within(spread, sizes, least, most);
        double[] heights = new double[notes.size()];
        IntStream.range(0, order.size()).forEach(k -> heights[order.get(k)] = within.get(k));
        return heights;
    }

    private double wanted(int index) {
        return notes.get(index).at().y() + moved[index];
    }

    private double cost(double[] heights) {
        double cost = 0;
        List<Vec2> ends = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            Vec2 at = notes.get(i).at();
            Vec2 end = new Vec2(endX, heights[i]);
            double off = (heights[i] - at.y()) / DrawingStyle.ROW_MM;
            cost += off * off / 8 + (alongInk(at, end) ? ALONG_COST : 0);
            for (int j = 0; j < i; j++) {
                cost += crosses(at, end, notes.get(j).at(), ends.get(j)) ? CROSSING_COST : 0;
            }
            ends.add(end);
        }
        return cost;
    }

    private static boolean crosses(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
        return Line2D.linesIntersect(a.x(), a.y(), b.x(), b.y(), c.x(), c.y(), d.x(), d.y());
    }

    private boolean alongInk(Vec2 at, Vec2 end) {
        return ink.stream().anyMatch(line -> Leader.along(at, end, line[0], line[1]));
    }
}

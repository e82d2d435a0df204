package org.capwright.export.pdf;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.capwright.geom.Vec2;

/**
 * Finds heights for references in a column: near the heights of their places, so that leaders do not cross and do not run along
 * lines of the drawing, where they would be taken for a part of it (leaders are not parallel to lines next to them: ISO 128-22
 * practice, from memory). References move at random, first freely, then less and less where that makes things worse
 * (simulated annealing), always by the same numbers, so that a page is the same each time.
 */
final class NotePlacing {
    private static final double CROSSING_COST = 10;
    private static final double ALONG_COST = 12;
    private static final double MEETING_COST = 4;
    private static final double NEAR_PLACE_MM = 1.5;
    private static final double HOT = 8;
    private static final double COLD = 0.02;
    private static final int MOVES = 6000;
    private static final int STEPS = 10;

    private final List<Note> notes;
    private final double endX;
    private final double least;
    private final double most;
    private final List<Vec2[]> ink;
    private final List<Map<Integer, Boolean>> along;
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
        // a leader cannot run along what is too short
        this.ink = ink.stream().filter(line -> line[0].distance(line[1]) >= Leader.LONG_MM).toList();
        this.along = notes.stream().<Map<Integer, Boolean>>map(note -> new HashMap<>()).toList();
        this.moved = new double[notes.size()];
    }

    /** Heights of the middles of the references, in their own order. */
    double[] heights() {
        double[] best = placed();
        double bestCost = cost(best);
        double cost = bestCost;
        Random random = new Random(1);
        for (int move = 0; move < MOVES && bestCost > 0 && !notes.isEmpty(); move++) {
            double heat = HOT * Math.pow(COLD / HOT, (double) move / MOVES);
            int index = random.nextInt(notes.size());
            double before = moved[index];
            moved[index] = random.nextBoolean() ? 0 : (random.nextInt(2 * STEPS + 1) - STEPS) * DrawingStyle.ROW_MM / 2;
            double[] heights = placed();
            double now = cost(heights);
            if (now > cost && random.nextDouble() >= Math.exp((cost - now) / heat)) {
                moved[index] = before;
                continue;
            }
            cost = now;
            if (now < bestCost) {
                bestCost = now;
                best = heights;
            }
        }
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
            cost += off * off / 8 + (alongInk(i, heights[i]) ? ALONG_COST : 0);
            for (int j = 0; j < i; j++) {
                Vec2 other = notes.get(j).at();
                cost += crosses(at, end, other, ends.get(j)) ? CROSSING_COST : 0;
                cost += meets(at, end, other) || meets(other, ends.get(j), at) ? MEETING_COST : 0;
            }
            ends.add(end);
        }
        return cost;
    }

    private static boolean crosses(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
        return Line2D.linesIntersect(a.x(), a.y(), b.x(), b.y(), c.x(), c.y(), d.x(), d.y());
    }

    /** Whether a leader runs over the place of another reference. */
    private static boolean meets(Vec2 from, Vec2 to, Vec2 place) {
        return Line2D.ptSegDist(from.x(), from.y(), to.x(), to.y(), place.x(), place.y()) < NEAR_PLACE_MM
                && from.distance(place) > NEAR_PLACE_MM;
    }

    /** Whether a reference's leader runs along a line; what is found is kept, to a tenth of a millimetre. */
    private boolean alongInk(int index, double height) {
        return along.get(index).computeIfAbsent((int) Math.round(height * 10), tenths -> {
            Vec2 end = new Vec2(endX, tenths / 10.0);
            return ink.stream().anyMatch(line -> Leader.along(notes.get(index).at(), end, line[0], line[1]));
        });
    }
}

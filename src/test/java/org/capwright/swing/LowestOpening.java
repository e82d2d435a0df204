package org.capwright.swing;

import java.util.function.ToDoubleFunction;
import org.capwright.part.Leaf;

/** The least of a value over the swing, by rows of openings: a coarse one, then finer ones round its lowest valleys. */
record LowestOpening(Leaf leaf, double stopRad, int openings) {
    private static final int FINER = 8;
    private static final double ENOUGH_RAD = 1e-5;
    /** Valleys this much over the lowest are looked into as well: more than few points can be wrong by. */
    private static final double ALSO_MM = 0.4;

    /** The least value: in the coarse row with few points, near its valleys with many. */
    double least(ToDoubleFunction<Pose> few, ToDoubleFunction<Pose> many) {
        double step = stopRad / openings;
        double[] values = new double[openings + 1];
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= openings; i++) {
            values[i] = few.applyAsDouble(Pose.of(leaf, i * step));
            lowest = Math.min(lowest, values[i]);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= openings; i++) {
            boolean valley = (i == 0 || values[i] < values[i - 1]) && (i == openings || values[i] <= values[i + 1]);
            if (valley && values[i] < lowest + ALSO_MM) {
                best = Math.min(best, zoom(many, Math.max(0, i - 1) * step, Math.min(openings, i + 1) * step));
            }
        }
        return best;
    }

    double least(ToDoubleFunction<Pose> at) {
        return least(at, at);
    }

    private double zoom(ToDoubleFunction<Pose> at, double from, double to) {
        double a = from;
        double b = to;
        double best = Double.POSITIVE_INFINITY;
        while (b - a > ENOUGH_RAD) {
            double where = a;
            double lowest = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= FINER; i++) {
                double open = a + (b - a) * i / FINER;
                double value = at.applyAsDouble(Pose.of(leaf, open));
                if (value < lowest) {
                    lowest = value;
                    where = open;
                }
            }
            best = Math.min(best, lowest);
            double half = (b - a) / FINER;
            a = Math.max(from, where - half);
            b = Math.min(to, where + half);
        }
        return best;
    }
}

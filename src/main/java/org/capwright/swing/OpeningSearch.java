package org.capwright.swing;

import java.util.function.DoubleUnaryOperator;
import org.capwright.geom.GoldenSection;

/**
 * Finds the opening at which a clearance is least: samples the swing, then narrows down round every sample that is lower
 * than its neighbours. The clearances here are smooth but for a few kinks; between samples a degree or two apart they have one
 * valley at most.
 */
final class OpeningSearch {
    /** Enough where a clearance is one smooth function. */
    static final int SMOOTH = 60;
    /** Enough where it is the least of several, each with a valley of its own. */
    static final int KINKED = 240;
    private static final double ENOUGH_RAD = 1e-5;

    private OpeningSearch() {
    }

    /** Opening in [0, stop] at which a value is lowest. */
    static double lowest(DoubleUnaryOperator value, double stopRad, int samples) {
        double step = stopRad / samples;
        double[] sampled = new double[samples + 1];
        for (int i = 0; i <= samples; i++) {
            sampled[i] = value.applyAsDouble(i * step);
        }
        double best = 0;
        double bestValue = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= samples; i++) {
            if (valley(sampled, i)) {
                double open = worthNarrowing(sampled, i, bestValue)
                        ? narrow(value, Math.max(0, i - 1) * step, Math.min(samples, i + 1) * step, i * step) : i * step;
                double there = value.applyAsDouble(open);
                if (there < bestValue) {
                    best = open;
                    bestValue = there;
                }
            }
        }
        return best;
    }

    private static boolean valley(double[] sampled, int i) {
        return (i == 0 || sampled[i] <= sampled[i - 1]) && (i == sampled.length - 1 || sampled[i] <= sampled[i + 1])
                && Double.isFinite(sampled[i]);
    }

    /** Within one step a valley is not deeper below its lowest sample than its neighbours stand above it. */
    private static boolean worthNarrowing(double[] sampled, int i, double bestValue) {
        double left = i == 0 ? sampled[i] : sampled[i - 1];
        double right = i == sampled.length - 1 ? sampled[i] : sampled[i + 1];
        double rise = Math.max(left, right) - sampled[i];
        return !Double.isFinite(rise) || sampled[i] - rise < bestValue;
    }

    private static double narrow(DoubleUnaryOperator value, double from, double to, double middle) {
        double found = GoldenSection.lowest(value, from, to, ENOUGH_RAD);
        return value.applyAsDouble(found) <= value.applyAsDouble(middle) ? found : middle;
    }
}

package org.capwright.swing;

import java.util.function.DoubleUnaryOperator;
import org.capwright.geom.GoldenSection;

/**
 * Finds the opening at which a clearance is least: samples the swing, then narrows down round every sample that is lower
 * than its neighbours. The clearances here are smooth but for a few kinks; between samples a degree or two apart they have one
 * valley at most.
 */
final class OpeningSearch {
    private static final int SAMPLES = 60;
    private static final double ENOUGH_RAD = 1e-5;

    private OpeningSearch() {
    }

    /** Opening in [0, stop] at which a value is lowest. */
    static double lowest(DoubleUnaryOperator value, double stopRad) {
        return lowest(value, 0, stopRad, SAMPLES, ENOUGH_RAD);
    }

    /** Where in [from, to] a value is lowest, sampled so many times; the first sample where it is infinite everywhere. */
    static double lowest(DoubleUnaryOperator value, double from, double to, int samples, double enough) {
        double step = (to - from) / samples;
        double[] sampled = new double[samples + 1];
        for (int i = 0; i <= samples; i++) {
            sampled[i] = value.applyAsDouble(from + i * step);
        }
        double best = from;
        double bestValue = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= samples; i++) {
            if (valley(sampled, i)) {
                double at = from + i * step;
                double open = worthNarrowing(sampled, i, bestValue)
                        ? narrow(value, Math.max(from, at - step), Math.min(to, at + step), at, enough) : at;
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

    private static double narrow(DoubleUnaryOperator value, double from, double to, double middle, double enough) {
        double found = GoldenSection.lowest(value, from, to, enough);
        return value.applyAsDouble(found) <= value.applyAsDouble(middle) ? found : middle;
    }
}

package org.capwright.swing;

import java.util.function.DoubleUnaryOperator;
import org.capwright.geom.GoldenSection;

/**
 * Finds where along an edge a clearance is least: samples it, then narrows down round every sample that is lower than its
 * neighbours and may lead to the lowest of all.
 */
final class EdgeSearch {
    private EdgeSearch() {
    }

    /** Where in [from, to] a value is lowest; the nearer end where it is infinite everywhere. */
    static double lowest(DoubleUnaryOperator value, double from, double to, int samples, double enough) {
        double step = (to - from) / samples;
        double[] sampled = new double[samples + 1];
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= samples; i++) {
            sampled[i] = value.applyAsDouble(from + i * step);
            lowest = Math.min(lowest, sampled[i]);
        }
        double best = from;
        double bestValue = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= samples; i++) {
            if (worthNarrowing(sampled, i, lowest)) {
                double at = from + i * step;
                double found = GoldenSection.lowest(value, Math.max(from, at - step), Math.min(to, at + step), enough);
                double there = value.applyAsDouble(found);
                best = sampled[i] < Math.min(there, bestValue) ? at : there < bestValue ? found : best;
                bestValue = Math.min(bestValue, Math.min(sampled[i], there));
            }
        }
        return best;
    }

    /** Within one step a valley is not deeper below its lowest sample than its higher neighbour stands above it. */
    private static boolean worthNarrowing(double[] sampled, int i, double lowest) {
        double left = sampled[Math.max(0, i - 1)];
        double right = sampled[Math.min(sampled.length - 1, i + 1)];
        if (!Double.isFinite(sampled[i]) || sampled[i] > left || sampled[i] > right) {
            return false;
        }
        double rise = Math.max(left, right) - sampled[i];
        return !Double.isFinite(rise) || sampled[i] - rise <= lowest;
    }
}

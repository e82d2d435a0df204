package org.capwright.fitup.tolerance;

import java.util.ArrayList;
import java.util.List;

/**
 * How many builds have which margin.
 *
 * @param fromMm lower end of the first bin
 * @param stepMm width of each bin
 * @param counts builds in each bin
 */
public record Histogram(double fromMm, double stepMm, List<Integer> counts) {
    private static final int BINS = 40;

    /** Keeps its own copy. */
    public Histogram {
        counts = List.copyOf(counts);
    }

    /** Equal bins from the least to the largest of sorted values; a single bin where they are all the same. */
    static Histogram of(double[] sorted) {
        double from = sorted[0];
        double step = (sorted[sorted.length - 1] - from) / BINS;
        if (!(step > 0)) {
            return new Histogram(from, 0, List.of(sorted.length));
        }
        int[] counts = new int[BINS];
        for (double value : sorted) {
            counts[Math.min(BINS - 1, (int) ((value - from) / step))]++;
        }
        List<Integer> list = new ArrayList<>();
        for (int count : counts) {
            list.add(count);
        }
        return new Histogram(from, step, list);
    }
}

package org.capwright.fitup.tolerance;

/**
 * A percentile of a margin.
 *
 * @param mm the margin that this share of builds stays below
 * @param errorMm its sampling error, one standard deviation: half of what lies between the order statistics
 *                {@code n p - sqrt(n p (1 - p))} and {@code n p + sqrt(n p (1 - p))}, whatever the distribution
 */
public record Percentile(double mm, double errorMm) {
    /** A percentile of sorted values, interpolated between order statistics. */
    static Percentile of(double[] sorted, double share) {
        double middle = share * (sorted.length - 1);
        double width = Math.sqrt(sorted.length * share * (1 - share));
        return new Percentile(at(sorted, middle), (at(sorted, middle + width) - at(sorted, middle - width)) / 2);
    }

    private static double at(double[] sorted, double rank) {
        double inside = Math.max(0, Math.min(sorted.length - 1, rank));
        int low = (int) Math.floor(inside);
        int high = Math.min(sorted.length - 1, low + 1);
        return sorted[low] + (sorted[high] - sorted[low]) * (inside - low);
    }
}

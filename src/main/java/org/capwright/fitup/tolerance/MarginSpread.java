package org.capwright.fitup.tolerance;

import java.util.List;

/**
 * How one margin spreads over the builds. A margin is a clearance less its limit.
 *
 * @param id name of its check, such as {@code leaf.1.hood}; {@code least} for the least of all in each build
 * @param words the same for people
 * @param limitMm what the check asks for; 0 for the least of all
 * @param share share of builds in which it is not negative
 * @param p01 1st percentile
 * @param p05 5th percentile
 * @param p50 median
 * @param histogram builds by margin
 * @param shares what makes it spread, the largest first
 */
public record MarginSpread(String id, String words, double limitMm, double share, Percentile p01, Percentile p05, Percentile p50,
                           Histogram histogram, List<VarianceShare> shares) {
    /** Keeps its own copy. */
    public MarginSpread {
        shares = List.copyOf(shares);
    }
}

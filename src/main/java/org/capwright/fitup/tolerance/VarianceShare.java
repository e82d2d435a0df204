package org.capwright.fitup.tolerance;

/**
 * How much of a margin's spread one tolerance makes.
 *
 * @param source the tolerance
 * @param share variance of the margin with this tolerance alone, over the sum of all such variances; exact where the tolerances add
 *              up, as they do for a margin that is linear in them
 */
public record VarianceShare(Source source, double share) {
}

package org.capwright.fitup;

/**
 * What is left of a reading.
 *
 * @param reading the reading
 * @param mm reading less fit
 * @param withoutMm reading less the fit to all the others; NaN where the others do not support the same fit
 * @param score the same over its standard deviation, that of the fit included; NaN likewise
 * @param suspect whether it disagrees with the rest
 */
public record Residual(Reading reading, double mm, double withoutMm, double score, boolean suspect) {
}

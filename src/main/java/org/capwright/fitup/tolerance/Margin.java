package org.capwright.fitup.tolerance;

/**
 * A margin that the run follows.
 *
 * @param id name of its check, such as {@code leaf.1.hood}
 * @param words the same for people
 * @param limitMm what the check asks for
 * @param ofHood whether it is the clearance of leaf and hood, which a wider annulus widens one to one
 */
record Margin(String id, String words, double limitMm, boolean ofHood) {
}

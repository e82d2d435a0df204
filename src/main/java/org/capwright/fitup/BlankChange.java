package org.capwright.fitup;

/**
 * A blank that changes because other parts are held.
 *
 * @param id the blank's short name, such as {@code leaf-1}
 * @param name its name for people
 * @param oldLengthMm length drawn
 * @param oldWidthMm width drawn
 * @param newLengthMm length to cut
 * @param newWidthMm width to cut
 */
public record BlankChange(String id, String name, double oldLengthMm, double oldWidthMm, double newLengthMm, double newWidthMm) {
}

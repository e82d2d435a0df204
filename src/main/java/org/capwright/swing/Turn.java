package org.capwright.swing;

/**
 * An opening with its sine and cosine, found once.
 *
 * @param rad the opening
 * @param sine its sine
 * @param cosine its cosine
 */
public record Turn(double rad, double sine, double cosine) {
    /**
     * An opening.
     *
     * @param openRad the opening
     * @return with sine and cosine
     */
    public static Turn of(double openRad) {
        return new Turn(openRad, Math.sin(openRad), Math.cos(openRad));
    }
}

package org.capwright.metal;

/**
 * A seam along a cylinder.
 *
 * @param kind how it is closed
 * @param widthMm width of the lap, or of the lock's pocket; no matter for a butt seam
 */
public record Seam(SeamKind kind, double widthMm) {
    /**
     * What it adds to the blank: nothing for a butt seam, the lap, or three pockets of a grooved lock (US Navy Steelworker
     * manual; the small extra for the thickness is left to the shop).
     *
     * @return mm
     */
    public double allowanceMm() {
        return switch (kind) {
            case BUTT -> 0;
            case LAP -> widthMm;
            case LOCK -> 3 * widthMm;
        };
    }
}

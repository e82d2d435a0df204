package org.capwright.metal;

/**
 * A stiffening bead in the form of a circular arc.
 *
 * @param widthMm width across its mouth, w
 * @param depthMm depth, q, at most w/2
 */
public record Bead(double widthMm, double depthMm) {
    /** Refuses a bead deeper than a half round. */
    public Bead {
        if (!(depthMm > 0 && depthMm <= widthMm / 2)) {
            throw new IllegalArgumentException("a bead's depth must be over 0 and at most half its width, not "
                    + depthMm + " mm on " + widthMm + " mm");
        }
    }

    /**
     * Radius of its arc: {@code (w^2/4 + q^2) / (2 q)}.
     *
     * @return mm
     */
    public double arcRadiusMm() {
        return (widthMm * widthMm / 4 + depthMm * depthMm) / (2 * depthMm);
    }

    /**
     * What it takes of the sheet's width: arc less chord, {@code 2 rho asin(w / (2 rho)) - w}.
     *
     * @return mm
     */
    public double takeUpMm() {
        return 2 * arcRadiusMm() * Math.asin(Math.min(1, widthMm / (2 * arcRadiusMm()))) - widthMm;
    }

    /**
     * Depth of the bead at a distance from its middle: the arc's height over its chord there.
     *
     * @param offMm distance from the bead's middle, either way
     * @return mm, 0 outside the bead
     */
    public double depthAtMm(double offMm) {
        if (Math.abs(offMm) >= widthMm / 2) {
            return 0;
        }
        double radius = arcRadiusMm();
        return Math.sqrt(radius * radius - offMm * offMm) - (radius - depthMm);
    }
}

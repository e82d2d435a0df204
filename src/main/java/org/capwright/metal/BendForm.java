package org.capwright.metal;

/**
 * The handbook's forms for a 90-degree bend allowance, {@code c T + 1.57 R}; other angles in proportion. Machinery's
 * Handbook, Bending Sheet Metal (from memory). Each is a neutral-axis factor, c over a quarter turn.
 */
public enum BendForm {
    /** Soft brass and copper. */
    SOFT(.55),
    /** Half-hard copper and brass, soft steel, aluminium. */
    HALF_HARD(.64),
    /** Hard copper, bronze, cold-rolled and spring steel. */
    HARD(.71);

    private final double thicknesses;

    BendForm(double thicknesses) {
        this.thicknesses = thicknesses;
    }

    /**
     * Share of the thickness in the allowance of a 90-degree bend.
     *
     * @return c
     */
    public double thicknesses() {
        return thicknesses;
    }

    /**
     * The neutral-axis factor that gives the form: c / (pi/2).
     *
     * @return k
     */
    public double neutralFactor() {
        return thicknesses / (Math.PI / 2);
    }
}

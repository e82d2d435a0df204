package org.capwright.blank;

/** How close chords keep to a curve that is not an arc. */
public final class CurveTolerance {
    /** Largest distance between chord and curve, mm. */
    public static final double MM = 0.005;

    private CurveTolerance() {
    }
}

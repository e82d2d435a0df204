package org.capwright.part;

/**
 * The part of a disc about the origin between two chords x = from and x = to, in closed form (elementary integrals of
 * the circular segment).
 */
public final class CircularStrip {
    private CircularStrip() {
    }

    /**
     * Area of the strip, the integral of {@code 2 sqrt(R^2 - x^2)}.
     *
     * @param radiusMm R, mm
     * @param fromMm lower chord, within the disc
     * @param toMm upper chord, within the disc
     * @return mm2
     */
    public static double areaMm2(double radiusMm, double fromMm, double toMm) {
        return primitive(radiusMm, toMm) - primitive(radiusMm, fromMm);
    }

    /**
     * First moment of the strip about the y axis, the integral of {@code 2 x sqrt(R^2 - x^2)}.
     *
     * @param radiusMm R, mm
     * @param fromMm lower chord, within the disc
     * @param toMm upper chord, within the disc
     * @return mm3
     */
    public static double momentMm3(double radiusMm, double fromMm, double toMm) {
        return 2.0 / 3 * (Math.pow(half(radiusMm, fromMm), 3) - Math.pow(half(radiusMm, toMm), 3));
    }

    private static double primitive(double r, double x) {
        return x * half(r, x) + r * r * Math.asin(Math.max(-1, Math.min(1, x / r)));
    }

    /** Half the chord at x. */
    private static double half(double r, double x) {
        return Math.sqrt(Math.max(0, r * r - x * x));
    }
}

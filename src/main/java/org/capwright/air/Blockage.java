package org.capwright.air;

import org.capwright.part.Cap;
import org.capwright.part.CircularStrip;
import org.capwright.part.Gutter;

/**
 * What the gutters take from the bore.
 *
 * @param boreAreaMm2 area of the sleeve's inside
 * @param freeAreaMm2 the same less the strips under all gutters, outside to outside
 */
public record Blockage(double boreAreaMm2, double freeAreaMm2) {
    /** The blockage of a cap. */
    static Blockage of(Cap cap) {
        double radius = cap.sleeve().insideRadiusMm();
        double bore = Math.PI * radius * radius;
        double strips = 0;
        for (Gutter gutter : cap.gutters()) {
            strips += Cap.mirrored(gutter.number()) * stripMm2(gutter, radius);
        }
        return new Blockage(bore, bore - strips);
    }

    private static double stripMm2(Gutter gutter, double boreRadiusMm) {
        double half = gutter.outsideWidthMm() / 2;
        return CircularStrip.areaMm2(boreRadiusMm, gutter.jointMm() - half, gutter.jointMm() + half);
    }

    /**
     * Free area as a share of the bore.
     *
     * @return between 0 and 1
     */
    public double freeShare() {
        return freeAreaMm2 / boreAreaMm2;
    }

    /**
     * Loss by Borda-Carnot: the air passes the gutters at {@code V_f = V A / A_f} and widens at once to the bore again, losing
     * {@code rho (V_f - V)^2 / 2 = rho V^2 / 2 (A / A_f - 1)^2}. Taken without loss in the narrowing and without a vena contracta,
     * so it is on the low side for square gutters; the open leaves are left out. An estimate.
     *
     * @param velocityPressurePa {@code rho V^2 / 2} in the bore, Pa
     * @return Pa
     */
    public double lossPa(double velocityPressurePa) {
        double widening = boreAreaMm2 / freeAreaMm2 - 1;
        return velocityPressurePa * widening * widening;
    }
}

package org.capwright.part;

import org.capwright.metal.Metal;

/**
 * A pivot rod, solid round bar, welded on top of a leaf.
 *
 * @param number the number of its leaf
 * @param metal what it is cut from
 * @param diameterMm diameter
 * @param axisMm its axis, x
 * @param axisZMm its axis, z
 * @param lengthMm length over all: {@code 2 (y_p + doubler + bushing flange + play + washer)}
 */
public record PivotRod(int number, Metal metal, double diameterMm, double axisMm, double axisZMm, double lengthMm) {
    /**
     * Length of a rod.
     *
     * @param faceYMm inner face of its doublers, y_p
     * @param doublerMm doubler thickness
     * @param flangeMm bushing flange thickness
     * @param playMm end play on each side
     * @param washerMm washer thickness
     * @return mm
     */
    public static double lengthMm(double faceYMm, double doublerMm, double flangeMm, double playMm, double washerMm) {
        return 2 * (faceYMm + doublerMm + flangeMm + playMm + washerMm);
    }

    /**
     * Mass.
     *
     * @return kg
     */
    public double massKg() {
        return Math.PI / 4 * diameterMm * diameterMm * lengthMm * 1e-9 * metal.densityKgPerM3();
    }
}

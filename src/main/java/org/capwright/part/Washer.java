package org.capwright.part;

import org.capwright.metal.Metal;

/**
 * The washer welded to each end of a rod.
 *
 * @param metal as the rods
 * @param outsideMm outside diameter
 * @param boreMm bore: the rod's diameter
 * @param thicknessMm thickness
 */
public record Washer(Metal metal, double outsideMm, double boreMm, double thicknessMm) {
    /**
     * Mass.
     *
     * @return kg
     */
    public double massKg() {
        return Math.PI / 4 * (outsideMm * outsideMm - boreMm * boreMm) * thicknessMm * 1e-9 * metal.densityKgPerM3();
    }
}

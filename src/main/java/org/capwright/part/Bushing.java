package org.capwright.part;

/**
 * A flanged bushing, one at each end of each rod. Those of one joint are alike; of another joint they may be longer.
 *
 * @param boreMm bore
 * @param outsideMm outside diameter of its body: the hole it needs
 * @param flangeOutsideMm outside diameter of its flange
 * @param flangeMm thickness of its flange
 * @param lengthMm length of its body under the flange
 */
public record Bushing(double boreMm, double outsideMm, double flangeOutsideMm, double flangeMm, double lengthMm) {
    /** Density of oil-filled bronze, from memory: 6.6 to 7.2 g/cm3 by grade. */
    private static final double DENSITY_KG_PER_M3 = 6900;

    /**
     * Mass.
     *
     * @return kg, an estimate: the grade decides the density
     */
    public double massKg() {
        double body = outsideMm * outsideMm - boreMm * boreMm;
        double flange = flangeOutsideMm * flangeOutsideMm - boreMm * boreMm;
        return Math.PI / 4 * (body * lengthMm + flange * flangeMm) * 1e-9 * DENSITY_KG_PER_M3;
    }
}

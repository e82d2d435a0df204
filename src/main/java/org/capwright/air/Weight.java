package org.capwright.air;

/** Weight of a mass. */
final class Weight {
    /** Standard gravity, exact by definition (General Conference on Weights and Measures, 1901). */
    private static final double GRAVITY_M_PER_S2 = 9.80665;

    private Weight() {
    }

    /** Weight, N, of a mass in kg. */
    static double newtons(double massKg) {
        return massKg * GRAVITY_M_PER_S2;
    }
}

package org.capwright.air;

import java.util.OptionalDouble;

/**
 * Whether a leaf falls shut by itself, the fan off.
 *
 * @param leastMomentNm least closing moment from closed to the stop
 * @param frictionNm friction of its bushings
 */
public record Closing(double leastMomentNm, double frictionNm) {
    /**
     * Friction of the bushings, {@code mu W r}. W is leaf and rod: the rod is welded to the leaf and its weight, which makes no
     * moment, rests in the bushings too.
     *
     * @param friction friction factor, mu
     * @param weightN weight that the bushings carry, W
     * @param rodRadiusMm rod radius, r
     * @return N m
     */
    public static double frictionNm(double friction, double weightN, double rodRadiusMm) {
        return friction * weightN * rodRadiusMm * 1e-3;
    }

    /**
     * Closing ratio: least closing moment over friction. Below 1 the leaf sticks open.
     *
     * @return the ratio; empty where the job says there is no friction
     */
    public OptionalDouble ratio() {
        return frictionNm > 0 ? OptionalDouble.of(leastMomentNm / frictionNm) : OptionalDouble.empty();
    }
}

package org.capwright.air;

import org.capwright.job.AirInputs;
import org.capwright.part.Cap;

/**
 * What comes up the sleeve while the fan runs. One velocity over the whole bore: an estimate.
 *
 * @param m3PerS flow, Q
 * @param assumed whether the flow was left to auto, and so is a guess
 * @param boreRadiusMm sleeve inside radius, R_si
 * @param densityKgPerM3 density, rho
 */
public record StackFlow(double m3PerS, boolean assumed, double boreRadiusMm, double densityKgPerM3) {
    /**
     * Velocity that an auto flow assumes: 3000 ft/min, the least discharge velocity that ANSI/AIHA Z9.5 asks of laboratory
     * exhaust.
     */
    public static final double AUTO_VELOCITY_M_PER_S = 3000 * 0.3048 / 60;

    /**
     * The flow of a cap's job.
     *
     * @param cap the cap
     * @return typed, or by the auto velocity
     */
    static StackFlow of(Cap cap) {
        double radiusMm = cap.sleeve().insideRadiusMm();
        double density = AirDensity.kgPerM3(cap.job().get(AirInputs.TEMPERATURE), cap.job().get(AirInputs.ALTITUDE));
        return cap.job().find(AirInputs.FLOW)
                .map(flow -> new StackFlow(flow.m3PerS(), false, radiusMm, density))
                .orElseGet(() -> new StackFlow(flowM3PerS(AUTO_VELOCITY_M_PER_S, radiusMm), true, radiusMm, density));
    }

    /**
     * Flow at a velocity: {@code Q = V pi R_si^2}.
     *
     * @param velocityMPerS V, m/s
     * @param boreRadiusMm R_si, mm
     * @return m3/s
     */
    public static double flowM3PerS(double velocityMPerS, double boreRadiusMm) {
        return velocityMPerS * Math.PI * boreRadiusMm * boreRadiusMm * 1e-6;
    }

    /**
     * Velocity pressure {@code rho V^2 / 2}.
     *
     * @param densityKgPerM3 rho
     * @param velocityMPerS V
     * @return Pa
     */
    public static double velocityPressurePa(double densityKgPerM3, double velocityMPerS) {
        return densityKgPerM3 * velocityMPerS * velocityMPerS / 2;
    }

    /**
     * Stack velocity {@code V = Q / (pi R_si^2)}.
     *
     * @return m/s
     */
    public double velocityMPerS() {
        return m3PerS / flowM3PerS(1, boreRadiusMm);
    }

    /**
     * Velocity pressure in the sleeve.
     *
     * @return Pa
     */
    public double velocityPressurePa() {
        return velocityPressurePa(densityKgPerM3, velocityMPerS());
    }

    /**
     * Flow at which the sleeve's velocity pressure has a value.
     *
     * @param pressurePa velocity pressure, Pa, not negative
     * @return m3/s
     */
    double flowAtVelocityPressureM3PerS(double pressurePa) {
        return flowM3PerS(Math.sqrt(2 * pressurePa / densityKgPerM3), boreRadiusMm);
    }
}

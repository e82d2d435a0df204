package org.capwright.metal;

import org.capwright.units.Finite;

/**
 * A brake bend.
 *
 * @param turnRad turn from flat, beta, in (0, pi)
 * @param insideRadiusMm inside radius, r_b
 * @param thicknessMm thickness, t
 * @param neutralFactor neutral axis from the inside as a share of the thickness, k
 */
public record Bend(double turnRad, double insideRadiusMm, double thicknessMm, double neutralFactor) {
    /** Refuses values that are not finite. */
    public Bend {
        Finite.require("turn", turnRad);
        Finite.require("inside radius", insideRadiusMm);
        Finite.require("thickness", thicknessMm);
        Finite.require("neutral factor", neutralFactor);
    }

    /**
     * A bend whose deduction was measured: with the k that gives it.
     *
     * @param turnRad turn from flat
     * @param insideRadiusMm inside radius
     * @param thicknessMm thickness
     * @param deductionMm both outside lengths less the flat length of the test piece
     * @return the bend
     */
    public static Bend withMeasuredDeduction(double turnRad, double insideRadiusMm, double thicknessMm, double deductionMm) {
        double setback = (insideRadiusMm + thicknessMm) * Math.tan(turnRad / 2);
        double allowance = 2 * setback - deductionMm;
        return new Bend(turnRad, insideRadiusMm, thicknessMm, (allowance / turnRad - insideRadiusMm) / thicknessMm);
    }

    /**
     * First guess of k: .33 for inside radii under twice the thickness, else .5 (common formula sheet, confirmed).
     *
     * @param insideRadiusMm inside radius
     * @param thicknessMm thickness
     * @return k
     */
    public static double firstGuessFactor(double insideRadiusMm, double thicknessMm) {
        return insideRadiusMm < 2 * thicknessMm ? 0.33 : 0.5;
    }

    /**
     * Bend allowance: length of the neutral arc, {@code beta (r_b + k t)}.
     *
     * @return mm
     */
    public double allowanceMm() {
        return turnRad * (insideRadiusMm + neutralFactor * thicknessMm);
    }

    /**
     * Outside setback: mould line to where the flat ends, {@code (r_b + t) tan(beta/2)}.
     *
     * @return mm
     */
    public double outsideSetbackMm() {
        return (insideRadiusMm + thicknessMm) * Math.tan(turnRad / 2);
    }

    /**
     * Bend deduction: {@code 2 OSSB - BA}; both outside lengths less it are the flat length.
     *
     * @return mm
     */
    public double deductionMm() {
        return 2 * outsideSetbackMm() - allowanceMm();
    }
}

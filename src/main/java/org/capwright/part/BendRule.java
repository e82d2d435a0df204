package org.capwright.part;

import org.capwright.job.BendInputs;
import org.capwright.job.CapJob;
import org.capwright.metal.Bend;
import org.capwright.metal.BendForm;
import org.capwright.units.Length;

/**
 * How one part's sheet bends, whatever the turn.
 *
 * @param insideRadiusMm inside radius
 * @param thicknessMm thickness of the sheet
 * @param neutralFactor where the neutral axis lies, as a share of the thickness from the inside
 */
public record BendRule(double insideRadiusMm, double thicknessMm, double neutralFactor) {
    /** The rule that a job gives for a sheet. */
    static BendRule of(CapJob job, BendInputs inputs, double thicknessMm) {
        double radiusMm = job.find(inputs.insideRadius()).map(Length::mm).orElse(thicknessMm);
        double factor = switch (job.get(inputs.method())) {
            case K -> job.find(inputs.k()).orElseGet(() -> Bend.firstGuessFactor(radiusMm, thicknessMm));
            case SOFT -> BendForm.SOFT.neutralFactor();
            case HALF_HARD -> BendForm.HALF_HARD.neutralFactor();
            case HARD -> BendForm.HARD.neutralFactor();
            case MEASURED -> Bend.withMeasuredDeduction(Math.PI / 2, radiusMm, thicknessMm,
                    job.get(inputs.deduction()).mm()).neutralFactor();
        };
        return new BendRule(radiusMm, thicknessMm, factor);
    }

    /**
     * One bend.
     *
     * @param turnRad turn from flat
     * @return its allowance, setback and deduction
     */
    public Bend bend(double turnRad) {
        return new Bend(turnRad, insideRadiusMm, thicknessMm, neutralFactor);
    }

    /**
     * A square bend.
     *
     * @return the bend of 90 degrees
     */
    public Bend square() {
        return bend(Math.PI / 2);
    }
}

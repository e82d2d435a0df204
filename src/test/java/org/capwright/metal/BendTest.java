package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bends against published examples; inches are used as they stand, the formulas know no unit. */
class BendTest {
    private static final double SQUARE = Math.PI / 2;

    /** The trade handbook's worked bend. */
    @Test
    void theWorkedBend() {
        Bend bend = new Bend(SQUARE, 0.0396, 0.0396, 0.33);
        assertThat(bend.allowanceMm()).isCloseTo(0.08273, within(0.000006));
        assertThat(bend.outsideSetbackMm()).isCloseTo(0.07920, within(0.000006));
        assertThat(bend.deductionMm()).isCloseTo(0.07567, within(0.000006));
    }

    /** Derived vectors: T .0516, R .0625, 90 deg. */
    @ParameterizedTest
    @CsvSource({"0.33, 0.1249, 0.1033", "0.44, 0.1338, 0.0944", "0.50, 0.1387, 0.0895"})
    void vectors(double k, double allowance, double deduction) {
        Bend bend = new Bend(SQUARE, 0.0625, 0.0516, k);
        assertThat(bend.allowanceMm()).isCloseTo(allowance, within(0.00006));
        assertThat(bend.deductionMm()).isCloseTo(deduction, within(0.00006));
    }

    /**
     * Machinery's Handbook, Bending Sheet Metal, from memory: soft steel T .125 by .64 T + 1.57 R at 90 deg, in proportion
     * at other angles. A 180 deg bend R .375 takes 1.338, a 60 deg bend R .625 takes .707, with flats of 3.5 in all 5.545.
     */
    @Test
    void theMachineryHandbooksExample() {
        double k = BendForm.HALF_HARD.neutralFactor();
        double first = new Bend(Math.PI, 0.375, 0.125, k).allowanceMm();
        double second = new Bend(Math.PI / 3, 0.625, 0.125, k).allowanceMm();
        assertThat(first).isCloseTo(1.338, within(0.0008));
        assertThat(second).isCloseTo(0.707, within(0.001));
        assertThat(first + second + 3.5).isCloseTo(5.545, within(0.002));
    }

    /** The handbook's three forms at 90 degrees: .55, .64, .71 thicknesses; k of .35, .41, .45. */
    @ParameterizedTest
    @CsvSource({"SOFT, 0.55, 0.35", "HALF_HARD, 0.64, 0.41", "HARD, 0.71, 0.45"})
    void forms(BendForm form, double thicknesses, double k) {
        assertThat(form.thicknesses()).isEqualTo(thicknesses);
        assertThat(form.neutralFactor()).isCloseTo(k, within(0.005));
        assertThat(new Bend(SQUARE, 0.1, 0.05, form.neutralFactor()).allowanceMm())
                .isCloseTo(thicknesses * 0.05 + SQUARE * 0.1, within(1e-12));
    }

    /** FAA AC 43.13-1B: BA = (.01743 R + .0078 T) a degree, which is k of about .447. */
    @Test
    void theFaasEmpiricalForm() {
        Random random = new Random(17);
        for (int i = 0; i < 100; i++) {
            double t = 0.02 + random.nextDouble() * 0.1;
            double r = t * (1 + 3 * random.nextDouble());
            double degrees = 10 + random.nextDouble() * 150;
            double faa = (0.01743 * r + 0.0078 * t) * degrees;
            assertThat(new Bend(Math.toRadians(degrees), r, t, 0.447).allowanceMm()).as("seed 17, case %d", i).isCloseTo(faa, within(0.002 * faa));
        }
    }

    @Test
    void aMeasuredDeductionComesBack() {
        Bend bend = Bend.withMeasuredDeduction(SQUARE, 1.2, 0.9, 1.85);
        assertThat(bend.deductionMm()).isCloseTo(1.85, within(1e-12));
    }

    /** Common formula sheet: k .33 for R < 2T, .5 for R > 2T as a first guess. */
    @Test
    void firstGuess() {
        assertThat(Bend.firstGuessFactor(1, 1)).isEqualTo(0.33);
        assertThat(Bend.firstGuessFactor(2.5, 1)).isEqualTo(0.5);
    }
}

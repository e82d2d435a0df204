package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bends against published examples; inches are used as they stand, the formulas know no unit. */
class BendTest {
    private static final double SQUARE = Math.PI / 2;

    /** The trade handbook's worked bend. */
    @Test
    void theWorkedBend() {
        Bend bend = new Bend(SQUARE, 0.0396, 0.0396, 0.33);
        assertThat(bend.allowanceMm()).isCloseTo(0.08273, within(0.000005));
        assertThat(bend.outsideSetbackMm()).isCloseTo(0.07920, within(0.000005));
        assertThat(bend.deductionMm()).isCloseTo(0.07567, within(0.000005));
    }

    /** Derived vectors: T .0516, R .0625, 90 deg. */
    @ParameterizedTest
    @CsvSource({"0.33, 0.1249, 0.1033", "0.44, 0.1338, 0.0944", "0.50, 0.1387, 0.0895"})
    void vectors(double k, double allowance, double deduction) {
        Bend bend = new Bend(SQUARE, 0.0625, 0.0516, k);
        assertThat(bend.allowanceMm()).isCloseTo(allowance, within(0.00005));
        assertThat(bend.deductionMm()).isCloseTo(deduction, within(0.00005));
    }

    /**
     * Machinery's Handbook, Bending Sheet Metal, from memory: soft steel T .125 by .64 T + 1.57 R at 90 deg, in proportion
     * at other angles. A 180 deg bend R .375 takes 1.338, a 60 deg bend R .625 takes .707, with flats of 3.5 in all 5.545.
     * Its 1.57 for pi/2 and its rounding leave up to .001.
     */
    @Test
    void machinerysHandbooksExample() {
        double k = BendForm.HALF_HARD.neutralFactor();
        double first = new Bend(Math.PI, 0.375, 0.125, k).allowanceMm();
        double second = new Bend(Math.PI / 3, 0.625, 0.125, k).allowanceMm();
        assertThat(first).isCloseTo(1.338, within(0.0006));
        assertThat(second).isCloseTo(0.707, within(0.001));
        assertThat(first + second + 3.5).isCloseTo(5.545, within(0.0011));
    }

    /** Machinery's Handbook, from memory: .55, .64, .71 thicknesses and 1.57 radii at 90 deg; k of .35, .41, .45. */
    @ParameterizedTest
    @CsvSource({"SOFT, 0.55, 0.35", "HALF_HARD, 0.64, 0.41", "HARD, 0.71, 0.45"})
    void forms(BendForm form, double thicknesses, double k) {
        assertThat(form.thicknesses()).isEqualTo(thicknesses);
        assertThat(form.neutralFactor()).isCloseTo(k, within(0.005));
        double printed = thicknesses * 0.05 + 1.57 * 0.1;
        assertThat(new Bend(SQUARE, 0.1, 0.05, form.neutralFactor()).allowanceMm()).isCloseTo(printed, within(0.0001));
    }

    /** FAA AC 43.13-1B: (.01743 R + .0078 T) a degree. Its .0078 is a k of .0078 x 180 / pi, .4469; .01743 is pi/180, short. */
    @Test
    void theFaasEmpiricalForm() {
        double k = 0.0078 * 180 / Math.PI;
        assertThat(k).isCloseTo(0.4469, within(0.00005));
        Random random = new Random(17);
        for (int i = 0; i < 200; i++) {
            double t = random.nextDouble(0.02, 0.125);
            double r = t * random.nextDouble(1, 4);
            double degrees = random.nextDouble(5, 175);
            double faa = (0.01743 * r + 0.0078 * t) * degrees;
            assertThat(new Bend(Math.toRadians(degrees), r, t, k).allowanceMm()).as("seed 17, case %d", i)
                    .isBetween(faa, 1.0015 * faa);
        }
    }

    /** The test piece: two outside lengths of 50 came from a flat of 98.15. */
    @Test
    void aMeasuredDeductionComesBack() {
        Bend bend = Bend.withMeasuredDeduction(SQUARE, 1.2, 0.9, 50 + 50 - 98.15);
        assertThat(bend.deductionMm()).isCloseTo(1.85, within(1e-12));
        assertThat(bend.neutralFactor()).isCloseTo(((2 * 2.1 - 1.85) / SQUARE - 1.2) / 0.9, within(1e-12));
    }

    /** Measured or reckoned, one and the same bend. */
    @Test
    void aDeductionGivesItsFactorBack() {
        Random random = new Random(23);
        for (int i = 0; i < 200; i++) {
            Bend bend = new Bend(random.nextDouble(0.1, 3), random.nextDouble(0.3, 5), random.nextDouble(0.3, 3),
                    random.nextDouble(0.25, 0.5));
            Bend measured = Bend.withMeasuredDeduction(bend.turnRad(), bend.insideRadiusMm(), bend.thicknessMm(),
                    bend.deductionMm());
            assertThat(measured.neutralFactor()).as("seed 23, case %d", i).isCloseTo(bend.neutralFactor(), within(1e-9));
        }
    }

    /** Common formula sheet: k .33 for R < 2T, .5 for R > 2T as a first guess. */
    @ParameterizedTest
    @CsvSource({"1, 1, .33", "1.99, 1, .33", "2.01, 1, .5", "5, 1, .5", "0.0396, 0.0396, .33"})
    void firstGuess(double radius, double thickness, double k) {
        assertThat(Bend.firstGuessFactor(radius, thickness)).isEqualTo(k);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void onlyFiniteValues(double value) {
        assertThatThrownBy(() -> new Bend(value, 1, 1, 0.33)).hasMessage("turn must be a finite number, not " + value);
        assertThatThrownBy(() -> new Bend(1, value, 1, 0.33)).hasMessage("inside radius must be a finite number, not " + value);
        assertThatThrownBy(() -> new Bend(1, 1, value, 0.33)).hasMessage("thickness must be a finite number, not " + value);
        assertThatThrownBy(() -> new Bend(1, 1, 1, value)).hasMessage("neutral factor must be a finite number, not " + value);
    }
}

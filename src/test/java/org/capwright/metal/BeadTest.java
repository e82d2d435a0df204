package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BeadTest {
    /** The trade handbook's worked take-ups, inches: 1/2 x 3/16, 1/2 x 1/4 (a half round), 3/8 x 1/8. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.1875, 0.1703", "0.5, 0.25, 0.2854", "0.375, 0.125, 0.1028"})
    void workedTakeUps(double width, double depth, double takeUp) {
        assertThat(new Bead(width, depth).takeUpMm()).isCloseTo(takeUp, within(0.00005));
    }

    @Test
    void aHalfRoundTakesHalfACircleLessItsWidth() {
        Bead bead = new Bead(12, 6);
        assertThat(bead.arcRadiusMm()).isEqualTo(6);
        assertThat(bead.takeUpMm()).isCloseTo(Math.PI * 6 - 12, within(1e-12));
    }

    /** The bead's section walked in small steps: as long as its width and its take-up. */
    @Test
    void takeUpIsWhatTheSectionMeasures() {
        Random random = new Random(41);
        for (int i = 0; i < 30; i++) {
            double width = random.nextDouble(6, 25);
            Bead bead = new Bead(width, width * random.nextDouble(0.05, 0.45));
            assertThat(walked(bead)).as("seed 41, case %d", i).isCloseTo(width + bead.takeUpMm(), within(1e-4));
        }
    }

    @Test
    void depthIsWholeInTheMiddleAndNothingOutside() {
        Bead bead = new Bead(12.7, 4.7625);
        assertThat(bead.depthAtMm(0)).isCloseTo(4.7625, within(1e-12));
        assertThat(bead.depthAtMm(3)).isEqualTo(bead.depthAtMm(-3)).isBetween(0.0, 4.7625);
        assertThat(bead.depthAtMm(6.35 - 1e-9)).isCloseTo(0, within(1e-8));
        assertThat(bead.depthAtMm(6.35)).isZero();
        assertThat(bead.depthAtMm(-100)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"10, 0", "10, -1", "10, 5.1", "0, 0", "-10, 1", "10, NaN", "NaN, 1"})
    void aBeadIsNoDeeperThanAHalfRound(double width, double depth) {
        assertThatThrownBy(() -> new Bead(width, depth)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a bead's depth must be over 0 and at most half its width, not " + depth + " mm on " + width + " mm");
    }

    private static double walked(Bead bead) {
        int steps = 200_000;
        double step = bead.widthMm() / steps;
        double length = 0;
        for (int i = 0; i < steps; i++) {
            double from = -bead.widthMm() / 2 + i * step;
            length += Math.hypot(step, bead.depthAtMm(from + step) - bead.depthAtMm(from));
        }
        return length;
    }
}

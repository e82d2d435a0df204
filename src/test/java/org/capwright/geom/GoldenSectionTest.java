package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class GoldenSectionTest {
    private static final double ENOUGH = 1e-7;

    @Test
    void findsTheBottomOfAValley() {
        Random random = new Random(83);
        for (int i = 0; i < 200; i++) {
            double bottom = random.nextDouble(-3, 9);
            String what = "seed 83, case " + i;
            assertThat(GoldenSection.lowest(x -> (x - bottom) * (x - bottom), -3, 9, ENOUGH)).as(what).isCloseTo(bottom, within(ENOUGH));
            assertThat(GoldenSection.lowest(x -> Math.abs(x - bottom), -3, 9, ENOUGH)).as(what).isCloseTo(bottom, within(ENOUGH));
        }
    }

    @Test
    void findsAnEndWhereAllIsSlope() {
        assertThat(GoldenSection.lowest(x -> x, 2, 5, ENOUGH)).isBetween(2.0, 2 + ENOUGH);
        assertThat(GoldenSection.lowest(x -> -x, 2, 5, ENOUGH)).isBetween(5 - ENOUGH, 5.0);
    }

    /** Falling up to a jump at 1: the answer is on the low side, never past the jump. */
    @Test
    void staysOnTheLowSideOfAJump() {
        assertThat(GoldenSection.lowest(x -> x <= 1 ? -x : 10, 0, 3, ENOUGH)).isBetween(1 - ENOUGH, 1.0);
        assertThat(GoldenSection.lowest(x -> x < 1 ? 10 : x, 0, 3, ENOUGH)).isBetween(1.0, 1 + ENOUGH);
    }

    @Test
    void oneLookIsEnoughForAShortStretch() {
        assertThat(GoldenSection.lowest(x -> x * x, 1, 1, ENOUGH)).isEqualTo(1);
    }
}

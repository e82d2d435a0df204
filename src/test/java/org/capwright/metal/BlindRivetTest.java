package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.capwright.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BlindRivetTest {
    private static final double AS_TYPED = 1e-12;

    /** IFI-114. From memory: heads of 1/8 and 1/4, holes of 3/16. */
    @ParameterizedTest
    @CsvSource({"0, .125, .129, .133, .262, #30", "1, .15625, .160, .164, .328, #20", "2, .1875, .192, .196, .394, #11",
        "3, .25, .257, .261, .525, F"})
    void sizes(int index, double diameter, double holeLeast, double holeMost, double headMost, String drill) {
        BlindRivet size = BlindRivet.SIZES.get(index);
        assertThat(size.diameter().inches()).isCloseTo(diameter, within(AS_TYPED));
        assertThat(size.holeLeast().inches()).isCloseTo(holeLeast, within(AS_TYPED));
        assertThat(size.holeMost().inches()).isCloseTo(holeMost, within(AS_TYPED));
        assertThat(size.headMost().inches()).isCloseTo(headMost, within(AS_TYPED));
        assertThat(size.drill()).isEqualTo(drill);
    }

    @Test
    void thereAreFourSizes() {
        assertThat(BlindRivet.SIZES).hasSize(4);
    }

    /** Number drills #30 .1285, #20 .161, #11 .191 and letter F .257 in (ASME B94.11M, from memory): beside the least hole. */
    @ParameterizedTest
    @CsvSource({"0, .1285", "1, .161", "2, .191", "3, .257"})
    void theDrillMakesTheHole(int index, double drill) {
        BlindRivet size = BlindRivet.SIZES.get(index);
        assertThat(drill).isBetween(size.holeLeast().inches() - 0.0011, size.holeMost().inches());
    }

    /** Hole ranges of IFI-114 (3/16 from memory). */
    @ParameterizedTest
    @CsvSource({".125, .129, .133", ".15625, .160, .164", ".1875, .192, .196", ".25, .257, .261"})
    void inchHoles(double diameter, double least, double most) {
        assertThat(BlindRivet.holeFor(Length.ofInches(diameter)).inches()).isBetween(least, most);
    }

    /** ISO 15977 and its kin: hole = diameter and 0.1 to 0.2 mm; 3.2, 4.0, 4.8 and 6.4 are the inch sizes. */
    @ParameterizedTest
    @CsvSource({"3.0", "3.2", "4.0", "4.8", "5.0", "6.0", "6.4"})
    void metricHoles(double diameter) {
        assertThat(BlindRivet.holeFor(Length.ofMm(diameter)).mm()).isBetween(diameter + 0.1 - 1e-9, diameter + 0.2 + 1e-9);
    }

    /** FAA AC 43.13-1B: edge distance 2D, pitch 3D; written for solid rivets, common practice for blind ones. */
    @ParameterizedTest
    @CsvSource({".125, .25, .375", ".15625, .3125, .46875", ".1875, .375, .5625"})
    void layout(double diameter, double edge, double pitch) {
        assertThat(BlindRivet.leastEdgeDistance(Length.ofInches(diameter)).inches()).isCloseTo(edge, within(AS_TYPED));
        assertThat(BlindRivet.leastPitch(Length.ofInches(diameter)).inches()).isCloseTo(pitch, within(AS_TYPED));
    }
}

package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;

import org.capwright.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class RivetGripTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/rivet-grips.csv")
    void everyRowFromEndToEnd(String code, double diameter, double least, double most) {
        assertThat(code(diameter, least)).isEqualTo(code);
        assertThat(code(diameter, (least + most) / 2)).isEqualTo(code);
        assertThat(code(diameter, most)).isEqualTo(code);
    }

    @Test
    void thereAreTwelveRows() {
        assertThat(RivetGrip.GRIPS).hasSize(12);
    }

    /** The table is printed in thousandths, so a stack is taken to a thousandth. */
    @ParameterizedTest
    @CsvSource({".0626, 42", ".0624, 41", ".1254, 42", ".1256, 43", ".1876, 44", ".3126, 46", ".50004, 48"})
    void betweenTwoThousandthsTheNearerCounts(double stack, String code) {
        assertThat(code(.125, stack)).isEqualTo(code);
    }

    /** 1/16, 3/16 and 5/16 lie just between two rows: either will do, but one there is. */
    @ParameterizedTest
    @CsvSource({".0625, 41, 42", ".1875, 43, 44", ".3125, 45, 46"})
    void halfwayBetweenTwoThousandths(double stack, String lower, String upper) {
        assertThat(code(.125, stack)).isIn(lower, upper);
    }

    /** Two sheets whose thicknesses add up to a limit, but for the last bit. */
    @Test
    void aSumOfSheetsAtTheLimitIsInside() {
        double sheetsMm = 0.0785 * 25.4 + 0.0465 * 25.4;
        assertThat(RivetGrip.of(Length.ofInches(.125), Length.ofMm(Math.nextUp(sheetsMm))).orElseThrow().code()).isEqualTo("42");
    }

    @ParameterizedTest
    @CsvSource({".125, .019", ".125, .0194", ".125, .501", ".15625, .150", ".15625, .4", ".1875, .3", ".25, .1", ".40625, .1"})
    void noneWhereTheTableHasNone(double diameter, double stack) {
        assertThat(RivetGrip.of(Length.ofInches(diameter), Length.ofInches(stack))).isEmpty();
    }

    /** 3.2, 4.0 and 4.8 mm are the inch sizes by other names; 3.0 and 5.0 mm are not. */
    @ParameterizedTest
    @CsvSource({"3.2, 42", "4.0, 52", "4.8, 62"})
    void metricNamesOfInchSizes(double diameterMm, String code) {
        assertThat(RivetGrip.of(Length.ofMm(diameterMm), Length.ofMm(2.5)).orElseThrow().code()).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({"3.0", "5.0", "6.0", "32.0"})
    void sizesOfTheirOwnHaveNoInchGrip(double diameterMm) {
        assertThat(RivetGrip.of(Length.ofMm(diameterMm), Length.ofMm(2.5))).isEmpty();
    }

    private static String code(double diameter, double stack) {
        return RivetGrip.of(Length.ofInches(diameter), Length.ofInches(stack)).orElseThrow().code();
    }
}

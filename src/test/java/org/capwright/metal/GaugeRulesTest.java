package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The gauge tables against the rules that they were made by, each to half of the last figure printed. */
class GaugeRulesTest {
    private static final double OUNCES_IN_A_POUND = 16;
    private static final double MSG_POUNDS_PER_SQUARE_FOOT_INCH = 41.82;
    private static final double COATING_OUNCES = 2.5;
    private static final double HALF_A_TEN_THOUSANDTH = 0.00005 + 1e-9;
    private static final double HALF_A_THOUSANDTH_POUND = 0.0005 + 1e-9;

    /** Manufacturers' Standard Gage: whole ounces a square foot, over 41.82 lb/ft2 per inch (Machinery's Handbook). */
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/gauge-ounces.csv")
    void steel(int gauge, double ounces) {
        GaugeTable.Row row = row(Metal.COLD_ROLLED, gauge);
        double pounds = ounces / OUNCES_IN_A_POUND;
        assertThat(row.poundsPerSquareFoot()).isCloseTo(pounds, within(HALF_A_THOUSANDTH_POUND));
        assertThat(row.thickness().inches())
                .isCloseTo(pounds / MSG_POUNDS_PER_SQUARE_FOOT_INCH, within(HALF_A_TEN_THOUSANDTH));
    }

    /** Galvanized: the steel's ounces and 2.5 of zinc (SMACNA); the nominal thickness is that weight over 41.82. */
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/gauge-ounces.csv")
    void galvanized(int gauge, double ounces) {
        GaugeTable.Row row = row(Metal.GALVANIZED, gauge);
        double pounds = (ounces + COATING_OUNCES) / OUNCES_IN_A_POUND;
        assertThat(row.poundsPerSquareFoot()).isCloseTo(pounds, within(HALF_A_THOUSANDTH_POUND));
        assertThat(row.thickness().inches())
                .isCloseTo(pounds / MSG_POUNDS_PER_SQUARE_FOOT_INCH, within(HALF_A_TEN_THOUSANDTH));
    }

    /** Stainless: 640ths of an inch; 42.0 lb/ft2 per inch, from memory. */
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/gauge-ounces.csv")
    void stainless(int gauge, double ounces) {
        GaugeTable.Row row = row(Metal.STAINLESS_304, gauge);
        assertThat(row.thickness().inches()).isCloseTo(ounces / 640, within(HALF_A_TEN_THOUSANDTH));
        assertThat(row.poundsPerSquareFoot()).isCloseTo(42.0 * ounces / 640, within(HALF_A_THOUSANDTH_POUND));
    }

    /** American Wire Gauge: .005 in at 36, .46 in at 0000, 39 equal ratios between; .098 lb/in3, from memory. */
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/gauge-ounces.csv")
    void aluminium(int gauge) {
        GaugeTable.Row row = row(Metal.ALUMINIUM, gauge);
        double inches = .005 * Math.pow(92, (36.0 - gauge) / 39);
        assertThat(row.thickness().inches()).isCloseTo(inches, within(HALF_A_TEN_THOUSANDTH));
        assertThat(row.poundsPerSquareFoot()).isCloseTo(.098 * 144 * inches, within(HALF_A_THOUSANDTH_POUND));
    }

    private static GaugeTable.Row row(Metal metal, int gauge) {
        return GaugeTable.of(metal).orElseThrow().row(gauge).orElseThrow();
    }
}

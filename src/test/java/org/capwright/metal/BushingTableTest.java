package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.capwright.units.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Flanged oil-bronze bushings, from memory, low confidence; dimensional standard ISO 2795. */
class BushingTableTest {
    @ParameterizedTest
    @CsvSource({".375, .5, .6875, .0625", ".5, .625, .875, .125", ".625, .75, 1, .125", ".75, 1, 1.25, .125", "1, 1.25, 1.5, .1875"})
    void inchSizes(double bore, double outside, double flange, double thickness) {
        BushingTable.Row row = BushingTable.forBore(Length.ofInches(bore)).orElseThrow();
        assertThat(row.bore().inches()).isCloseTo(bore, within(1e-12));
        assertThat(row.outside().inches()).isCloseTo(outside, within(1e-12));
        assertThat(row.flangeOutside().inches()).isCloseTo(flange, within(1e-12));
        assertThat(row.flangeThickness().inches()).isCloseTo(thickness, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"10, 16, 22, 3", "12, 18, 24, 3", "16, 22, 28, 3", "20, 26, 32, 3", "25, 32, 39, 3.5"})
    void metricSizes(double bore, double outside, double flange, double thickness) {
        BushingTable.Row row = BushingTable.forBore(Length.ofMm(bore)).orElseThrow();
        assertThat(row.bore().mm()).isCloseTo(bore, within(1e-12));
        assertThat(row.outside().mm()).isCloseTo(outside, within(1e-12));
        assertThat(row.flangeOutside().mm()).isCloseTo(flange, within(1e-12));
        assertThat(row.flangeThickness().mm()).isCloseTo(thickness, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 9, 9.7, 15, 18, 24, 30})
    void noneForOtherBores(double boreMm) {
        assertThat(BushingTable.forBore(Length.ofMm(boreMm))).isEmpty();
    }
}

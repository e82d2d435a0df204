package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.capwright.units.Length;
import org.capwright.units.QuantityParser;
import org.capwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpotWeldTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/spot-welds.csv")
    void everyRow(double thickness, String spacing, String overlap) {
        SpotWeld row = SpotWeld.forThickness(Length.ofInches(thickness)).orElseThrow();
        assertThat(row.thickness().inches()).isCloseTo(thickness, within(1e-12));
        assertThat(row.leastSpacing().mm()).isCloseTo(inches(spacing).mm(), within(1e-9));
        assertThat(row.leastOverlap().mm()).isCloseTo(inches(overlap).mm(), within(1e-9));
    }

    @Test
    void thereAreElevenRows() {
        assertThat(SpotWeld.ROWS).hasSize(11);
    }

    /** Take the next row up. 20 ga galvanized by this table: 1/2 lap, which is common practice too. */
    @ParameterizedTest
    @CsvSource({".001, .010", ".0101, .021", ".022, .031", ".0336, .040", ".0396, .040", ".0401, .050", ".0516, .062", ".0635, .078",
        ".110, .125", ".126, .156"})
    void theNextRowUp(double thickness, double row) {
        assertThat(SpotWeld.forThickness(Length.ofInches(thickness)).orElseThrow().thickness().inches())
                .isCloseTo(row, within(1e-12));
    }

    /** The same thicknesses typed in millimetres take the same rows. */
    @ParameterizedTest
    @CsvSource({"0.254, .010", "0.5334, .021", "0.7874, .031", "1.016, .040", "1.27, .050", "1.5748, .062", "1.9812, .078", "2.3876, .094",
        "2.7686, .109", "3.175, .125", "3.9624, .156"})
    void aRowsOwnThicknessInMillimetres(double mm, double row) {
        assertThat(SpotWeld.forThickness(Length.ofMm(mm)).orElseThrow().thickness().inches()).isCloseTo(row, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {.1561, .25})
    void noneAboveTheTable(double thickness) {
        assertThat(SpotWeld.forThickness(Length.ofInches(thickness))).isEmpty();
    }

    private static Length inches(String typed) {
        return QuantityParser.length(typed, UnitSystem.INCH);
    }
}

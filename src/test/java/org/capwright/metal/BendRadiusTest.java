package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.capwright.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The aircraft-style design table after AISI guidelines for 1020, 304 and 5052-H32. */
class BendRadiusTest {
    @ParameterizedTest
    @CsvSource({".032, .063, .063, .063", ".040, .094, .094, .063", ".050, .094, .094, .094", ".063, .094, .125, .094",
        ".080, .125, .156, .125", ".100, .156, .250, .156"})
    void everyRow(double thickness, double steel, double stainless, double aluminium) {
        assertThat(inches(Metal.COLD_ROLLED, thickness)).isCloseTo(steel, within(1e-12));
        assertThat(inches(Metal.STAINLESS_304, thickness)).isCloseTo(stainless, within(1e-12));
        assertThat(inches(Metal.ALUMINIUM, thickness)).isCloseTo(aluminium, within(1e-12));
    }

    @Test
    void theNextRowUpAndNoneAboveTheTable() {
        assertThat(inches(Metal.GALVANIZED, .0396)).isEqualTo(inches(Metal.COLD_ROLLED, .040));
        assertThat(inches(Metal.STAINLESS_316, .0401)).isEqualTo(inches(Metal.STAINLESS_304, .050));
        assertThat(BendRadius.of(Metal.ALUMINIZED, Length.ofMm(0.032 * 25.4)).orElseThrow().inches()).isCloseTo(.063,
                within(1e-12));
        assertThat(BendRadius.of(Metal.GALVANIZED, Length.ofInches(.101))).isEmpty();
    }

    /** No row asks for less than the rule of annealed sheet. */
    @Test
    void neverUnderTheThickness() {
        assertThat(BendRadius.ROWS).hasSize(6).allSatisfy(row -> assertThat(Math.min(row.aluminium().mm(), row.steel().mm()))
                .isGreaterThanOrEqualTo(row.thickness().mm()));
    }

    private static double inches(Metal metal, double thickness) {
        return BendRadius.of(metal, Length.ofInches(thickness)).orElseThrow().inches();
    }
}

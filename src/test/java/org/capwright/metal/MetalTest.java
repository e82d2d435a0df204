package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MetalTest {
    private static final double KG_PER_M3_IN_LB_PER_IN3 = 27_679.90;

    /** Steel 7850 kg/m3, confirmed; stainless .29 and aluminium .098 lb/in3, from memory; lb/in3 by NIST SP 811. */
    @ParameterizedTest
    @CsvSource({"GALVANIZED, .2836", "ALUMINIZED, .2836", "COLD_ROLLED, .2836", "STAINLESS_304, .29", "STAINLESS_316, .29",
        "ALUMINIUM, .098"})
    void densities(Metal metal, double poundsPerCubicInch) {
        assertThat(metal.densityKgPerM3() / KG_PER_M3_IN_LB_PER_IN3).isCloseTo(poundsPerCubicInch, within(5e-5));
    }

    /** Listed steel weights run about 2.5 % over thickness x density, by design of the Manufacturers' Standard Gage. */
    @Test
    void listedSteelWeightsRunOver() {
        GaugeTable table = GaugeTable.of(Metal.COLD_ROLLED).orElseThrow();
        for (int gauge : table.gauges()) {
            GaugeTable.Row row = table.row(gauge).orElseThrow();
            double pounds = row.thickness().mm() / 1000 * Metal.COLD_ROLLED.densityKgPerM3() / 4.882428;
            assertThat(row.poundsPerSquareFoot() / pounds).as("gauge %d", gauge).isBetween(1.02, 1.03);
        }
    }

    /** Steel 29e6 psi, stainless about 28e6, aluminium about 10e6, from memory; psi by NIST SP 811. */
    @ParameterizedTest
    @CsvSource({"GALVANIZED, 29e6", "ALUMINIZED, 29e6", "COLD_ROLLED, 29e6", "STAINLESS_304, 28e6", "STAINLESS_316, 28e6",
        "ALUMINIUM, 10e6"})
    void moduli(Metal metal, double psi) {
        assertThat(metal.elasticityPa() / 6894.757).isCloseTo(psi, within(1e-7 * psi));
    }

    @ParameterizedTest
    @CsvSource({"GALVANIZED, galvanized", "ALUMINIZED, aluminized", "COLD_ROLLED, cold-rolled", "STAINLESS_304, stainless 304",
        "STAINLESS_316, stainless 316", "ALUMINIUM, aluminium"})
    void words(Metal metal, String word) {
        assertThat(metal.word()).isEqualTo(word);
    }
}

package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.capwright.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every row of every gauge table against a second copy, typed for these tests; sources in the heads of the copies. */
class GaugeTableTest {
    private static final double AS_TYPED = 1e-12;

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/gauges-steel.csv")
    void steel(int gauge, double inches, double pounds) {
        same(Metal.COLD_ROLLED, gauge, inches, pounds);
        assertThat(row(Metal.COLD_ROLLED, gauge).tolerance()).isEmpty();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/gauges-galvanized.csv")
    void galvanized(int gauge, double inches, double pounds, double tolerance) {
        same(Metal.GALVANIZED, gauge, inches, pounds);
        assertThat(row(Metal.GALVANIZED, gauge).tolerance().map(Length::inches).orElseThrow())
                .isCloseTo(tolerance, within(AS_TYPED));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/gauges-stainless.csv")
    void stainless(int gauge, double inches, double pounds) {
        same(Metal.STAINLESS_304, gauge, inches, pounds);
        same(Metal.STAINLESS_316, gauge, inches, pounds);
        assertThat(row(Metal.STAINLESS_304, gauge).tolerance()).isEmpty();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/gauges-aluminium.csv")
    void aluminium(int gauge, double inches, double pounds) {
        same(Metal.ALUMINIUM, gauge, inches, pounds);
        assertThat(row(Metal.ALUMINIUM, gauge).tolerance()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "ALUMINIZED")
    void noTableHasAnyOtherGauge(Metal metal) {
        assertThat(GaugeTable.of(metal).orElseThrow().gauges())
                .containsExactlyElementsOf(IntStream.rangeClosed(10, 28).boxed().toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {-24, 0, 9, 29, 240})
    void anUnknownGaugeHasNoThickness(int gauge) {
        GaugeTable table = GaugeTable.of(Metal.GALVANIZED).orElseThrow();
        assertThat(table.thickness(gauge)).isEmpty();
        assertThat(table.row(gauge)).isEmpty();
    }

    /** A gauge number is not a thickness: no two metals mean the same by 20. */
    @Test
    void twentyGaugeIsFourThicknesses() {
        assertThat(row(Metal.GALVANIZED, 20).thickness()).isGreaterThan(row(Metal.STAINLESS_304, 20).thickness());
        assertThat(row(Metal.STAINLESS_304, 20).thickness()).isGreaterThan(row(Metal.COLD_ROLLED, 20).thickness());
        assertThat(row(Metal.COLD_ROLLED, 20).thickness()).isGreaterThan(row(Metal.ALUMINIUM, 20).thickness());
    }

    @Test
    void aluminizedHasNoTable() {
        assertThat(GaugeTable.of(Metal.ALUMINIZED)).isEmpty();
    }

    @Test
    void everyTableNamesItsSourceAndWhatIsFromMemory() {
        assertThat(source(Metal.COLD_ROLLED)).contains("Manufacturers' Standard Gage").contains("from memory");
        assertThat(source(Metal.GALVANIZED)).contains("ASTM A924/A653").contains("SMACNA").contains("derived");
        assertThat(source(Metal.STAINLESS_304)).contains("U.S. Standard Gage").contains("from memory");
        assertThat(source(Metal.ALUMINIUM)).contains("American Wire Gauge").contains("from memory");
    }

    private static String source(Metal metal) {
        return GaugeTable.of(metal).orElseThrow().source();
    }

    private static GaugeTable.Row row(Metal metal, int gauge) {
        return GaugeTable.of(metal).orElseThrow().row(gauge).orElseThrow();
    }

    private static void same(Metal metal, int gauge, double inches, double pounds) {
        assertThat(row(metal, gauge).thickness().inches()).isCloseTo(inches, within(AS_TYPED));
        assertThat(row(metal, gauge).poundsPerSquareFoot()).isCloseTo(pounds, within(AS_TYPED));
        assertThat(GaugeTable.of(metal).orElseThrow().thickness(gauge)).contains(row(metal, gauge).thickness());
    }
}

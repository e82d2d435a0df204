package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every row of every gauge table against a second copy, and against the rules the tables were made by. */
class GaugeTableTest {
    private static final double TYPED = 1e-9;

    @Test
    void everyRowIsTheOneTypedForThisTest() throws IOException {
        for (List<Double> row : rows()) {
            int gauge = row.get(0).intValue();
            same(Metal.COLD_ROLLED, gauge, row.get(1), row.get(2));
            same(Metal.GALVANIZED, gauge, row.get(3), row.get(4));
            assertThat(GaugeTable.of(Metal.GALVANIZED).orElseThrow().row(gauge).orElseThrow().tolerance().orElseThrow().inches())
                    .isCloseTo(row.get(5), within(TYPED));
            same(Metal.STAINLESS_304, gauge, row.get(6), row.get(7));
            same(Metal.STAINLESS_316, gauge, row.get(6), row.get(7));
            same(Metal.ALUMINIUM, gauge, row.get(8), row.get(9));
        }
        for (Metal metal : List.of(Metal.COLD_ROLLED, Metal.GALVANIZED, Metal.STAINLESS_304, Metal.ALUMINIUM)) {
            assertThat(GaugeTable.of(metal).orElseThrow().gauges()).hasSize(rows().size());
        }
    }

    private static void same(Metal metal, int gauge, double inches, double pounds) {
        GaugeTable.Row row = GaugeTable.of(metal).orElseThrow().row(gauge).orElseThrow();
        assertThat(row.thickness().inches()).as("%s %d", metal, gauge).isCloseTo(inches, within(TYPED));
        assertThat(row.poundsPerSquareFoot()).as("%s %d", metal, gauge).isCloseTo(pounds, within(TYPED));
    }

    /** Steel MSG: 41.82 lb/ft2 per inch (Machinery's Handbook). */
    @Test
    void steelIsItsWeightOverTheStandardDensity() throws IOException {
        for (List<Double> row : rows()) {
            assertThat(row.get(2) / 41.82).as("gauge %s", row.get(0)).isCloseTo(row.get(1), within(0.00006));
        }
    }

    /** Galvanized weight: steel and 2.5 oz/ft2 (SMACNA). */
    @Test
    void galvanizedIsSteelAndItsCoating() throws IOException {
        for (List<Double> row : rows()) {
            assertThat(row.get(2) + 2.5 / 16).as("gauge %s", row.get(0)).isCloseTo(row.get(4), within(0.0011));
        }
    }

    /** Aluminium: AWG, d = .005 * 92^((36 - n)/39). */
    @Test
    void aluminiumIsTheWireGauge() throws IOException {
        for (List<Double> row : rows()) {
            double diameter = 0.005 * Math.pow(92, (36 - row.get(0)) / 39);
            assertThat(diameter).as("gauge %s", row.get(0)).isCloseTo(row.get(8), within(0.00006));
        }
    }

    /** Stainless weight: 42.0 lb/ft2 per inch, from memory; the table's thicknesses are rounded fractions. */
    @Test
    void stainlessWeightFollowsItsThickness() throws IOException {
        for (List<Double> row : rows()) {
            assertThat(row.get(6) * 42).as("gauge %s", row.get(0)).isCloseTo(row.get(7), within(0.0035));
        }
    }

    @Test
    void aluminizedHasNoTable() {
        assertThat(GaugeTable.of(Metal.ALUMINIZED)).isEmpty();
    }

    @Test
    void everyTableNamesItsSource() {
        for (Metal metal : Metal.values()) {
            GaugeTable.of(metal).ifPresent(table -> assertThat(table.source()).as(metal.word()).isNotBlank());
        }
    }

    private static List<List<Double>> rows() throws IOException {
        return Files.readAllLines(Path.of("src", "test", "resources", "cases", "gauges.csv"), StandardCharsets.UTF_8).stream()
                .filter(line -> line.matches("\\d.*")).map(line -> List.of(line.split(",")).stream().map(Double::valueOf).toList()).toList();
    }
}

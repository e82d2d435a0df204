package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.capwright.units.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seams, edges, beads, rivets, spot welds and bushings against their tables, typed anew. */
class TablesTest {
    /** Worked take-ups of the trade handbook. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.1875, 0.1703", "0.5, 0.25, 0.2854", "0.375, 0.125, 0.1028"})
    void beadTakeUp(double width, double depth, double takeUp) {
        assertThat(new Bead(width, depth).takeUpMm()).isCloseTo(takeUp, within(0.00006));
    }

    /** US Navy Steelworker manual: hem W, double hem 2W, wired edge 2.5 diameters (1/8 wire: 5/16), grooved lock 3W. */
    @ParameterizedTest
    @CsvSource({"PLAIN, 0.25, 0", "HEM, 0.25, 0.25", "DOUBLE_HEM, 0.25, 0.5", "WIRED, 0.125, 0.3125"})
    void edges(EdgeKind kind, double size, double allowance) {
        assertThat(new Edge(kind, size).allowanceMm()).isCloseTo(allowance, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"BUTT, 0.5, 0", "LAP, 0.5, 0.5", "LOCK, 0.25, 0.75"})
    void seams(SeamKind kind, double width, double allowance) {
        assertThat(new Seam(kind, width).allowanceMm()).isCloseTo(allowance, within(1e-12));
    }

    /** IFI-114 hole ranges; 3/16's from memory. ISO 15977 sizes that are not inch sizes: diameter and 0.1 mm. */
    @ParameterizedTest
    @CsvSource({"0.125, 0.129, 0.133", "0.15625, 0.160, 0.164", "0.1875, 0.192, 0.196", "0.25, 0.257, 0.261"})
    void rivetHoles(double diameter, double least, double most) {
        Length hole = BlindRivet.holeFor(Length.ofInches(diameter));
        assertThat(hole.inches()).isBetween(least, most);
        assertThat(BlindRivet.leastEdgeDistance(Length.ofInches(diameter)).inches()).isCloseTo(2 * diameter, within(1e-12));
        assertThat(BlindRivet.leastPitch(Length.ofInches(diameter)).inches()).isCloseTo(3 * diameter, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"5.0, 5.1", "3.0, 3.1", "6.0, 6.1"})
    void metricRivetHoles(double diameter, double hole) {
        assertThat(BlindRivet.holeFor(Length.ofMm(diameter)).mm()).isCloseTo(hole, within(1e-9));
    }

    /** Grips: confirmed for 1/8; 5/32 and 3/16 likewise, 62 and 64 from memory. */
    @ParameterizedTest
    @CsvSource({"0.125, 0.050, 41", "0.125, 0.100, 42", "0.125, 0.150, 43", "0.125, 0.200, 44", "0.125, 0.300, 45", "0.125, 0.350, 46",
        "0.125, 0.450, 48", "0.15625, 0.100, 52", "0.15625, 0.200, 54", "0.15625, 0.300, 56", "0.1875, 0.100, 62", "0.1875, 0.200, 64"})
    void rivetGrips(double diameter, double stack, String code) {
        assertThat(RivetGrip.of(Length.ofInches(diameter), Length.ofInches(stack)).orElseThrow().code()).isEqualTo(code);
    }

    /** RWMA / AWS C1.1 lineage; between two rows the thicker one counts. */
    @ParameterizedTest
    @CsvSource({"0.010, 0.25, 0.375", "0.021, 0.375, 0.4375", "0.031, 0.5, 0.4375", "0.040, 0.75, 0.5", "0.050, 0.875, 0.5625",
        "0.062, 1, 0.625", "0.078, 1.125, 0.6875", "0.094, 1.25, 0.75", "0.109, 1.3125, 0.8125", "0.125, 1.5, 0.875", "0.156, 1.75, 1",
        "0.0396, 0.75, 0.5", "0.032, 0.75, 0.5"})
    void spotWelds(double thickness, double spacing, double overlap) {
        SpotWeld row = SpotWeld.forThickness(Length.ofInches(thickness)).orElseThrow();
        assertThat(row.leastSpacing().inches()).isCloseTo(spacing, within(1e-9));
        assertThat(row.leastOverlap().inches()).isCloseTo(overlap, within(1e-9));
    }

    /** Flanged oil-bronze bushings, from memory, low confidence. */
    @ParameterizedTest
    @CsvSource({"0.375, 0.5, 0.6875, 0.0625", "0.5, 0.625, 0.875, 0.125", "0.625, 0.75, 1, 0.125", "0.75, 1, 1.25, 0.125", "1, 1.25, 1.5, 0.1875"})
    void bushings(double bore, double outside, double flange, double thickness) {
        BushingTable.Row row = BushingTable.forBore(Length.ofInches(bore)).orElseThrow();
        assertThat(row.outside().inches()).isCloseTo(outside, within(1e-9));
        assertThat(row.flangeOutside().inches()).isCloseTo(flange, within(1e-9));
        assertThat(row.flangeThickness().inches()).isCloseTo(thickness, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"10, 16, 22, 3", "12, 18, 24, 3", "16, 22, 28, 3", "20, 26, 32, 3", "25, 32, 39, 3.5"})
    void metricBushings(double bore, double outside, double flange, double thickness) {
        BushingTable.Row row = BushingTable.forBore(Length.ofMm(bore)).orElseThrow();
        assertThat(row.outside().mm()).isCloseTo(outside, within(1e-9));
        assertThat(row.flangeOutside().mm()).isCloseTo(flange, within(1e-9));
        assertThat(row.flangeThickness().mm()).isCloseTo(thickness, within(1e-9));
    }
}

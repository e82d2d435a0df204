package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Allowances of the US Navy Steelworker manual; inches are used as they stand, the rules know no unit. */
class SeamsAndEdgesTest {
    /** Hem W, double hem 2W, wired edge 2.5 wire diameters: 1/8 wire takes 5/16. */
    @ParameterizedTest
    @CsvSource({"PLAIN, 0.25, 0", "HEM, 0.25, 0.25", "DOUBLE_HEM, 0.25, 0.5", "WIRED, 0.125, 0.3125"})
    void edges(EdgeKind kind, double size, double allowance) {
        assertThat(new Edge(kind, size).allowanceMm()).isCloseTo(allowance, within(1e-12));
        assertThat(Edge.PLAIN.allowanceMm()).isZero();
    }

    /** Grooved lock 3W; a lap its width; nothing for a butt weld. */
    @ParameterizedTest
    @CsvSource({"BUTT, 0.5, 0", "LAP, 0.5, 0.5", "LOCK, 0.25, 0.75"})
    void seams(SeamKind kind, double width, double allowance) {
        assertThat(new Seam(kind, width).allowanceMm()).isCloseTo(allowance, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"PLAIN, plain", "HEM, hem", "DOUBLE_HEM, double hem", "WIRED, wired"})
    void edgeWords(EdgeKind kind, String word) {
        assertThat(kind.word()).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({"BUTT, butt", "LAP, lap", "LOCK, lock"})
    void seamWords(SeamKind kind, String word) {
        assertThat(kind.word()).isEqualTo(word);
    }
}

package org.capwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LimitTest {
    @Test
    void aSmallestValueWithABand() {
        Limit limit = Limit.atLeast(10, 1, "test");
        assertThat(limit.verdict(9.999)).isEqualTo(Verdict.FOUL);
        assertThat(limit.verdict(10)).isEqualTo(Verdict.TIGHT);
        assertThat(limit.verdict(10.999)).isEqualTo(Verdict.TIGHT);
        assertThat(limit.verdict(11)).isEqualTo(Verdict.CLEAR);
        assertThat(limit.margin(9)).isEqualTo(-1);
    }

    @Test
    void aLargestValueWithoutBand() {
        Limit limit = Limit.atMost(10, 0, "test");
        assertThat(limit.verdict(10.001)).isEqualTo(Verdict.FOUL);
        assertThat(limit.verdict(10)).isEqualTo(Verdict.CLEAR);
        assertThat(limit.margin(9)).isEqualTo(1);
    }

    @Test
    void whatIsNoNumberIsFoul() {
        assertThat(Limit.atLeast(10, 1, "test").verdict(Double.NaN)).isEqualTo(Verdict.FOUL);
    }
}

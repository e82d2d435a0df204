package org.capwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.capwright.part.Cap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What buys what: each listed change is what typing the step really does, the largest first. */
class InfluencesTest {
    @ParameterizedTest
    @EnumSource(Measure.class)
    void eachChangeIsTrueAndTheLargestComesFirst(Measure measure) {
        Cap cap = DemoJobs.cap("kiln-room", Map.of());
        List<Influence> influences = Influences.of(cap, measure);
        assertThat(influences).hasSizeGreaterThan(3);
        assertThat(influences).isSortedAccordingTo((a, b) -> Double.compare(Math.abs(b.change()), Math.abs(a.change())));
        for (Influence influence : influences) {
            Cap moved = DemoJobs.cap("kiln-room", Map.of(influence.input().path(), influence.to()));
            assertThat(measure.of(moved) - measure.of(cap)).as(influence.toString()).isCloseTo(influence.change(), within(1e-9));
        }
    }
}

package org.capwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.RodInputs;
import org.capwright.swing.Pair;
import org.capwright.swing.Swing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bushings left to the rule: each joint's own length, flush with the hood's inside where plate and hood are farthest apart. */
class BushingsTest {
    @ParameterizedTest
    @CsvSource({"2, 18", "4, 24", "4, 36", "6, 36", "6, 48", "6, 60"})
    void eachJointsBushingsEndFlushAndClearItsLeaf(int leaves, int stack) {
        Cap cap = cap(Map.of("leaves.count", Integer.toString(leaves), "stack.outsideDiameter", stack + " in"));
        for (Leaf leaf : cap.leaves()) {
            Doubler plate = cap.doublers().get(leaf.number() - 1);
            Bushing bushing = cap.bushings().get(leaf.number() - 1);
            double end = plate.faceYMm() + plate.thicknessMm() - bushing.lengthMm();
            double far = leaf.rodAxisMm() + bushing.outsideMm() / 2;
            assertThat(Math.hypot(end, far)).as("end of bushing %d", leaf.number()).isCloseTo(cap.hood().insideRadiusMm(),
                    within(1e-9));
            assertThat(Swing.of(cap).least(Pair.LEAF_BUSHING, leaf.number()).leastMm()).as("leaf %d", leaf.number())
                    .isGreaterThan(25.4 / 16);
        }
        assertThat(cap.bushings().stream().distinct().count()).isEqualTo(leaves / 2);
        assertThat(AutoValues.of(cap, RodInputs.BUSHING_LENGTH).orElseThrow().mm())
                .isEqualTo(cap.bushings().stream().mapToDouble(Bushing::lengthMm).max().orElseThrow());
    }

    @Test
    void oneThatIsTypedServesAll() {
        Cap cap = cap(Map.of("leaves.count", "4", "stack.outsideDiameter", "36 in", "bushings.length", "1/2 in"));
        assertThat(cap.bushings()).extracting(Bushing::lengthMm).isEqualTo(List.of(12.7, 12.7));
        assertThat(cap.bushingsOf(2)).isEmpty();
    }

    private static Cap cap(Map<String, String> typed) {
        return Cap.solve(JobReader.read(JobText.of(typed)).orThrow());
    }
}

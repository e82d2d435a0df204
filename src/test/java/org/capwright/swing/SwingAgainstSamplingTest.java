package org.capwright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.junit.jupiter.api.Test;

/** Every clearance of over 500 random caps (2, 4 and 6 leaves) against plain sampling, to 0.0005 in. */
class SwingAgainstSamplingTest {
    private static final long SEED = 70_000;
    private static final int SEEDS = 600;
    private static final double EXACT_MM = 0.0005 * 25.4;
    /** Points know how far apart two things are, not how deep in each other. */
    private static final double APART_MM = 0.5;

    @Test
    void closedFormsAndSamplesAgree() {
        List<VariedCaps.Drawn> caps = VariedCaps.of(SEED, SEEDS);
        assertThat(caps.size()).as("caps of %d seeds", SEEDS).isGreaterThanOrEqualTo(500);
        Set<Pair> compared = EnumSet.noneOf(Pair.class);
        caps.forEach(drawn -> compare(drawn, compared));
        assertThat(compared).containsExactlyInAnyOrder(Pair.values());
    }

    private static void compare(VariedCaps.Drawn drawn, Set<Pair> compared) {
        Cap cap = drawn.cap();
        Swing swing = Swing.of(cap);
        for (Leaf leaf : cap.leaves()) {
            new SampledSwing(cap, leaf).least().forEach((pair, sampled) -> {
                double found = swing.least(pair, leaf.number()).leastMm();
                if (sampled.equals(found) || pair == Pair.FLANGE_SPOUT && found < APART_MM) {
                    return;
                }
                assertThat(found).as("%s of leaf %d, %s", pair, leaf.number(), drawn).isCloseTo(sampled, within(EXACT_MM));
                compared.add(pair);
            });
        }
    }
}

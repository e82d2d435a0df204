package org.capwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Spreading against plain trying of many azimuths. */
class SpreadTest {
    private static final long SEED = 4711;
    private static final int STEPS = 20000;

    @Test
    void noOtherAzimuthIsFartherFromEverything() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            int count = 1 + random.nextInt(8);
            List<Spread.Feature> features = new ArrayList<>();
            for (int f = 1 + random.nextInt(12); f > 0; f--) {
                features.add(new Spread.Feature(random.nextDouble() * 8 - 1, random.nextDouble() * 0.3));
            }
            double best = Double.NEGATIVE_INFINITY;
            for (int step = 0; step < STEPS; step++) {
                best = Math.max(best, Spread.leastDistanceRad(count, 2 * Math.PI / count * step / STEPS, features));
            }
            double found = Spread.leastDistanceRad(count, Spread.farthest(count, features), features);
            assertThat(found).as("seed %d, case %d", SEED, i).isGreaterThanOrEqualTo(best - 1e-9);
            assertThat(found).isCloseTo(best, within(2 * Math.PI / STEPS));
        }
    }

    @Test
    void withoutFeaturesItIsZero() {
        assertThat(Spread.farthest(6, List.of())).isZero();
    }
}

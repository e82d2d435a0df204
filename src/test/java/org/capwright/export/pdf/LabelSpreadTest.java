package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Labels keep their pitch, their order, and stay as near as they can. */
class LabelSpreadTest {
    private static final double PITCH = 3.8;

    @Test
    void farApartTheyStayWhereTheyBelong() {
        assertThat(LabelSpread.spread(List.of(0.0, 10.0, 13.8), PITCH)).containsExactly(0.0, 10.0, 13.8);
    }

    @Test
    void oneOnTheOtherTheySpreadEvenly() {
        List<Double> placed = LabelSpread.spread(List.of(5.0, 5.0, 5.0), PITCH);
        assertThat(placed.get(0)).isCloseTo(5 - PITCH, within(1e-9));
        assertThat(placed.get(1)).isCloseTo(5, within(1e-9));
        assertThat(placed.get(2)).isCloseTo(5 + PITCH, within(1e-9));
    }

    @Test
    void random() {
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            List<Double> wanted = new ArrayList<>();
            int count = 1 + random.nextInt(30);
            for (int i = 0; i < count; i++) {
                wanted.add(random.nextDouble() * 100);
            }
            wanted.sort(null);
            List<Double> placed = LabelSpread.spread(wanted, PITCH);
            for (int i = 1; i < count; i++) {
                assertThat(placed.get(i) - placed.get(i - 1)).as("seed " + seed).isGreaterThanOrEqualTo(PITCH - 1e-9);
            }
            noLabelCanMoveNearer(wanted, placed, "seed " + seed);
        }
    }

    /** Where labels touch nobody on a side, moving that way must not bring the whole touching row nearer. */
    private static void noLabelCanMoveNearer(List<Double> wanted, List<Double> placed, String seed) {
        int from = 0;
        for (int i = 1; i <= placed.size(); i++) {
            if (i == placed.size() || placed.get(i) - placed.get(i - 1) > PITCH + 1e-6) {
                double off = 0;
                for (int k = from; k < i; k++) {
                    off += placed.get(k) - wanted.get(k);
                }
                assertThat(off).as(seed + ", row from " + from).isCloseTo(0, within(1e-6));
                from = i;
            }
        }
    }
}

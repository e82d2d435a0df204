package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Placing of dimensions in tiers: whatever the dimensions, no value may lie on another or on an extension line. */
class SpanTiersTest {
    private static final double WIDE_MM = 200;

    @Test
    void valuesKeepOffEachOtherAndOffExtensionLines() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            List<SpanTiers.Wanted> wanted = new ArrayList<>();
            int count = 1 + random.nextInt(12);
            for (int i = 0; i < count; i++) {
                double from = random.nextDouble() * WIDE_MM;
                wanted.add(new SpanTiers.Wanted(i, from, from + 0.5 + random.nextDouble() * (WIDE_MM - from), 8
                        + random.nextDouble() * 25));
            }
            List<SpanTiers.Placed> placed = SpanTiers.place(wanted, -40, WIDE_MM + 40);
            assertThat(placed).as("seed " + seed).hasSize(count);
            for (SpanTiers.Placed one : placed) {
                for (SpanTiers.Placed other : placed) {
                    check(one, other, seed);
                }
            }
        }
    }

    private static void check(SpanTiers.Placed one, SpanTiers.Placed other, int seed) {
        double from = one.textFrom();
        double to = from + one.wanted().textMm();
        if (one != other && one.tier() == other.tier()) {
            assertThat(from < other.textFrom() + other.wanted().textMm() && other.textFrom() < to).as("values, seed " + seed)
                    .isFalse();
            assertThat(from < other.lineTo() && other.lineFrom() < to).as("value on a line, seed " + seed).isFalse();
        }
        if (other.tier() >= one.tier()) {
            for (double line : new double[] {other.wanted().from(), other.wanted().to()}) {
                assertThat(line > from && line < to).as("extension line through a value, seed " + seed).isFalse();
            }
        }
    }
}

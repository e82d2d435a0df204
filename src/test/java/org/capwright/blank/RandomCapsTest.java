package org.capwright.blank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The random caps that other tests run on are well mixed, also over neighbouring seeds. */
class RandomCapsTest {
    private static final int CAPS = 400;

    @Test
    void everyChoiceComesAsOftenAsItShould() {
        List<RandomCaps.Drawn> caps = RandomCaps.of(1, CAPS);
        share(caps, "leaves.count", Map.of("2", 0.5, "4", 0.25, "6", 0.25));
        share(caps, "job.units", Map.of("in", 0.5, "mm", 0.5));
        share(caps, "sleeve.gauge", Map.of("16", 1.0 / 3, "18", 1.0 / 3, "20", 1.0 / 3));
        share(caps, "hood.seam.kind", Map.of("butt", 1.0 / 3, "lap", 1.0 / 3, "lock", 1.0 / 3));
        share(caps, "leaves.metal", Map.of("galvanized", 0.25, "cold-rolled", 0.25, "stainless 304", 0.25, "aluminium", 0.25));
        share(caps, "hood.metal", Map.of("galvanized", 0.25, "cold-rolled", 0.25, "stainless 304", 0.25, "aluminium", 0.25));
        share(caps, "rods.diameter", Map.of("3/8 in", 1.0 / 3, "1/2 in", 1.0 / 3, "5/8 in", 1.0 / 3));
        share(caps, "standoffs.count", Map.of("auto", 0.25, "4", 0.25, "6", 0.25, "8", 0.25));
    }

    /** Five standard deviations of a share; jobs that are refused shift it by a little more. */
    private static void share(List<RandomCaps.Drawn> caps, String path, Map<String, Double> wanted) {
        Map<String, Integer> counts = new HashMap<>();
        caps.forEach(drawn -> counts.merge(drawn.inputs().get(path), 1, Integer::sum));
        assertThat(counts.keySet()).as(path).isEqualTo(wanted.keySet());
        wanted.forEach((text, share) -> assertThat(Math.abs(counts.get(text) - share * CAPS)).as("%s %s: %s", path, text, counts)
                .isLessThan(5 * Math.sqrt(CAPS * share * (1 - share)) + 0.05 * CAPS));
    }

    /**
     * Neighbouring seeds draw independently: one choice tells nothing of the next cap's, nor of another choice (chi-squared, 3
     * by 3).
     */
    @Test
    void neighboursAndChoicesHaveNothingInCommon() {
        List<RandomCaps.Drawn> caps = RandomCaps.of(1, CAPS);
        independent(caps, "leaves.count", "leaves.count", 1);
        independent(caps, "job.units", "job.units", 1);
        independent(caps, "leaves.metal", "leaves.metal", 1);
        independent(caps, "leaves.count", "leaves.metal", 0);
        independent(caps, "job.units", "leaves.count", 0);
        independent(caps, "sleeve.seam.kind", "hood.seam.kind", 0);
    }

    /**
     * Chi-squared with at most 9 degrees of freedom: over 33.7 once in ten thousand (NIST/SEMATECH e-Handbook, table 1.3.6.7.4,
     * 0.999: 27.9).
     */
    private static void independent(List<RandomCaps.Drawn> caps, String one, String other, int further) {
        Map<String, Integer> first = new HashMap<>();
        Map<String, Integer> second = new HashMap<>();
        Map<String, Integer> both = new HashMap<>();
        int n = caps.size() - further;
        for (int i = 0; i < n; i++) {
            String a = caps.get(i).inputs().get(one);
            String b = caps.get(i + further).inputs().get(other);
            first.merge(a, 1, Integer::sum);
            second.merge(b, 1, Integer::sum);
            both.merge(a + " & " + b, 1, Integer::sum);
        }
        double chiSquared = 0;
        for (String a : first.keySet()) {
            for (String b : second.keySet()) {
                double expected = (double) first.get(a) * second.get(b) / n;
                double off = both.getOrDefault(a + " & " + b, 0) - expected;
                chiSquared += off * off / expected;
            }
        }
        assertThat(chiSquared).as("%s and %s, %d further: %s", one, other, further, both).isLessThan(33.7);
    }
}

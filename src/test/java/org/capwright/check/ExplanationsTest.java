package org.capwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.capwright.blank.RandomCaps;
import org.capwright.part.Cap;
import org.junit.jupiter.api.Test;

/** Every check explains itself in two plain sentences. */
class ExplanationsTest {
    @Test
    void everyCheckOfEveryCap() {
        Set<String> kinds = new HashSet<>();
        for (String demo : DemoJobs.ALL) {
            explained(Checks.of(DemoJobs.cap(demo, Map.of("air.duty", "corrosive"))), kinds);
        }
        for (RandomCaps.Drawn drawn : RandomCaps.of(5_100, 20)) {
            explained(Checks.of(drawn.cap()), kinds);
        }
        // 43 of a two-leaf cap, and those that only 4 and 6 leaves have
        assertThat(kinds.size()).isGreaterThan(37);
    }

    private static void explained(List<Check> checks, Set<String> kinds) {
        for (Check check : checks) {
            assertThat(check.explanation()).as(check.id()).endsWith(".").hasSizeBetween(60, 320);
            assertThat(check.explanation().split("\\.( |$)")).as(check.id()).hasSizeBetween(1, 2);
            kinds.add(check.explanation());
        }
    }

    @Test
    void aSideOfAClearanceAndHeldPartsToo() {
        Check hood = Checks.of(DemoJobs.cap("kiln-room", Map.of())).get(0);
        assertThat(Explanations.of("leaf.1.hood.minus")).isEqualTo(hood.explanation());
        assertThat(List.of("held.together", "held.standoffs", "held.stack.slip", "stock.hood.length"))
                .allMatch(id -> !Explanations.of(id).isEmpty());
        assertThat(Explanations.of("no.such.check")).isEmpty();
    }

    /**
     * What holds to the design table is tight between thickness and the table's radius; what holds to annealed sheet is
     * clear.
     */
    @Test
    void bendRadiiByTheDesignTable() {
        Cap kiln = DemoJobs.cap("kiln-room", Map.of());
        Check annealed = check(kiln, "bend.leaves");
        assertThat(annealed.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(annealed.limit().source()).contains("FAA AC 43.13-1B (confirmed)", "asks 3/32 in of 1020");
        assertThat(check(byTable("0.0396 in"), "bend.leaves").verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(check(byTable("0.094 in"), "bend.leaves").verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(check(byTable("0.03 in"), "bend.leaves").verdict()).isEqualTo(Verdict.FOUL);
    }

    private static Cap byTable(String radius) {
        return DemoJobs.cap("kiln-room", Map.of("limits.bendRadius", "design table", "leaves.bend.insideRadius", radius));
    }

    private static Check check(Cap cap, String id) {
        return Checks.of(cap).stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }
}

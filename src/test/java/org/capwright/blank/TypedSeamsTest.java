package org.capwright.blank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Remedies;
import org.capwright.check.Verdict;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A seam typed anywhere: either nothing lies across an end of the blank, or the check is foul and turning the seam mends it. */
class TypedSeamsTest {
    @ParameterizedTest
    @ValueSource(strings = {"sleeve", "hood"})
    void nothingLiesAcrossAnEndUnlessTheCheckIsFoul(String part) {
        int fouls = 0;
        for (Map<String, String> seam : List.of(Map.of("kind", "butt"), Map.of("kind", "lap", "width", "1/2 in"),
                Map.of("kind", "lap", "width", "2 in"),
                Map.of("kind", "lock", "width", "1/2 in"))) {
            for (int degrees = 0; degrees < 180; degrees += 3) {
                fouls += seam(part, seam, degrees, "0 in") ? 0 : 1;
            }
        }
        assertThat(fouls).isBetween(40, 200);
    }

    /** True where the check is not foul. */
    private static boolean seam(String part, Map<String, String> seam, int degrees, String limit) {
        Map<String, String> typed = new HashMap<>(Map.of(part + ".seam.azimuth", degrees + " deg", "limits.seam", limit));
        seam.forEach((name, text) -> typed.put(part + ".seam." + name, text));
        Cap cap = Cap.solve(Jobs.kilnWith(typed));
        List<Check> checks = Checks.of(cap);
        Check check = checks.stream().filter(one -> one.id().equals(part + ".seam")).findFirst().orElseThrow();
        if (check.verdict() == Verdict.FOUL) {
            assertThat(Remedies.of(cap, checks, check)).as("remedy at %s %d", seam, degrees).isNotEmpty();
            return false;
        }
        for (Blank blank : Blanks.of(cap)) {
            if (blank.id().startsWith(part)) {
                blank.holes().forEach(hole -> within(hole, blank, seam + " at " + degrees));
            }
        }
        return true;
    }

    private static void within(Path hole, Blank blank, String what) {
        Bounds bounds = hole.bounds();
        assertThat(bounds.minX()).as(what).isGreaterThan(0);
        assertThat(bounds.maxX()).as(what).isLessThan(blank.lengthMm());
    }
}

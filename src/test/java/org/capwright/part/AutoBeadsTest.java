package org.capwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Verdict;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.RefusedJobException;
import org.junit.jupiter.api.Test;

/** Beads left to the rule keep off holes and plates at any size; typed ones stay, and the check tells. */
class AutoBeadsTest {
    @Test
    void atAnyHeightOfHoodAndStandoff() {
        int moved = 0;
        for (double below = 3; below <= 8; below += 0.25) {
            for (double height = 1; height <= 3; height += 0.5) {
                Map<String, String> typed = Map.of("stack.outsideDiameter", "18 in", "hood.belowRim", inches(below),
                        "standoffs.height", inches(height),
                        "standoffs.rivetsEach", "2");
                Cap cap = Cap.solve(JobReader.read(JobText.of(typed)).orThrow());
                double foot = below * 25.4 + cap.standoff().topZMm() - cap.standoff().heightMm();
                PlacedBead lower = cap.hood().flat().beads().get(0);
                if (foot + cap.standoff().rivetHeightMm(0) > 25.4) {
                    assertThat(holes(cap).verdict()).as("below %s, height %s", below, height).isEqualTo(Verdict.CLEAR);
                }
                moved += Math.abs(lower.aboveFootMm() - 25.4) > 1e-9 ? 1 : 0;
            }
        }
        assertThat(moved).as("beads moved").isGreaterThan(10);
    }

    @Test
    void movedNoFartherThanNeeded() {
        BeadPlace place = new BeadPlace(6, 400).keepOff(30, 11).keepOff(22, 11).keepOff(200, 40);
        assertThat(place.nearest(25)).isCloseTo(11, within(1e-9));
        assertThat(place.nearest(36)).isCloseTo(41, within(1e-9));
        assertThat(place.nearest(100)).isEqualTo(100);
        assertThat(place.nearest(190)).isCloseTo(160, within(1e-9));
        assertThat(new BeadPlace(6, 20).keepOff(13, 30).nearest(12)).as("no room: where it was wanted").isEqualTo(12);
    }

    @Test
    void aTypedBeadStaysOnTheHole() throws RefusedJobException {
        Cap cap = Cap.solve(Jobs.kilnWith(Map.of("hood.beads[1].fromTop", "12.5 in")));
        assertThat(cap.hood().flat().beads().get(0).aboveFootMm()).isCloseTo(2.5 * 25.4, within(1e-9));
        assertThat(holes(cap).verdict()).isEqualTo(Verdict.FOUL);
    }

    private static Check holes(Cap cap) {
        return Checks.of(cap).stream().filter(check -> check.id().equals("hood.holes")).findFirst().orElseThrow();
    }

    private static String inches(double inches) {
        return String.format(Locale.ROOT, "%.3f in", inches);
    }
}

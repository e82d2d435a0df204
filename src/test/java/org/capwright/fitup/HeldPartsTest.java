package org.capwright.fitup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.Test;

/** Parts that are cut keep their sizes, and the rest follows. */
class HeldPartsTest {
    private static final double OVER_MM = 25.4 * 3 / 32;
    private static final double CLOSE_MM = 1e-5;

    @Test
    void aSleeveRolledOverGivesNewLeavesGutterAndHood() {
        Cap drawn = Cap.solve(Jobs.kiln());
        FitUp fitUp = FitUp.of(Jobs.kilnWith(Map.of("fit.sleeveGirth", girth(drawn.sleeve().outsideRadiusMm() + OVER_MM / 2))));
        Cap made = fitUp.made();

        assertThat(fitUp.rederived().held()).containsExactly("sleeve");
        assertThat(made.sleeve().outsideRadiusMm()).isCloseTo(drawn.sleeve().outsideRadiusMm() + OVER_MM / 2, within(CLOSE_MM));
        assertThat(made.leaves().get(0).slab().radiusMm()).isCloseTo(drawn.leaves().get(0).slab().radiusMm() + OVER_MM / 2, within(CLOSE_MM));
        assertThat(made.hood().insideRadiusMm()).isCloseTo(drawn.hood().insideRadiusMm() + OVER_MM / 2, within(CLOSE_MM));
        assertThat(fitUp.rederived().changes(drawn)).extracting(BlankChange::id)
                .contains("leaf-1", "gutter-1", "hood", "stop-bar-1", "rod-1").doesNotContain("sleeve", "washer", "doubler-1");
        BlankChange hood = fitUp.rederived().changes(drawn).stream().filter(one -> one.id().equals("hood")).findFirst().orElseThrow();
        assertThat(hood.newLengthMm() - hood.oldLengthMm()).isCloseTo(Math.PI * OVER_MM, within(1e-3));
    }

    @Test
    void withTheHoodCutTooTheStandoffsChange() {
        Cap drawn = Cap.solve(Jobs.kiln());
        FitUp fitUp = FitUp.of(Jobs.kilnWith(Map.of("fit.sleeveGirth", girth(drawn.sleeve().outsideRadiusMm() + OVER_MM / 2), "held.hood", "cut")));

        assertThat(fitUp.made().hood().insideRadiusMm()).isCloseTo(drawn.hood().insideRadiusMm(), within(CLOSE_MM));
        assertThat(drawn.standoff().webMm() - fitUp.made().standoff().webMm()).isCloseTo(OVER_MM / 2, within(0.01));
        assertThat(fitUp.rederived().changes(drawn)).extracting(BlankChange::id).contains("standoff").doesNotContain("hood");
    }

    @Test
    void leavesGutterRodsAndBarKeepTheirSizes() {
        Cap drawn = Cap.solve(Jobs.kiln());
        FitUp fitUp = FitUp.of(Jobs.kilnWith(Map.of("fit.sleeveGirth", girth(drawn.sleeve().outsideRadiusMm() + 0.5), "held.leaves", "cut",
                "held.gutter", "cut", "held.rods", "cut", "held.stop", "cut", "fit.hoodBore[0].diameter", "22.26 in")));
        Cap made = fitUp.made();

        assertThat(made.leaves().get(0).slab()).usingRecursiveComparison().withComparatorForType(HeldPartsTest::close, Double.class)
                .isEqualTo(drawn.leaves().get(0).slab());
        assertThat(made.gutters().get(0).endRadiusMm()).isCloseTo(drawn.gutters().get(0).endRadiusMm(), within(CLOSE_MM));
        assertThat(made.rods().get(0).lengthMm()).isCloseTo(drawn.rods().get(0).lengthMm(), within(CLOSE_MM));
        assertThat(made.stops().get(0).endRadiusMm()).isCloseTo(drawn.stops().get(0).endRadiusMm(), within(CLOSE_MM));
        assertThat(fitUp.rederived().changes(drawn)).extracting(BlankChange::id).doesNotContain("leaf-1", "gutter-1", "rod-1", "stop-bar-1");
        assertThat(fitUp.rederived().contradictions()).allSatisfy(check -> assertThat(check.verdict()).isNotEqualTo(Verdict.FOUL));
    }

    @Test
    void standoffsThatDoNotFitBothCylindersAreAContradiction() {
        FitUp fitUp = FitUp.of(Jobs.kilnWith(Map.of("held.sleeve", "cut", "held.standoffs", "cut", "fit.hoodBore[0].diameter", "22 1/2 in")));
        Check check = fitUp.rederived().contradictions().get(0);

        assertThat(check.id()).isEqualTo("held.standoffs");
        assertThat(check.verdict()).isEqualTo(Verdict.FOUL);
        assertThat(check.value()).isCloseTo(25.4 * (11.25 - 11.1141), within(0.01));
        assertThat(fitUp.verdict()).isEqualTo(Verdict.FOUL);
    }

    @Test
    void aSleeveThatDoesNotGoOnTheStackIsAContradiction() {
        FitUp fitUp = FitUp.of(Jobs.kilnWith(Map.of("held.sleeve", "cut", "fit.stackGirth", "57 1/2 in")));
        assertThat(fitUp.rederived().contradictions()).singleElement().satisfies(check -> {
            assertThat(check.id()).isEqualTo("held.stack.slip");
            assertThat(check.verdict()).isEqualTo(Verdict.FOUL);
        });
    }

    @Test
    void readingsOfLeavesAndCoversSetTheLeafRadius() {
        Cap drawn = Cap.solve(Jobs.kiln());
        double radius = drawn.leaves().get(0).slab().radiusMm() + 1;
        double length = Math.sqrt(radius * radius - 150 * 150) - drawn.leaves().get(0).slab().hingeEdgeMm();
        double cover = radius - drawn.leaves().get(0).sheet().thicknessMm() - drawn.sleeve().outsideRadiusMm();
        FitUp fitUp = FitUp.of(Jobs.kilnWith(Map.of("fit.leaves[0].at", "150 mm", "fit.leaves[0].length", mm(length),
                "fit.covers[0].azimuth", "20 deg", "fit.covers[0].cover", mm(cover))));

        assertThat(fitUp.work().leaves()).singleElement().satisfies(leaf -> {
            assertThat(leaf.side()).isEqualTo(1);
            assertThat(leaf.slab().radiusMm()).isCloseTo(radius, within(CLOSE_MM));
        });
        assertThat(fitUp.made().leaves().get(0).slab().radiusMm()).isCloseTo(radius, within(CLOSE_MM));
    }

    /**
     * The relief hole that was typed only just reaches the flanges' ends; leaves that fit a smaller sleeve would need a larger
     * one.
     */
    @Test
    void partsThatMakeNoCapTogetherAreNamedAndTheRestIsKept() {
        Map<String, String> made = new HashMap<>(Map.of("leaves.count", "4", "leaves.firstJoint", "7 in", "leaves.hingeFlange",
                "1/2 in"));
        Cap drawn = Cap.solve(Jobs.kilnWith(made));
        made.put("leaves.reliefHole", mm(drawn.leaves().get(1).reliefHoleMm() + 1e-6));
        made.put("held.standoffs", "cut");
        made.put("fit.sleeveGirth", girth(drawn.sleeve().outsideRadiusMm() - 1.2));
        FitUp fitUp = FitUp.of(Jobs.kilnWith(made));

        Contradiction one = fitUp.rederived().conflicts().get(0);
        assertThat(one.check().id()).isEqualTo("held.together");
        assertThat(one.check().verdict()).isEqualTo(Verdict.FOUL);
        assertThat(one.check().words()).isEqualTo("sleeve as made contradicts the rest of the job: parts that can't be kept");
        assertThat(one.check().limit().source()).contains("to reach the ends of both flanges");
        assertThat(one.parts()).containsExactly("sleeve");
        assertThat(one.remedy()).startsWith("make anew (type it open under held): sleeve; or change the job. Type ");
        assertThat(fitUp.rederived().held()).containsExactly("standoffs");
        assertThat(fitUp.verdict()).isEqualTo(Verdict.FOUL);
        made.put("held.sleeve", "open");
        assertThat(FitUp.of(Jobs.kilnWith(made)).rederived().contradictions()).allMatch(check -> check.verdict() != Verdict.FOUL);
    }

    private static int close(double a, double b) {
        return Math.abs(a - b) < CLOSE_MM ? 0 : Double.compare(a, b);
    }

    private static String girth(double radiusMm) {
        return mm(2 * Math.PI * radiusMm);
    }

    private static String mm(double mm) {
        return String.format(Locale.ROOT, "%.9f mm", mm);
    }
}

package org.capwright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.units.Length;
import org.junit.jupiter.api.Test;

/** The worked cap, spoilt on purpose: the clearance that a lead hand would look at falls, by as much, there, at that opening. */
class BrokenKilnTest {
    private static final double EXACT_IN = 1e-6;

    private static Clearance kiln(Pair pair, Map<String, String> typed) {
        return Swing.of(Cap.solve(Jobs.kilnWith(typed))).least(pair, 1);
    }

    private static double fallsInches(Pair pair, Map<String, String> typed) {
        return Length.ofMm(kiln(pair, Map.of()).leastMm() - kiln(pair, typed).leastMm()).inches();
    }

    @Test
    void aNarrowerAnnulusBringsTheHoodNearer() {
        Map<String, String> narrow = Map.of("hood.annulus", "1 in");
        assertThat(fallsInches(Pair.LEAF_HOOD, narrow)).isCloseTo(1, within(EXACT_IN));
        Clearance spoilt = kiln(Pair.LEAF_HOOD, narrow);
        Clearance sound = kiln(Pair.LEAF_HOOD, Map.of());
        assertThat(spoilt.openRad()).isCloseTo(sound.openRad(), within(1e-9));
        assertThat(spoilt.where()).isEqualTo(sound.where());
    }

    /** An inward bead just over the rim, where the hinge corner's lip swings out. */
    @Test
    void anInwardBeadAtTheHingeCornersLip() {
        Map<String, String> bead = Map.of("hood.beads[0].side", "in", "hood.beads[0].fromTop", "11 in");
        assertThat(fallsInches(Pair.LEAF_HOOD, bead)).isBetween(0.1, 0.125);
        Clearance spoilt = kiln(Pair.LEAF_HOOD, bead);
        assertThat(Math.abs(spoilt.where().z())).isLessThan(Length.MM_PER_INCH / 4);
        assertThat(spoilt.where().y()).isGreaterThan(9 * Length.MM_PER_INCH);
    }

    @Test
    void aDeeperHingeFlangeReachesForTheGutter() {
        Map<String, String> deep = Map.of("leaves.hingeFlange", "0.6 in");
        assertThat(fallsInches(Pair.HEEL_WALL, deep)).isGreaterThan(0.2);
        Clearance wall = kiln(Pair.HEEL_WALL, deep);
        assertThat(Math.toDegrees(wall.openRad())).as("hangs below the rim up to the stop").isCloseTo(85, within(0.01));
        assertThat(wall.where().z()).isLessThanOrEqualTo(0);
        // the handbook's deepest point, sqrt(o^2 + h_h^2) - z_r below the rim
        double deepest = Math.hypot(0.25, 0.25 + 0.6) - (0.0396 + 0.25);
        assertThat(Length.ofMm(kiln(Pair.HEEL_FLOOR, deep).leastMm()).inches()).isCloseTo(0.625 - deepest, within(EXACT_IN));
        assertThat(fallsInches(Pair.LEAF_HOOD, deep)).isPositive();
    }

    @Test
    void aNarrowerGutterByHalfOfIt() {
        assertThat(fallsInches(Pair.HEEL_WALL, Map.of("gutter.insideWidth", "1 3/4 in"))).isCloseTo(0.25, within(EXACT_IN));
        assertThat(fallsInches(Pair.HEEL_FLOOR, Map.of("gutter.depth", "1/2 in"))).isCloseTo(0.125, within(EXACT_IN));
    }

    @Test
    void aLongerSpoutMeetsTheClosedFlange() {
        Map<String, String> longer = Map.of("gutter.spout", "5/8 in");
        assertThat(fallsInches(Pair.FLANGE_SPOUT, longer)).isCloseTo(0.375, within(0.005));
        Clearance spout = kiln(Pair.FLANGE_SPOUT, longer);
        assertThat(spout.leastMm()).isNegative();
        assertThat(spout.openRad()).isZero();
        assertThat(spout.where().x()).isCloseTo((2.25 / 2 + 0.0336) * Length.MM_PER_INCH, within(0.1));
    }

    @Test
    void tallerStandoffsReachTheClosedLip() {
        Map<String, String> taller = Map.of("standoffs.belowRim", "3/8 in");
        assertThat(fallsInches(Pair.LIP_STANDOFF, taller)).isCloseTo(0.5, within(EXACT_IN));
        Clearance lip = kiln(Pair.LIP_STANDOFF, taller);
        assertThat(lip.leastMm()).isNegative();
        assertThat(lip.openRad()).isLessThan(Math.toRadians(1));
    }

    /** What stands out over a lower hood cannot touch it: the tips do not count, the hinge corner's lip still does. */
    @Test
    void aLowerHoodLeavesTheTipsBare() {
        Map<String, String> low = Map.of("hood.aboveRim", "6 in", "hood.beads[1].fromTop", "8 in");
        Cap cap = Cap.solve(Jobs.kilnWith(low));
        assertThat(cap.hood().aboveRimMm() - Swing.of(cap).tipHeightMm()).isNegative();
        assertThat(kiln(Pair.LEAF_HOOD, low).where().z()).isLessThan(6 * Length.MM_PER_INCH);
    }

    @Test
    void lessCoverBringsTheSleeveNearer() {
        assertThat(fallsInches(Pair.LEAF_SLEEVE, Map.of("leaves.cover", "1/4 in"))).isCloseTo(0.25, within(0.001));
        assertThat(kiln(Pair.LEAF_SLEEVE, Map.of("leaves.cover", "1/4 in")).where().z()).isLessThanOrEqualTo(1e-6);
    }

    @Test
    void aNarrowerGapBringsTheLeavesTogether() {
        Clearance leaves = kiln(Pair.LEAF_LEAF, Map.of("leaves.gap", "1/8 in"));
        assertThat(Length.ofMm(leaves.leastMm()).inches()).isCloseTo(0.125, within(EXACT_IN));
        assertThat(leaves.openRad()).isZero();
    }

    @Test
    void longerBushingsReachTheLeaf() {
        Map<String, String> longer = Map.of("bushings.length", "2 1/4 in");
        assertThat(kiln(Pair.LEAF_BUSHING, longer).leastMm()).isNegative();
        assertThat(kiln(Pair.LEAF_BUSHING, longer).where().y()).isGreaterThan(9 * Length.MM_PER_INCH);
    }

    /** Flanges bent to 60 degrees stand out: nearer to the hood, and higher than the top face when open. */
    @Test
    void anOpenFlangeStandsOut() {
        Map<String, String> open = Map.of("leaves.flangeAngle", "60 deg");
        assertThat(fallsInches(Pair.LEAF_HOOD, open)).isPositive();
        double tip = Swing.of(Cap.solve(Jobs.kilnWith(open))).tipHeightMm();
        double over = 0.5 * Math.sin(Math.toRadians(85 - 60));
        assertThat(Length.ofMm(tip - Swing.of(Cap.solve(Jobs.kiln())).tipHeightMm()).inches()).isCloseTo(over, within(EXACT_IN));
    }
}

package org.capwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.capwright.units.Length;
import org.junit.jupiter.api.Test;

/** The trade handbook's worked figures, as printed there (inches and degrees); tolerance half a unit of the last digit. */
class WorkedFiguresTest {
    private static final double TEN_THOUSANDTH = 0.00006;
    private final Cap kiln = Cap.solve(Jobs.kiln());

    @Test
    void sleeveAndHoodGirths() {
        assertThat(in(kiln.sleeve().flat().lengthMm())).isCloseTo(57.1035, within(TEN_THOUSANDTH));
        assertThat(in(2 * kiln.hood().insideRadiusMm())).isCloseTo(22.2282, within(TEN_THOUSANDTH));
        assertThat(in(kiln.hood().flat().lengthMm())).isCloseTo(70.4375, within(TEN_THOUSANDTH));
        assertThat(in(kiln.sleeve().outsideRadiusMm())).isCloseTo(9.1141, within(TEN_THOUSANDTH));
        assertThat(in(kiln.hood().outsideRadiusMm())).isCloseTo(11.1477, within(TEN_THOUSANDTH));
    }

    @Test
    void seamsAndStandoffsGoWhereNothingElseIs() {
        assertThat(degrees(kiln.standoff().firstRad())).isCloseTo(0, within(1e-9));
        assertThat(degrees(kiln.sleeve().flat().seamAzimuthRad())).isCloseTo(30, within(1e-9));
        assertThat(first("4")).isCloseTo(45, within(1e-9));
        assertThat(first("8")).isCloseTo(22.5, within(1e-9));
    }

    private static double first(String standoffs) {
        return degrees(Cap.solve(Jobs.kilnWith(Map.of("standoffs.count", standoffs))).standoff().firstRad());
    }

    @Test
    void leafRadiusAndItsBend() {
        Leaf leaf = kiln.leaves().get(0);
        assertThat(in(leaf.slab().radiusMm())).isCloseTo(9.6537, within(TEN_THOUSANDTH));
        assertThat(in(leaf.bend().allowanceMm())).isCloseTo(0.08273, within(0.000006));
        assertThat(in(leaf.bend().outsideSetbackMm())).isCloseTo(0.07920, within(0.000006));
        assertThat(in(leaf.bend().deductionMm())).isCloseTo(0.07567, within(0.000006));
        assertThat(in(leaf.rodAxisMm())).isCloseTo(0.5, within(TEN_THOUSANDTH));
        assertThat(in(leaf.rodAxisZMm())).isCloseTo(0.2896, within(TEN_THOUSANDTH));
    }

    @Test
    void cornerCut() {
        assertThat(degrees(kiln.leaves().get(0).hingeCorner().interiorRad())).isCloseTo(88.516, within(0.0006));
        assertThat(kiln.leaves().get(0).hingeCorner().cutRad()).isCloseTo(0, within(1e-12));
        double at60 = Corner.cutRad(Math.toRadians(60), Math.toRadians(88.516));
        assertThat(degrees(at60)).isCloseTo(27.163, within(0.0006));
    }

    @Test
    void growthOfTheShrunkFlange() {
        Leaf leaf = kiln.leaves().get(0);
        assertThat(in(leaf.shrink().growthMm())).isCloseTo(0.0103, within(TEN_THOUSANDTH));
        double expected = 9.65370 + 0.5 - 0.07567 - 0.5 * in(leaf.shrink().growthMm());
        assertThat(in(leaf.shrink().blankRadiusMm())).isCloseTo(expected, within(TEN_THOUSANDTH));
    }

    @Test
    void bushingHole() {
        double half = Length.ofInches(0.625).mm() / 2;
        double axis = Length.ofInches(0.5).mm();
        double inside = Length.ofInches(11.1141).mm();
        double thickness = Length.ofInches(0.0336).mm();
        WallPassage hole = WallPassage.between(axis - half, axis + half, inside, inside + thickness);
        double neutral = inside + thickness / 2;
        assertThat(in(hole.fromRad() * neutral)).isCloseTo(0.1872, within(TEN_THOUSANDTH));
        assertThat(in(hole.toRad() * neutral)).isCloseTo(0.8145, within(TEN_THOUSANDTH));
    }

    @Test
    void rodLength() {
        assertThat(in(kiln.rods().get(0).lengthMm())).isCloseTo(23.0698, within(TEN_THOUSANDTH));
    }

    @Test
    void stopBarHalfWidthAndItsInverse() {
        StopBar bar = kiln.stops().get(0);
        assertThat(in(bar.cornerZMm())).isCloseTo(9.5, within(TEN_THOUSANDTH));
        assertThat(in(bar.halfWidthMm())).isCloseTo(1.5568, within(TEN_THOUSANDTH));
        Leaf leaf = kiln.leaves().get(0);
        double open = StopBar.openRad(leaf.rodAxisMm(), leaf.rodAxisZMm(), leaf.rodRadiusMm(), bar.cornerZMm(), bar.halfWidthMm());
        assertThat(degrees(open)).isCloseTo(85, within(1e-9));
    }

    @Test
    void standoffBendsAndWeb() {
        assertThat(degrees(kiln.standoff().innerBend().turnRad())).isCloseTo(86.860, within(0.0006));
        assertThat(degrees(kiln.standoff().outerBend().turnRad())).isCloseTo(92.578, within(0.0006));
        assertThat(in(kiln.standoff().webMm())).isCloseTo(1.9863, within(TEN_THOUSANDTH));
    }

    @Test
    void fourLeaves() {
        Cap cap = Cap.solve(Jobs.kilnWith(Map.ofEntries(
                Map.entry("stack.outsideDiameter", "36 in"), Map.entry("stack.slip", "3/16 in"),
                Map.entry("sleeve.gauge", "16"), Map.entry("leaves.count", "4"), Map.entry("hood.annulus", "2.5 in"),
                Map.entry("rods.diameter", "5/8 in"), Map.entry("rods.offset", "5/16 in"),
                Map.entry("leaves.firstJoint", "9.3484 in"), Map.entry("bushings.bore", "5/8 in"),
                Map.entry("bushings.outside", "3/4 in"), Map.entry("gutter.insideWidth", "auto"))));
        assertThat(in(cap.leaves().get(1).slab().radiusMm())).isCloseTo(18.6969, within(TEN_THOUSANDTH));
        Cap equal = Cap.solve(Jobs.kilnWith(Map.of("leaves.count", "4")));
        double radius = equal.leaves().get(1).slab().radiusMm();
        double gap = Length.ofInches(0.5).mm();
        assertThat(equal.joints().get(1)).isCloseTo(radius / 2 + gap / 4, within(1e-9));
    }

    private static double in(double mm) {
        return Length.ofMm(mm).inches();
    }

    private static double degrees(double rad) {
        return Math.toDegrees(rad);
    }
}

package org.capwright.refold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.capwright.blank.Blank;
import org.capwright.blank.RandomCaps;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.part.Standoff;
import org.junit.jupiter.api.Test;

/** The bracket bent up from its blank and held between sleeve and hood, its web in a radial plane. */
class StandoffRefoldedTest {
    private static final double EXACT_MM = 1e-4;

    @Test
    void kiln() {
        check(Cap.solve(Jobs.kiln()), "kiln");
        check(Cap.solve(Jobs.kilnWith(Map.of("standoffs.bend.insideRadius", "3/16 in", "standoffs.bend.k", "0.45"))), "wide bend");
    }

    @Test
    void randomCaps() {
        RandomCaps.of(800, 30).forEach(drawn -> check(drawn.cap(), drawn.toString()));
    }

    private static void check(Cap cap, String which) {
        Standoff standoff = cap.standoff();
        Blank blank = Flat.blank(cap, "standoff");
        double length = blank.outline().bounds().width();
        List<Double> lines = Flat.uprightBends(blank);
        // the web's outside stands on a radius: the turns follow from tangency to the sleeve and a chord of the hood
        double inner = Math.PI / 2 - Math.atan2(standoff.innerFlangeMm() / 2, cap.sleeve().outsideRadiusMm());
        double outer = Math.PI / 2 + Math.asin(standoff.outerFlangeMm() / 2 / cap.hood().insideRadiusMm());
        assertThat(standoff.innerBend().turnRad()).as(which).isCloseTo(inner, within(1e-9));
        assertThat(standoff.outerBend().turnRad()).as(which).isCloseTo(outer, within(1e-9));
        Fold fold = new Fold(List.of(new Fold.At(lines.get(0), inner), new Fold.At(lines.get(1), outer)),
                standoff.bend().insideRadiusMm(), standoff.bend().thicknessMm(), standoff.bend().neutralFactor());
        Placed placed = new Placed(fold, inner, Math.hypot(cap.sleeve().outsideRadiusMm(), standoff.innerFlangeMm() / 2));
        innerFlange(placed, fold, cap, which);
        Vec2 corner = placed.put(fold.mouldLine(1));
        Vec2 edge = placed.put(fold.outside(length));
        assertThat(corner.norm()).as("corner on hood: " + which).isCloseTo(cap.hood().insideRadiusMm(), within(EXACT_MM));
        assertThat(edge.norm()).as("edge on hood: " + which).isCloseTo(cap.hood().insideRadiusMm(), within(EXACT_MM));
        assertThat(edge.distance(corner)).as(which).isCloseTo(standoff.outerFlangeMm(), within(EXACT_MM));
        rivets(placed, fold, blank, standoff, which);
    }

    private static void innerFlange(Placed placed, Fold fold, Cap cap, String which) {
        Vec2 corner = placed.put(fold.mouldLine(0));
        Vec2 edge = placed.put(fold.outside(0));
        Vec2 middle = corner.plus(edge).times(0.5);
        assertThat(edge.distance(corner)).as(which).isCloseTo(cap.standoff().innerFlangeMm(), within(EXACT_MM));
        assertThat(middle.norm()).as("middle on sleeve: " + which).isCloseTo(cap.sleeve().outsideRadiusMm(), within(EXACT_MM));
        assertThat(middle.dot(edge.minus(corner))).as("tangent: " + which).isCloseTo(0, within(0.01));
    }

    /** The holes lie in the middle of the outer flange, where the hood's holes are. */
    private static void rivets(Placed placed, Fold fold, Blank blank, Standoff standoff, String which) {
        double half = Math.asin(standoff.outerFlangeMm() / 2 / standoff.hoodInsideMm());
        assertThat(blank.holes()).hasSize(standoff.rivets().each());
        for (Path hole : blank.holes()) {
            Vec2 middle = ((Segment.Arc) hole.segments().get(0)).center();
            Vec2 at = placed.put(fold.outside(middle.x()));
            assertThat(at.direction()).as(which).isCloseTo(half, within(1e-6));
        }
    }

    /** Puts the fold so that its web's outside runs along +x and its first mould line stands at a radius. */
    private record Placed(Fold fold, double turnRad, double cornerMm) {
        Vec2 put(Vec2 p) {
            Vec2 turned = p.minus(fold.mouldLine(0)).rotated(-turnRad);
            return turned.plus(new Vec2(cornerMm, 0));
        }
    }
}

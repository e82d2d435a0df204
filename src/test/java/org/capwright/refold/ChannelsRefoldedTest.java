package org.capwright.refold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.blank.RandomCaps;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.part.BendRule;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Jobs;
import org.capwright.part.Leaf;
import org.capwright.part.StopBar;
import org.junit.jupiter.api.Test;

/** Gutters and stop bars bent up from their blanks. */
class ChannelsRefoldedTest {
    private static final double EXACT_MM = 1e-4;

    private static Fold fold(Blank blank, BendRule rule) {
        List<Double> lines = Flat.levelBends(blank);
        Bounds bounds = blank.outline().bounds();
        assertThat(lines).hasSize(2);
        return new Fold(lines.stream().map(y -> new Fold.At(y - bounds.minY(), Math.PI / 2)).toList(), rule.insideRadiusMm(),
                rule.thicknessMm(), rule.neutralFactor());
    }

    /** The job asks for 2 1/4 in inside and 5/8 in deep. */
    @Test
    void gutterOfTheKiln() {
        Cap cap = Cap.solve(Jobs.kiln());
        gutter(cap, cap.gutters().get(0), 2.25 * 25.4, 0.625 * 25.4, "kiln");
    }

    @Test
    void randomCaps() {
        for (RandomCaps.Drawn drawn : RandomCaps.of(600, 25)) {
            Cap cap = drawn.cap();
            cap.gutters().forEach(gutter -> gutter(cap, gutter, gutter.insideWidthMm(), gutter.depthMm(), drawn.toString()));
            cap.stops().forEach(bar -> stop(cap, bar, drawn.toString()));
        }
    }

    private static void gutter(Cap cap, Gutter gutter, double insideMm, double depthMm, String which) {
        Blank blank = Flat.blank(cap, "gutter-" + gutter.number());
        Fold fold = fold(blank, gutter.bend());
        double width = blank.outline().bounds().height();
        Vec2 floor = fold.inside(width / 2);
        assertThat(fold.neutral(width).directionRad()).isCloseTo(Math.PI, within(1e-9));
        // the first wall runs along x, so widths are along y and depths along x
        assertThat(fold.inside(width).y() - fold.inside(0).y()).as(which).isCloseTo(insideMm, within(EXACT_MM));
        assertThat(floor.x() - fold.inside(0).x()).as(which).isCloseTo(depthMm, within(EXACT_MM));
        assertThat(floor.x() - fold.inside(width).x()).as(which).isCloseTo(depthMm, within(EXACT_MM));
        spouts(cap, gutter, blank, which);
    }

    /** On the floor's middle the end stands the spout's length outside the sleeve, and its cut is square to the radius there. */
    private static void spouts(Cap cap, Gutter gutter, Blank blank, String which) {
        double end = blank.outline().points(0.01).stream().filter(p -> p.x() > 0).mapToDouble(Vec2::x).max().orElseThrow();
        double middle = Math.sqrt(Math.pow(cap.sleeve().outsideRadiusMm() + spoutMm(cap), 2) - gutter.jointMm() * gutter.jointMm());
        double slope = gutter.jointMm() / middle;
        assertThat(end).as(which).isCloseTo(middle + slope * gutter.outsideWidthMm() / 2, within(EXACT_MM));
    }

    private static double spoutMm(Cap cap) {
        return cap.job().get(org.capwright.job.GutterInputs.SPOUT).mm();
    }

    private static void stop(Cap cap, StopBar bar, String which) {
        Blank blank = Flat.blank(cap, "stop-bar-" + bar.number());
        Fold fold = fold(blank, bar.bend());
        double width = blank.outline().bounds().height();
        double webOutside = fold.outside(width / 2).x();
        assertThat(fold.outside(width).y() - fold.outside(0).y()).as(which).isCloseTo(2 * bar.halfWidthMm(), within(EXACT_MM));
        assertThat(webOutside - fold.outside(0).x()).as(which).isCloseTo(bar.depthMm(), within(EXACT_MM));
        double corner = cap.hood().aboveRimMm() - (webOutside - fold.outside(width).x());
        assertThat(corner).as(which).isCloseTo(bar.cornerZMm(), within(EXACT_MM));
        halts(cap.leaves().get(bar.number() - 1), bar, cap.stopRad(), corner, which);
    }

    /** The leaf's top face, opened to the stop, passes through the bar's lower corner. */
    private static void halts(Leaf leaf, StopBar bar, double openRad, double cornerZ, String which) {
        Vec2 corner = new Vec2(bar.jointMm() + bar.halfWidthMm() - leaf.rodAxisMm(), cornerZ - leaf.rodAxisZMm());
        double offFace = corner.rotated(-openRad).y() + leaf.rodRadiusMm();
        assertThat(offFace).as(which).isCloseTo(0, within(EXACT_MM));
    }
}

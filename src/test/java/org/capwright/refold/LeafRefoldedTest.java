package org.capwright.refold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.capwright.blank.Blank;
import org.capwright.blank.RandomCaps;
import org.capwright.drawing.Layer;
import org.capwright.geom.Segment;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.metal.Bend;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.part.Leaf;
import org.junit.jupiter.api.Test;

/** Drip flanges bent down from the leaf's blank, the meridian kept (kappa 0, trim 0). */
class LeafRefoldedTest {
    private static final double EXACT_MM = 1e-4;

    /** The job asks for a hinge edge at 1/4 in with a flange of 0.3 in, and a curved flange of 1/2 in. */
    @Test
    void kiln() {
        Cap cap = Cap.solve(Jobs.kilnWith(Map.of("leaves.shrink.kappa", "0")));
        Leaf leaf = cap.leaves().get(0);
        // R_l = R_so + cover + t, handbook: 9.6537 in
        check(cap, leaf, 0.25 * 25.4, 0.3 * 25.4, 9.6537 * 25.4, 0.5 * 25.4, 0.002, "kiln");
    }

    @Test
    void randomCaps() {
        for (RandomCaps.Drawn drawn : RandomCaps.of(300, 25)) {
            JobText text = JobText.of(drawn.inputs()).with("leaves.shrink.kappa", "0").with("leaves.shrink.trim", "0 in");
            Cap cap = Cap.solve(JobReader.read(text).orThrow());
            for (Leaf leaf : cap.leaves()) {
                check(cap, leaf, leaf.slab().hingeEdgeMm(), leaf.hingeFlangeMm(), leaf.slab().radiusMm(), leaf.curveFlangeMm(), EXACT_MM,
                        drawn.toString());
            }
        }
    }

    private static void check(Cap cap, Leaf leaf, double hinge, double hingeFlange, double radius, double flange, double tolerance, String which) {
        Blank blank = Flat.blank(cap, "leaf-" + leaf.number());
        double hingeLine = Flat.uprightBends(blank).get(0);
        flange(leaf.bend(), -hingeLine, -blank.outline().bounds().minX(), -hinge, hingeFlange, tolerance, "hinge, " + which);
        double curveLine = radius(Flat.arcsAboutOrigin(blank, Layer.BEND));
        flange(leaf.bend(), curveLine, radius(Flat.arcsAboutOrigin(blank, Layer.CUT)), radius, flange, tolerance, "curve, " + which);
        if (leaf.slab().freeChord()) {
            double line = Flat.uprightBends(blank).get(1);
            double lip = leaf.freeRelief().orElseThrow().chordLip().x();
            flange(leaf.bend(), line, lip, leaf.slab().freeEdgeMm(), flange, tolerance, "free edge, " + which);
        }
    }

    private static double radius(List<Segment.Arc> arcs) {
        assertThat(arcs).isNotEmpty().allMatch(arc -> Math.abs(arc.radius() - arcs.get(0).radius()) < 1e-6);
        return arcs.get(0).radius();
    }

    /** Bends the section from far inside the leaf out to the lip; the leaf's top is the outside of the bend. */
    private static void flange(Bend bend, double lineMm, double lipMm, double mouldMm, double depthMm, double tolerance, String which) {
        double from = lineMm - 100;
        Fold fold = new Fold(List.of(new Fold.At(lineMm - from, bend.turnRad())), bend.insideRadiusMm(), bend.thicknessMm(),
                bend.neutralFactor());
        assertThat(fold.mouldLine(0).x() + from).as("mould line: " + which).isCloseTo(mouldMm, within(tolerance));
        assertThat(fold.outside(lipMm - from).distance(fold.mouldLine(0))).as("depth: " + which).isCloseTo(depthMm, within(tolerance));
    }
}

package org.capwright.swing;

import java.util.function.DoubleFunction;
import org.capwright.geom.GoldenSection;
import org.capwright.part.Bushing;
import org.capwright.part.Doubler;
import org.capwright.part.Leaf;

/**
 * A leaf and the inner ends of its bushings: what of the leaf lies within the bushing's outside turns before its end. Going
 * down the flange, one that is not bent square reaches farther along the rod, but less and less of it is within.
 */
final class BushingClearance {
    private static final double ENOUGH_MM = 1e-4;

    private final Leaf leaf;
    private final double radiusMm;

    private BushingClearance(Leaf leaf, Bushing bushing) {
        this.leaf = leaf;
        this.radiusMm = bushing.outsideMm() / 2;
    }

    static Clearance of(Leaf leaf, Doubler plate, Bushing bushing, double stopRad) {
        double end = plate.faceYMm() + plate.thicknessMm() - bushing.lengthMm();
        LeafShape.Point farthest = new BushingClearance(leaf, bushing).farthest();
        Motion motion = Motion.of(leaf);
        DoubleFunction<Nearness> curve = open ->
                new Nearness(end - farthest.y(), motion.at(farthest.u(), farthest.w(), farthest.y(), Turn.of(open)));
        // the same at every opening
        return new Clearance(Pair.LEAF_BUSHING, leaf.number(), end - farthest.y(), 0, curve.apply(0).where(), stopRad, curve);
    }

    private LeafShape.Point farthest() {
        double within = Math.max(0, radiusMm - leaf.rodRadiusMm()) / Math.sin(leaf.bend().turnRad());
        double deepest = Math.min(leaf.curveFlangeMm(), within);
        LeafShape.Point found = at(GoldenSection.lowest(down -> -at(down).y(), 0, deepest, ENOUGH_MM));
        return at(0).y() > found.y() ? at(0) : found;
    }

    /** At a depth down the flange, the point within the bushing's outside that is nearest to the stack's axis across the rods. */
    private LeafShape.Point at(double depthMm) {
        double out = leaf.lipOutMm(depthMm);
        double w = -leaf.rodRadiusMm() - leaf.lipDownMm(depthMm);
        double half = Math.sqrt(Math.max(0, radiusMm * radiusMm - w * w));
        double u = Math.max(leaf.slab().hingeEdgeMm() - out - leaf.rodAxisMm(), -half);
        double x = leaf.rodAxisMm() + u;
        double radius = leaf.slab().radiusMm() + out;
        return new LeafShape.Point(u, w, Math.sqrt(radius * radius - x * x));
    }
}

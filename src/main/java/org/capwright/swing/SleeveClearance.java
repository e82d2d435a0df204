package org.capwright.swing;

import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;
import org.capwright.part.Sleeve;

/**
 * The inside of the curved drip flange and the sleeve's outside, as long as the lip is below the rim. Along the lip's arc
 * the distance from the stack's axis is concave, so it is least at an end: at the hinge corner, or where the lip passes
 * the rim.
 */
final class SleeveClearance {
    private final Motion motion;
    private final double radiusMm;
    private final double outsideMm;
    private final double lipW;
    private final double fromU;
    private final double toU;

    private SleeveClearance(Leaf leaf, Sleeve sleeve) {
        this.motion = Motion.of(leaf);
        this.radiusMm = leaf.slab().radiusMm() + leaf.lipOutMm(leaf.curveFlangeMm()) - leaf.sheet().thicknessMm();
        this.outsideMm = sleeve.outsideRadiusMm();
        this.lipW = -leaf.rodRadiusMm() - leaf.lipDownMm(leaf.curveFlangeMm());
        this.fromU = leaf.slab().hingeEdgeMm() - leaf.rodAxisMm();
        this.toU = Math.min(radiusMm, leaf.slab().freeEdgeMm()) - leaf.rodAxisMm();
    }

    static Clearance of(Leaf leaf, Sleeve sleeve, double stopRad) {
        return Clearance.search(Pair.LEAF_SLEEVE, leaf.number(), stopRad, new SleeveClearance(leaf, sleeve)::at);
    }

    private Nearness at(double openRad) {
        Turn open = Turn.of(openRad);
        double s = open.sine();
        double belowRim = s == 0 ? Double.POSITIVE_INFINITY : (-motion.axisZMm() - lipW * open.cosine()) / s;
        double to = Math.min(toU, belowRim);
        return to < fromU ? Nearness.NONE : at(fromU, open).orNearer(at(to, open));
    }

    private Nearness at(double u, Turn open) {
        double x = motion.axisMm() + u;
        Vec3 where = motion.at(u, lipW, Math.sqrt(Math.max(0, radiusMm * radiusMm - x * x)), open);
        return new Nearness(Math.hypot(where.x(), where.y()) - outsideMm, where);
    }
}

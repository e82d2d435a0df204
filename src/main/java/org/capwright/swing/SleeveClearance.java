package org.capwright.swing;

import java.util.List;
import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;
import org.capwright.part.Sleeve;

/**
 * The inside of the curved drip flange and the sleeve's outside, as long as it is below the rim: at the flange's root and at
 * its lip, between which it is straight. Along either arc the distance from the stack's axis is concave, so it is least at an
 * end: at the hinge corner, or where the arc passes the rim.
 */
final class SleeveClearance {
    static final double AT_RIM_MM = 1e-9;

    private final Motion motion;
    private final double outsideMm;
    private final List<LeafShape.ArcEdge> inside;

    private SleeveClearance(Leaf leaf, Sleeve sleeve) {
        this.motion = Motion.of(leaf);
        this.outsideMm = sleeve.outsideRadiusMm();
        this.inside = inside(leaf);
    }

    static Clearance of(Leaf leaf, Sleeve sleeve, double stopRad) {
        return Clearance.search(Pair.LEAF_SLEEVE, leaf.number(), stopRad, new SleeveClearance(leaf, sleeve)::at);
    }

    /** The inside of the curved flange: its root and its lip. */
    static List<LeafShape.ArcEdge> inside(Leaf leaf) {
        return List.of(LeafShape.innerRoot(leaf), LeafShape.innerLip(leaf));
    }

    private Nearness at(double openRad) {
        Turn open = Turn.of(openRad);
        return arc(inside.get(0), open).orNearer(arc(inside.get(1), open));
    }

    private Nearness arc(LeafShape.ArcEdge arc, Turn open) {
        double s = open.sine();
        double below = AT_RIM_MM - motion.axisZMm() - arc.w() * open.cosine();
        double to = s == 0 ? (below >= 0 ? arc.toU() : Double.NEGATIVE_INFINITY) : Math.min(arc.toU(), below / s);
        return to < arc.fromU() ? Nearness.NONE : at(arc, arc.fromU(), open).orNearer(at(arc, to, open));
    }

    private Nearness at(LeafShape.ArcEdge arc, double u, Turn open) {
        double x = motion.axisMm() + u;
        Vec3 where = motion.at(u, arc.w(), Math.sqrt(Math.max(0, arc.radiusMm() * arc.radiusMm() - x * x)), open);
        return new Nearness(Math.hypot(where.x(), where.y()) - outsideMm, where);
    }
}

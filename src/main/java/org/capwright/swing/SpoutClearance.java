package org.capwright.swing;

import java.util.List;
import org.capwright.geom.Vec3;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;

/**
 * The inside of the curved drip flange and the corner of a spout's end, while the flange is below the rim: at its root, where
 * it is nearest, and at its lip. Both are nearest while the leaf is closed: as it opens, what is near a spout swings outwards.
 */
final class SpoutClearance {
    private static final double AT_RIM_MM = 1e-9;

    private final Motion motion;
    private final double cornerX;
    private final double cornerMm;
    private final List<LeafShape.ArcEdge> inside;

    private SpoutClearance(Leaf leaf, Gutter gutter) {
        this.motion = Motion.of(leaf);
        this.cornerX = gutter.jointMm() + gutter.outsideWidthMm() / 2;
        this.cornerMm = gutter.cornerRadiusMm();
        this.inside = SleeveClearance.inside(leaf);
    }

    static Clearance of(Leaf leaf, Gutter gutter, double stopRad) {
        return Clearance.search(Pair.FLANGE_SPOUT, leaf.number(), stopRad, new SpoutClearance(leaf, gutter)::at);
    }

    private Nearness at(double openRad) {
        Turn open = Turn.of(openRad);
        return edge(inside.get(0), open).orNearer(edge(inside.get(1), open));
    }

    /** Where the edge passes the corner; its end where the gutter is wider than it reaches. */
    private Nearness edge(LeafShape.ArcEdge edge, Turn open) {
        double x = Math.min(cornerX, edge.radiusMm());
        Vec3 where = motion.at(x - motion.axisMm(), edge.w(), Math.sqrt(edge.radiusMm() * edge.radiusMm() - x * x), open);
        return where.z() > AT_RIM_MM ? Nearness.NONE : new Nearness(Math.hypot(where.x(), where.y()) - cornerMm, where);
    }
}

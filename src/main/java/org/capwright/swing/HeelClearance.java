package org.capwright.swing;

import java.util.List;
import org.capwright.geom.Vec2;
import org.capwright.geom.Vec3;
import org.capwright.part.Gutter;
import org.capwright.part.HeelSweep;
import org.capwright.part.Leaf;

/**
 * A leaf's heel in its gutter. Beyond the rod axis the heel swings outboard, so the outboard wall is the one it may touch.
 * The flange of a free edge hangs in the gutter of the next joint: it is deepest while that leaf is closed.
 */
final class HeelClearance {
    private HeelClearance() {
    }

    static List<Clearance> of(Leaf leaf, Gutter gutter, double stopRad) {
        HeelSweep heel = HeelSweep.of(leaf);
        double wall = gutter.jointMm() + gutter.insideWidthMm() / 2;
        return List.of(
                Clearance.search(Pair.HEEL_WALL, leaf.number(), stopRad, open -> {
                    Vec2 farthest = heel.farthestBelowRim(open);
                    return new Nearness(wall - leaf.rodAxisMm() - farthest.x(), at(leaf, farthest));
                }),
                Clearance.search(Pair.HEEL_FLOOR, leaf.number(), stopRad, open -> {
                    Vec2 lowest = heel.lowest(open);
                    return new Nearness(lowest.y() + gutter.depthMm(), at(leaf, lowest));
                }));
    }

    /** The free edge's flange over the floor of the next joint's gutter; counted with the heel that swings there. */
    static Clearance ofFreeEdge(Leaf inner, Gutter next, double stopRad) {
        Motion motion = Motion.of(inner);
        // the lip's inner edge: it is the lower one at every opening
        double u = inner.reachMm() + inner.lipOutMm(inner.curveFlangeMm())
                - inner.sheet().thicknessMm() * Math.sin(inner.bend().turnRad());
        double w = -inner.rodRadiusMm() - inner.innerLipDownMm(inner.curveFlangeMm());
        return Clearance.search(Pair.HEEL_FLOOR, inner.number() + 1, stopRad, open -> {
            Vec3 lip = motion.at(u, w, 0, Turn.of(open));
            return new Nearness(lip.z() + next.depthMm(), lip);
        });
    }

    private static Vec3 at(Leaf leaf, Vec2 fromAxis) {
        return new Vec3(leaf.rodAxisMm() + fromAxis.x(), 0, fromAxis.y());
    }
}

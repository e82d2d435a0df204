package org.capwright.swing;

import org.capwright.geom.Vec3;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;

/**
 * The inside of the curved drip flange and the corner of a spout's end. The flange hangs lowest and nearest while the leaf
 * is closed; when it opens, what is inboard of the rod axis swings outwards.
 */
final class SpoutClearance {
    private SpoutClearance() {
    }

    static Clearance of(Leaf leaf, Gutter gutter, double stopRad) {
        Motion motion = Motion.of(leaf);
        double inside = leaf.slab().radiusMm() - leaf.sheet().thicknessMm();
        double corner = gutter.cornerRadiusMm();
        double side = gutter.outsideWidthMm() / 2;
        double x = gutter.jointMm() + side;
        double u = x - leaf.rodAxisMm();
        double w = -leaf.rodRadiusMm() - leaf.lipDownMm(leaf.curveFlangeMm());
        double y = Math.sqrt(inside * inside - x * x);
        return Clearance.search(Pair.FLANGE_SPOUT, leaf.number(), stopRad, open -> {
            Vec3 lip = motion.at(u, w, y, Turn.of(open));
            boolean below = lip.z() <= 0;
            Vec3 closed = new Vec3(x, y, Math.max(lip.z(), -gutter.outsideDepthMm()));
            return below ? new Nearness(Math.hypot(lip.x(), lip.y()) - corner, open == 0 ? closed : lip) : Nearness.NONE;
        });
    }
}

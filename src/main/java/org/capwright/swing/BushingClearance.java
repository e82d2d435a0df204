package org.capwright.swing;

import org.capwright.geom.Vec3;
import org.capwright.part.Bushing;
import org.capwright.part.Doubler;
import org.capwright.part.Leaf;

/** A leaf and the inner ends of its bushings: what of the leaf lies within the bushing's outside turns before its end. */
final class BushingClearance {
    private BushingClearance() {
    }

    static Clearance of(Leaf leaf, Doubler plate, Bushing bushing, double stopRad) {
        double end = plate.faceYMm() + plate.thicknessMm() - bushing.lengthMm();
        double radius = bushing.outsideMm() / 2;
        // the leaf's corner nearest to the stack's axis reaches farthest along the rod
        double from = Math.max(leaf.slab().hingeEdgeMm(), leaf.rodAxisMm() - radius);
        double y = Math.sqrt(leaf.slab().radiusMm() * leaf.slab().radiusMm() - from * from);
        Motion motion = Motion.of(leaf);
        return Clearance.search(Pair.LEAF_BUSHING, leaf.number(), stopRad, open ->
                new Nearness(end - y, motion.at(from - leaf.rodAxisMm(), -leaf.rodRadiusMm(), y, open)));
    }
}

package org.capwright.swing;

import java.util.function.DoubleFunction;
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
        DoubleFunction<Nearness> curve = open ->
                new Nearness(end - y, motion.at(from - leaf.rodAxisMm(), -leaf.rodRadiusMm(), y, Turn.of(open)));
        // the same at every opening
        return new Clearance(Pair.LEAF_BUSHING, leaf.number(), end - y, 0, curve.apply(0).where(), stopRad, curve);
    }
}

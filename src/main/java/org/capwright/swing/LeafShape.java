package org.capwright.swing;

import java.util.List;
import org.capwright.part.Leaf;

/**
 * The outer edges of a formed leaf: what of it is farthest out at any opening lies on one of them. Flanges that are not bent
 * square stand out; where two meet, each ends where their lips would meet in plan, mitred through the sheet.
 *
 * @param leaf the leaf
 * @param motion how it turns
 * @param arcs curved edges: its top and its lip
 */
record LeafShape(Leaf leaf, Motion motion, List<ArcEdge> arcs) {
    /**
     * An arc about the stack's axis, leaf closed, on the +y side (and its mirror image).
     *
     * @param radiusMm its radius
     * @param w its height from the rod axis
     * @param fromU nearest end, outboard of the rod axis
     * @param toU farthest end, outboard of the rod axis
     */
    record ArcEdge(double radiusMm, double w, double fromU, double toU) {
    }

    /** A point of the leaf, on the +y side (and its mirror image). */
    record Point(double u, double w, double y) {
    }

    static LeafShape of(Leaf leaf) {
        double radius = leaf.slab().radiusMm();
        double top = -leaf.rodRadiusMm();
        return new LeafShape(leaf, Motion.of(leaf), List.of(arc(leaf, radius, top, 0), outerLip(leaf)));
    }

    /** The outer edge of the curved flange's lip. */
    static ArcEdge outerLip(Leaf leaf) {
        double out = leaf.lipOutMm(leaf.curveFlangeMm());
        return arc(leaf, leaf.slab().radiusMm() + out, -leaf.rodRadiusMm() - leaf.lipDownMm(leaf.curveFlangeMm()), out);
    }

    /** The inner edge of the curved flange's lip. */
    static ArcEdge innerLip(Leaf leaf) {
        double out = leaf.lipOutMm(leaf.curveFlangeMm());
        double radius = leaf.slab().radiusMm() + out - leaf.sheet().thicknessMm() * Math.sin(leaf.bend().turnRad());
        return arc(leaf, radius, -leaf.rodRadiusMm() - leaf.innerLipDownMm(leaf.curveFlangeMm()), out);
    }

    /** Where the inside of the curved flange would meet the leaf's underside. */
    static ArcEdge innerRoot(Leaf leaf) {
        double t = leaf.sheet().thicknessMm();
        double radius = leaf.slab().radiusMm() - t * Math.tan(leaf.bend().turnRad() / 2);
        return arc(leaf, radius, -leaf.rodRadiusMm() - t, 0);
    }

    /**
     * An arc of the leaf's skin.
     *
     * @param leaf the leaf
     * @param radiusMm its radius
     * @param w its height from the rod axis
     * @param out how far its ends stand out beyond the hinge edge and a free chord
     */
    static ArcEdge arc(Leaf leaf, double radiusMm, double w, double out) {
        double free = leaf.slab().freeChord() ? leaf.slab().freeEdgeMm() + out : radiusMm;
        return new ArcEdge(radiusMm, w, leaf.slab().hingeEdgeMm() - out - leaf.rodAxisMm(),
                Math.min(radiusMm, free) - leaf.rodAxisMm());
    }

    /**
     * The end of the hinge flange, outside.
     *
     * @param share 0 at its top, 1 at its lip
     */
    Point hingeEnd(double share) {
        double depth = share * leaf.hingeFlangeMm();
        double out = leaf.lipOutMm(depth);
        double x = leaf.slab().hingeEdgeMm() - out;
        double radius = leaf.slab().radiusMm() + out;
        return new Point(x - leaf.rodAxisMm(), -leaf.rodRadiusMm() - leaf.lipDownMm(depth), Math.sqrt(radius * radius - x * x));
    }

    /** The inner edge of the hinge flange's lip at its end. */
    Point hingeInnerLip() {
        double inwards = leaf.sheet().thicknessMm() * Math.sin(leaf.bend().turnRad());
        double x = leaf.slab().hingeEdgeMm() - leaf.lipOutMm(leaf.hingeFlangeMm()) + inwards;
        double radius = leaf.slab().radiusMm() + leaf.lipOutMm(leaf.hingeFlangeMm()) - inwards;
        return new Point(x - leaf.rodAxisMm(), -leaf.rodRadiusMm() - leaf.innerLipDownMm(leaf.hingeFlangeMm()),
                Math.sqrt(radius * radius - x * x));
    }
}

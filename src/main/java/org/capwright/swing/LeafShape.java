package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.part.Leaf;

/**
 * The outer edges of a formed leaf: what of it is farthest out at any opening lies on one of them. Flanges that are not bent
 * square stand out; where two meet, each ends where their lips would meet in plan.
 *
 * @param motion how it turns
 * @param arcs curved edges: its top and its lip
 * @param points single points beside them: the ends of the hinge flange's lip
 */
record LeafShape(Motion motion, List<ArcEdge> arcs, List<Point> points) {
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
        double axis = leaf.rodAxisMm();
        double radius = leaf.slab().radiusMm();
        double out = leaf.lipOutMm(leaf.curveFlangeMm());
        double free = leaf.slab().freeChord() ? leaf.slab().freeEdgeMm() : radius;
        double top = -leaf.rodRadiusMm();
        List<ArcEdge> arcs = List.of(
                new ArcEdge(radius, top, leaf.slab().hingeEdgeMm() - axis, free - axis),
                new ArcEdge(radius + out, top - leaf.lipDownMm(leaf.curveFlangeMm()), leaf.slab().hingeEdgeMm() - out - axis,
                        free + out - axis));
        double hingeOut = leaf.lipOutMm(leaf.hingeFlangeMm());
        double x = leaf.slab().hingeEdgeMm() - hingeOut;
        double y = Math.sqrt((radius + hingeOut) * (radius + hingeOut) - x * x);
        List<Point> points = new ArrayList<>();
        points.add(new Point(x - axis, top - leaf.lipDownMm(leaf.hingeFlangeMm()), y));
        return new LeafShape(Motion.of(leaf), arcs, points);
    }
}

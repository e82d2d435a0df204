package org.capwright.swing;

import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;
import org.capwright.part.StopBar;

/**
 * A leaf and the other leaves, seen along the rods. Whatever the other leaf does, all of it that is near moves away as it
 * opens, so it is taken closed.
 */
final class NeighbourClearance {
    private NeighbourClearance() {
    }

    /** The middle pair: twice the distance of one leaf, or its rod, from the plane between them. */
    static Clearance opposite(Leaf leaf, double stopRad) {
        Motion motion = Motion.of(leaf);
        double[][] points = corners(leaf);
        // the curved flange's lip where it ends at the hinge corner may hang deeper, and stand out farther, than the hinge flange's
        LeafShape.ArcEdge lip = LeafShape.outerLip(leaf);
        double hinge = leaf.rodAxisMm() + lip.fromU();
        double lipEnd = Math.sqrt(lip.radiusMm() * lip.radiusMm() - hinge * hinge);
        return Clearance.search(Pair.LEAF_LEAF, leaf.number(), stopRad, openRad -> {
            Turn open = Turn.of(openRad);
            Vec3 rod = new Vec3(leaf.rodAxisMm() - leaf.rodRadiusMm(), 0, leaf.rodAxisZMm());
            Nearness nearest = new Nearness(2 * rod.x(), rod);
            Vec3 end = motion.at(lip.fromU(), lip.w(), lipEnd, open);
            nearest = nearest.orNearer(new Nearness(2 * end.x(), end));
            for (double[] point : points) {
                Vec3 where = motion.at(point[0], point[1], 0, open);
                nearest = nearest.orNearer(new Nearness(2 * where.x(), where));
            }
            return nearest;
        });
    }

    /** The corners of a leaf's section: heel and free edge, top and lip; the free edge's lip inside. */
    private static double[][] corners(Leaf leaf) {
        double top = -leaf.rodRadiusMm();
        double heel = leaf.slab().hingeEdgeMm() - leaf.rodAxisMm();
        double free = leaf.reachMm();
        return new double[][] {{heel, top}, {heel - leaf.lipOutMm(leaf.hingeFlangeMm()),
                top - leaf.lipDownMm(leaf.hingeFlangeMm())},
            {free, top}, {free + leaf.lipOutMm(leaf.curveFlangeMm()), top - leaf.lipDownMm(leaf.curveFlangeMm())},
            {free + leaf.lipOutMm(leaf.curveFlangeMm()) - leaf.sheet().thicknessMm() * Math.sin(leaf.bend().turnRad()),
                top - leaf.innerLipDownMm(leaf.curveFlangeMm())}};
    }

    /** The free edge of an inner leaf and the next leaf's hinge flange and rod. */
    static Clearance next(Leaf inner, Leaf outer, double stopRad) {
        Motion motion = Motion.of(inner);
        double[][] corners = corners(inner);
        ConvexSection closed = closed(outer);
        return Clearance.search(Pair.LEAF_NEXT, inner.number(), stopRad, openRad -> {
            Turn open = Turn.of(openRad);
            Vec3 edge = motion.at(corners[2][0], corners[2][1], 0, open);
            Vec3 lip = motion.at(corners[3][0], corners[3][1], 0, open);
            Nearness axis = SectionLine.toPoint(edge, lip, outer.rodAxisMm(), outer.rodAxisZMm());
            return new Nearness(axis.mm() - outer.rodRadiusMm(), axis.where()).orNearer(closed.to(edge, lip));
        }, OpeningSearch.KINKED);
    }

    /** A closed leaf from its hinge flange outboard, with what is under it. */
    private static ConvexSection closed(Leaf leaf) {
        double hinge = leaf.slab().hingeEdgeMm();
        double free = leaf.slab().freeEdgeMm();
        double top = leaf.sheet().thicknessMm();
        double lip = top - leaf.lipDownMm(leaf.hingeFlangeMm());
        return new ConvexSection(new double[] {hinge - leaf.lipOutMm(leaf.hingeFlangeMm()), free, free, hinge},
                new double[] {lip, lip, top, top});
    }

    /** An inner leaf and the bar of the next joint, which it passes on its way up. */
    static Clearance bar(Leaf leaf, StopBar bar, double stopRad) {
        Motion motion = Motion.of(leaf);
        double[][] corners = corners(leaf);
        double near = bar.jointMm() - bar.halfWidthMm();
        double far = bar.jointMm() + bar.halfWidthMm();
        double low = bar.cornerZMm();
        double high = low + bar.depthMm();
        ConvexSection box = new ConvexSection(new double[] {near, far, far, near}, new double[] {low, low, high, high});
        return Clearance.search(Pair.LEAF_BAR, leaf.number(), stopRad, openRad -> {
            Turn open = Turn.of(openRad);
            Vec3 rod = motion.at(0, corners[2][1], 0, open);
            Vec3 edge = motion.at(corners[2][0], corners[2][1], 0, open);
            Vec3 lip = motion.at(corners[3][0], corners[3][1], 0, open);
            Vec3 inner = motion.at(corners[4][0], corners[4][1], 0, open);
            return box.to(rod, edge).orNearer(box.to(edge, lip)).orNearer(box.to(lip, inner));
        }, OpeningSearch.KINKED);
    }
}

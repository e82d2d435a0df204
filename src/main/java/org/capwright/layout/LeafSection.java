package org.capwright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Leaf;

/** A leaf cut across its rod, closed: plate and both flanges, as (x, z). */
final class LeafSection {
    private LeafSection() {
    }

    /** The whole leaf. */
    static Path whole(Leaf leaf) {
        List<Vec2> outside = new ArrayList<>(hinge(leaf));
        double top = leaf.sheet().thicknessMm();
        outside.add(new Vec2(leaf.slab().freeEdgeMm(), top));
        outside.add(new Vec2(leaf.slab().freeEdgeMm() + leaf.lipOutMm(leaf.curveFlangeMm()),
                top - leaf.lipDownMm(leaf.curveFlangeMm())));
        return Shapes.sheet(reversed(outside), top);
    }

    /** The leaf from its hinge edge to an x, where it is broken off. */
    static Path upTo(Leaf leaf, double xMm) {
        List<Vec2> outside = new ArrayList<>(hinge(leaf));
        outside.add(new Vec2(xMm, leaf.sheet().thicknessMm()));
        return Shapes.sheet(reversed(outside), leaf.sheet().thicknessMm());
    }

    /** A point in the middle of the open leaf's plate. */
    static Vec2 onOpen(Leaf leaf, double outboardMm, double openRad) {
        Vec2 axis = new Vec2(leaf.rodAxisMm(), leaf.rodAxisZMm());
        return axis.plus(new Vec2(outboardMm, -leaf.rodRadiusMm() - leaf.sheet().thicknessMm() / 2).rotated(openRad));
    }

    private static List<Vec2> hinge(Leaf leaf) {
        double top = leaf.sheet().thicknessMm();
        double edge = leaf.slab().hingeEdgeMm();
        return List.of(new Vec2(edge - leaf.lipOutMm(leaf.hingeFlangeMm()), top - leaf.lipDownMm(leaf.hingeFlangeMm())),
                new Vec2(edge, top));
    }

    /** So that the sheet's thickness lies on the left of its outside. */
    private static List<Vec2> reversed(List<Vec2> points) {
        List<Vec2> reversed = new ArrayList<>(points);
        Collections.reverse(reversed);
        return reversed;
    }
}

package org.capwright.export.pdf;

import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/**
 * Where a drawing stands on a page: scaled, then moved.
 *
 * @param scale paper mm to drawing mm
 * @param moved page position of the drawing's origin
 */
record Placement(double scale, Vec2 moved) {
    /** At true size, with a point of the drawing at a point of the page. */
    static Placement trueSize(Vec2 drawing, Vec2 page) {
        return new Placement(1, page.minus(drawing));
    }

    /** As large as fits into a box, in its middle. */
    static Placement fitting(Bounds drawing, Bounds box) {
        double scale = Math.min(box.width() / drawing.width(), box.height() / drawing.height());
        return new Placement(scale, box.center().minus(drawing.center().times(scale)));
    }

    Vec2 apply(Vec2 p) {
        return p.times(scale).plus(moved);
    }

    Bounds apply(Bounds bounds) {
        Vec2 low = apply(new Vec2(bounds.minX(), bounds.minY()));
        Vec2 high = apply(new Vec2(bounds.maxX(), bounds.maxY()));
        return new Bounds(low.x(), low.y(), high.x(), high.y());
    }
}

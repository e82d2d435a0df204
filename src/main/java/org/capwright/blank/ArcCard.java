package org.capwright.blank;

import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;

/**
 * A card divided by two arcs about the same middle, the inside and the outside of a curved wall: the part beyond the larger
 * one gauges the outside, the part within the smaller one the inside. Origin in the middle of the larger arc.
 */
final class ArcCard {
    private static final double MARGIN_MM = 16;
    private static final double HALF_CHORD_MM = 80;
    private static final double LARGEST_SHARE = 0.7;

    private ArcCard() {
    }

    /**
     * The card's lines.
     *
     * @param name what it gauges
     * @param insideMm radius of the wall's inside
     * @param outsideMm radius of its outside
     */
    static Drawing of(String name, double insideMm, double outsideMm) {
        double half = Math.min(HALF_CHORD_MM, LARGEST_SHARE * insideMm);
        Vec2 middle = new Vec2(0, -outsideMm);
        double low = Math.sqrt(insideMm * insideMm - half * half) - outsideMm - MARGIN_MM;
        Drawing.Builder drawing = new Drawing.Builder(name).cut(Path.polyline(List.of(new Vec2(-half, low), new Vec2(half, low),
                new Vec2(half, MARGIN_MM), new Vec2(-half, MARGIN_MM)), true));
        for (double radius : new double[] {insideMm, outsideMm}) {
            double height = Math.sqrt(radius * radius - half * half);
            drawing.cut(PathBuilder.from(middle.plus(new Vec2(half, height)))
                    .arcTo(middle.plus(new Vec2(-half, height)), middle, true).open());
        }
        drawing.mark(Path.line(new Vec2(0, MARGIN_MM / 2), Vec2.ZERO));
        drawing.mark(Path.line(new Vec2(0, insideMm - outsideMm), new Vec2(0, insideMm - outsideMm - MARGIN_MM / 2)));
        drawing.label(Writing.across(new Vec2(0, MARGIN_MM - Writing.CLEAR_MM - Writing.TEXT_MM), "outside"));
        drawing.label(Writing.across(new Vec2(0, low + Writing.CLEAR_MM), "inside"));
        return drawing.build();
    }
}

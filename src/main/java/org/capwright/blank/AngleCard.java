package org.capwright.blank;

import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;

/**
 * A card divided by two legs at an angle: the wedge between them gauges the inside of a bend, the rest the outside. Round the
 * vertex a hole keeps the gauge off the bend's radius. The first leg runs along +x from the vertex, the origin.
 */
final class AngleCard {
    private static final double MARGIN_MM = 16;
    private static final double LEAST_HOLE_MM = 3;
    private static final double TEXT_AT = 0.55;
    /** Up to here beyond upright writing along a leg still reads from the right. */
    private static final double UPRIGHT_RAD = 0.3;

    private AngleCard() {
    }

    /**
     * The card's lines.
     *
     * @param name what it gauges
     * @param betweenRad angle between the legs, in (0, pi)
     * @param firstMm length of the first leg
     * @param secondMm length of the second leg
     * @param bendMm outside radius of the bend
     * @param first what lies along the first leg
     * @param second what lies along the second leg
     */
    static Drawing of(String name, double betweenRad, double firstMm, double secondMm, double bendMm, String first,
            String second) {
        Vec2 end = Vec2.polar(secondMm, betweenRad);
        double left = Math.min(0, end.x()) - MARGIN_MM;
        double right = Math.max(firstMm, end.x());
        Vec2 lowRight = new Vec2(right, -MARGIN_MM);
        Drawing.Builder drawing = new Drawing.Builder(name).cut(Path.polyline(List.of(new Vec2(left, -MARGIN_MM), lowRight,
                new Vec2(right, end.y()), new Vec2(left, end.y())), true));
        drawing.cut(Path.line(Vec2.ZERO, new Vec2(right, 0))).cut(Path.line(Vec2.ZERO, end));
        drawing.cut(Path.circle(Vec2.ZERO, Math.max(LEAST_HOLE_MM, 1.5 * bendMm)));
        drawing.label(Writing.across(new Vec2(right * TEXT_AT, -Writing.CLEAR_MM - Writing.TEXT_MM), first));
        boolean leaning = betweenRad > Math.PI / 2 + UPRIGHT_RAD;
        double clear = Writing.CLEAR_MM + (leaning ? Writing.TEXT_MM : 0);
        Vec2 beside = end.times(TEXT_AT).plus(Vec2.polar(clear, betweenRad).left());
        drawing.label(new Label(beside, second, Writing.TEXT_MM, leaning ? betweenRad - Math.PI : betweenRad,
                Label.Anchor.MIDDLE));
        return drawing.build();
    }
}

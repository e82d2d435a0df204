package org.capwright.blank;

import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.ChannelFlat;
import org.capwright.part.Gutter;

/**
 * A gutter's blank, inside face up: x along the gutter, y across it (y up is the side away from the stack's axis). Off the
 * middle its ends are oblique: straight over the floor, square over the walls.
 */
final class GutterBlank {
    private GutterBlank() {
    }

    static Blank of(Gutter gutter, Writing writing) {
        ChannelFlat flat = gutter.flat();
        double half = gutter.outsideWidthMm() / 2;
        double floor = half - flat.bend().outsideSetbackMm();
        double wall = floor + flat.bend().allowanceMm();
        double edge = flat.widthMm() / 2;
        double outer = gutter.endMm(half);
        double inner = gutter.endMm(-half);
        Path outline = PathBuilder.from(new Vec2(-inner, -edge)).lineTo(new Vec2(inner, -edge)).lineTo(new Vec2(inner, -wall))
                .lineTo(new Vec2(gutter.endMm(-floor), -floor)).lineTo(new Vec2(gutter.endMm(floor), floor))
                .lineTo(new Vec2(outer, wall)).lineTo(new Vec2(outer, edge)).lineTo(new Vec2(-outer, edge))
                .lineTo(new Vec2(-outer, wall)).lineTo(new Vec2(-gutter.endMm(floor), floor))
                .lineTo(new Vec2(-gutter.endMm(-floor), -floor)).lineTo(new Vec2(-inner, -wall)).close();
        String id = "gutter-" + gutter.number();
        Drawing.Builder drawing = new Drawing.Builder("gutter " + gutter.number()).cut(outline);
        // across a bend the end runs straight, so the middle of the bend ends midway
        ChannelBlank.bends(drawing, flat, (outer + gutter.endMm(floor)) / 2, (inner + gutter.endMm(-floor)) / 2, writing, "up");
        ChannelBlank.dimensions(drawing, flat, "up", outer, inner, inner);
        return new Blank(id, "gutter " + gutter.number(), Cap.mirrored(gutter.number()), gutter.sheet(), true, drawing.build(),
                "inside face up", Grain.ALONG_X, List.of(ChannelBlank.end(flat, outer, inner)),
                List.of("ends as cut; weld into the sleeve's notches"));
    }
}

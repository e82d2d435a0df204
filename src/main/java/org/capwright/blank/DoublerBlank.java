package org.capwright.blank;

import java.util.List;
import java.util.OptionalInt;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Station;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Sheet;

/** A doubler plate's blank: x across the rods from its left edge, y up. */
final class DoublerBlank {
    private DoublerBlank() {
    }

    static Blank of(Doubler plate, Writing writing) {
        double width = plate.widthMm();
        double height = plate.heightMm();
        Drawing.Builder drawing = new Drawing.Builder("doubler " + plate.number()).cut(Path.polyline(
                List.of(Vec2.ZERO, new Vec2(width, 0), new Vec2(width, height), new Vec2(0, height)), true));
        for (double bore : plate.boresMm()) {
            Vec2 at = new Vec2(bore - plate.fromMm(), height / 2);
            drawing.cut(Path.circle(at, plate.boreMm() / 2)).cross(at, Writing.CROSS_MM);
            drawing.station(Station.bottom(at.x(), at.y(), "bore " + writing.length(plate.boreMm())));
        }
        drawing.mark(Path.line(new Vec2(0, height / 2), new Vec2(width, height / 2)));
        drawing.station(Station.left(height / 2, width, "rod axes"));
        Sheet sheet = new Sheet(plate.metal(), OptionalInt.empty(), plate.thicknessMm());
        double wedge = Math.max(plate.wedgeMm(plate.fromMm()), plate.wedgeMm(plate.toMm()));
        return new Blank("doubler-" + plate.number(), "doubler " + plate.number(), 2 * Cap.mirrored(plate.number()), sheet,
                false, drawing.build(), "either face up", Grain.FREE, List.of(),
                List.of("gap to the hood at its ends up to " + writing.length(wedge) + ": fill"));
    }
}

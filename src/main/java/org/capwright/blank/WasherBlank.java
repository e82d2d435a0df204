package org.capwright.blank;

import java.util.List;
import java.util.OptionalInt;
import org.capwright.drawing.Drawing;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Sheet;
import org.capwright.part.Washer;

/** An end washer's blank, its centre at the origin. */
final class WasherBlank {
    private WasherBlank() {
    }

    static Blank of(Cap cap, Writing writing) {
        Washer washer = cap.washer();
        Drawing.Builder drawing = new Drawing.Builder("washer").cut(Path.circle(Vec2.ZERO, washer.outsideMm() / 2))
                .cut(Path.circle(Vec2.ZERO, washer.boreMm() / 2)).cross(Vec2.ZERO, Writing.CROSS_MM);
        Sheet sheet = new Sheet(washer.metal(), OptionalInt.empty(), washer.thicknessMm());
        return new Blank("washer", "washer", 4 * cap.rods().size(), sheet, false, drawing.build(), "either face up", Grain.FREE,
                List.of(),
                List.of("bore " + writing.length(washer.boreMm()) + "; or buy"));
    }
}

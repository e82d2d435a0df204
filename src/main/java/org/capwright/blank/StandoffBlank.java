package org.capwright.blank;

import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.drawing.Station;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Standoff;
import org.capwright.units.Angle;

/** A standoff's blank, inside of the C up: x across the bends from the inner flange's edge, y up. */
final class StandoffBlank {
    private StandoffBlank() {
    }

    static Blank of(Standoff standoff, Writing writing) {
        double length = standoff.blankLengthMm();
        double height = standoff.heightMm();
        Drawing.Builder drawing = new Drawing.Builder("standoff").cut(rectangle(length, height));
        for (int i = 0; i < standoff.rivets().each(); i++) {
            Vec2 at = new Vec2(standoff.rivetLineMm(), standoff.rivetHeightMm(i));
            drawing.cut(Path.circle(at, standoff.rivets().holeMm() / 2)).cross(at, Writing.CROSS_MM);
            drawing.station(Station.left(at.y(), at.x(), "rivet hole"));
        }
        bend(drawing, writing, standoff.innerBendLineMm(), height, "up " + angle(writing, standoff.innerBend().turnRad()));
        bend(drawing, writing, standoff.outerBendLineMm(), height, "up " + angle(writing, standoff.outerBend().turnRad()));
        drawing.label(new Label(new Vec2(Writing.CLEAR_MM, height - Writing.CLEAR_MM - Writing.TEXT_MM), "to sleeve",
                Writing.TEXT_MM,
                0, Label.Anchor.START));
        drawing.label(new Label(new Vec2(standoff.outerBendLineMm() + Writing.CLEAR_MM,
                height - Writing.CLEAR_MM - Writing.TEXT_MM),
                "to hood", Writing.TEXT_MM, 0, Label.Anchor.START));
        drawing.station(Station.bottom(standoff.innerBendLineMm(), height, "inner bend"));
        drawing.station(Station.bottom(standoff.outerBendLineMm(), height, "outer bend"));
        drawing.station(Station.bottom(standoff.rivetLineMm(), height, "rivets"));
        return new Blank("standoff", "standoff", standoff.count(), standoff.sheet(), false, drawing.build(), "inside of the C up",
                Grain.ALONG_X, List.of(), List.of("bend both flanges up: inner " + angle(writing, standoff.innerBend().turnRad())
                        + ", outer " + angle(writing, standoff.outerBend().turnRad())));
    }

    private static void bend(Drawing.Builder drawing, Writing writing, double x, double height, String text) {
        drawing.bend(Path.line(new Vec2(x, 0), new Vec2(x, height)));
        drawing.label(Writing.up(new Vec2(x - Writing.CLEAR_MM, height / 2), text));
    }

    private static String angle(Writing writing, double rad) {
        return writing.format().angle(Angle.ofRad(rad));
    }

    private static Path rectangle(double width, double height) {
        return Path.polyline(List.of(Vec2.ZERO, new Vec2(width, 0), new Vec2(width, height), new Vec2(0, height)), true);
    }
}

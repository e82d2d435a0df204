package org.capwright.blank;

import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.ChannelFlat;
import org.capwright.part.StopBar;

/**
 * A stop bar's blank, inside face up: x along the bar, y across it (y up is the side away from the stack's axis). The web's
 * ends follow the hood's inside; the legs end square.
 */
final class StopBlank {
    private StopBlank() {
    }

    static Blank of(StopBar bar, Writing writing) {
        ChannelFlat flat = bar.flat();
        Drawing.Builder drawing = new Drawing.Builder("stop bar " + bar.number()).cut(outline(bar, flat));
        double outer = bar.endMm(bar.halfWidthMm());
        double inner = bar.endMm(-bar.halfWidthMm());
        double web = bar.halfWidthMm() - flat.bend().outsideSetbackMm();
        // across a bend the end runs straight, so the middle of the bend ends midway
        ChannelBlank.bends(drawing, flat, (outer + bar.endMm(web)) / 2, (inner + bar.endMm(-web)) / 2, writing, "up");
        ChannelBlank.dimensions(drawing, flat, "up", outer, inner, bar.blankLengthMm() / 2);
        return new Blank("stop-bar-" + bar.number(), "stop bar " + bar.number(), Cap.mirrored(bar.number()), bar.sheet(),
                true, drawing.build(), "inside face up", Grain.ALONG_X,
                List.of(ChannelBlank.end(flat, outer, bar.blankLengthMm() / 2)),
                List.of("legs down in the cap; weld to the hood"));
    }

    private static Path outline(StopBar bar, ChannelFlat flat) {
        double web = bar.halfWidthMm() - flat.bend().outsideSetbackMm();
        double leg = web + flat.bend().allowanceMm();
        double edge = flat.widthMm() / 2;
        double outer = bar.endMm(bar.halfWidthMm());
        double inner = bar.endMm(-bar.halfWidthMm());
        // the hood's circle, seen from the bar's middle
        Vec2 hood = new Vec2(0, -bar.jointMm());
        Vec2 webLow = new Vec2(bar.endMm(-web), -web);
        Vec2 webHigh = new Vec2(bar.endMm(web), web);
        return PathBuilder.from(new Vec2(-inner, -edge)).lineTo(new Vec2(inner, -edge)).lineTo(new Vec2(inner,
                -leg)).lineTo(webLow)
                .arcTo(webHigh, hood, true).lineTo(new Vec2(outer, leg)).lineTo(new Vec2(outer, edge))
                .lineTo(new Vec2(-outer, edge)).lineTo(new Vec2(-outer, leg)).lineTo(new Vec2(-webHigh.x(), web))
                .arcTo(new Vec2(-webLow.x(), -web), hood, true).lineTo(new Vec2(-inner, -leg)).close();
    }
}

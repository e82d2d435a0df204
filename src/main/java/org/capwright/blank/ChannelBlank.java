package org.capwright.blank;

import org.capwright.drawing.Drawing;
import org.capwright.drawing.Station;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.ChannelFlat;

/** What gutters and stop bars have in common: x along the channel, y across it, origin in its middle. */
final class ChannelBlank {
    private static final double END_MM = 45;
    private static final double LEAST_STEP_MM = 0.05;

    private ChannelBlank() {
    }

    /** Both bend lines, each as long as the blank is there, and what to write on them. */
    static void bends(Drawing.Builder drawing, ChannelFlat flat, double upperEndMm, double lowerEndMm, Writing writing,
            String direction) {
        double y = flat.bendLineMm();
        drawing.bend(Path.line(new Vec2(-upperEndMm, y), new Vec2(upperEndMm, y)));
        drawing.bend(Path.line(new Vec2(-lowerEndMm, -y), new Vec2(lowerEndMm, -y)));
        double inside = y - Writing.CLEAR_MM - Writing.TEXT_MM;
        drawing.label(Writing.across(new Vec2(0, inside), writing.bend(flat.bend(), direction)));
        drawing.label(Writing.across(new Vec2(0, -inside - Writing.TEXT_MM), writing.bend(flat.bend(), direction)));
    }

    /** Its right end, which is worth printing at true size; the left end is its mirror image. */
    static Blank.Detail end(ChannelFlat flat, double shorterEndMm, double longerEndMm) {
        double half = flat.widthMm() / 2;
        return new Blank.Detail("right end, the left end is its mirror image", longerEndMm,
                new Bounds(shorterEndMm - END_MM, -half - 1, longerEndMm + 1, half + 1));
    }

    /**
     * Running dimensions of its outline.
     *
     * @param upperEndMm where its upper edge ends
     * @param lowerEndMm where its lower edge ends
     * @param endMm where the whole ends
     */
    static void dimensions(Drawing.Builder drawing, ChannelFlat flat, String direction, double upperEndMm, double lowerEndMm,
            double endMm) {
        double half = flat.widthMm() / 2;
        drawing.station(Station.left(-flat.bendLineMm(), endMm, "bend " + direction));
        drawing.station(Station.left(flat.bendLineMm(), endMm, "bend " + direction));
        drawing.station(Station.left(half, endMm, "upper edge"));
        drawing.station(Station.bottom(endMm, half, "end"));
        if (Math.abs(upperEndMm - lowerEndMm) < LEAST_STEP_MM) {
            corner(drawing, lowerEndMm, -half, endMm, "both edges begin", "both edges end");
        } else {
            corner(drawing, upperEndMm, half, endMm, "upper edge begins", "upper edge ends");
            corner(drawing, lowerEndMm, -half, endMm, "lower edge begins", "lower edge ends");
        }
    }

    /** Where an edge is shorter than the whole. */
    private static void corner(Drawing.Builder drawing, double cornerMm, double edgeMm, double endMm, String begins,
            String ends) {
        if (endMm - cornerMm > LEAST_STEP_MM) {
            drawing.station(Station.bottom(-cornerMm, edgeMm, begins));
            drawing.station(Station.bottom(cornerMm, edgeMm, ends));
        }
    }
}

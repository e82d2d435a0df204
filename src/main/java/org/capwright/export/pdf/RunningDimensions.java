package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Station;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Draws a drawing's running dimensions beside it: from one edge, none over another, each with a line to its place. */
final class RunningDimensions {
    private static final double PITCH_MM = 3.8;
    private static final double TEXT_SHARE = 0.58;
    private static final double LEADER_MM = 9;
    private static final double SAME_MM = 0.005;

    private final Canvas canvas;
    private final Placement placement;
    private final Bounds outline;
    private final Bounds clear;
    private final ShopFormat format;

    private RunningDimensions(Canvas canvas, Placement placement, Bounds outline, Bounds clear, ShopFormat format) {
        this.canvas = canvas;
        this.placement = placement;
        this.outline = outline;
        this.clear = clear;
        this.format = format;
    }

    /** Room that the dimensions along a side take: their leaders and their longest words. */
    static double roomMm(Drawing drawing, Station.Side side, Typeface typeface, ShopFormat format) {
        return LEADER_MM + 1 + sorted(drawing, side).stream()
                .mapToDouble(station -> typeface.widthMm(PITCH_MM * TEXT_SHARE, words(drawing.bounds(), station, format)))
                .max().orElse(0);
    }

    /** Draws them, outside what must stay clear: the drawing and its tiles. */
    static void paint(Canvas canvas, Drawing drawing, Bounds clear, Placement placement, ShopFormat format) throws IOException {
        RunningDimensions dimensions = new RunningDimensions(canvas, placement, drawing.bounds(), clear, format);
        canvas.pen(0.1, 0.45f);
        dimensions.bottom(sorted(drawing, Station.Side.BOTTOM));
        dimensions.left(sorted(drawing, Station.Side.LEFT));
    }

    /** In order, each place and thing once; the edge itself leads with 0. */
    private static List<Station> sorted(Drawing drawing, Station.Side side) {
        Bounds outline = drawing.bounds();
        double zero = side == Station.Side.BOTTOM ? outline.minX() : outline.minY();
        double cross = side == Station.Side.BOTTOM ? outline.minY() : outline.minX();
        Stream<Station> edge = Stream.of(new Station(side, zero, cross, side == Station.Side.BOTTOM ? "left edge"
                : "lower edge"));
        List<Station> once = new ArrayList<>();
        Stream.concat(edge, drawing.stations().stream().filter(station -> station.along() == side))
                .sorted(Comparator.comparingDouble(Station::positionMm))
                .filter(station -> once.stream().noneMatch(other -> same(station, other))).forEach(once::add);
        return once;
    }

    private static boolean same(Station a, Station b) {
        return Math.abs(a.positionMm() - b.positionMm()) < SAME_MM && a.what().equals(b.what());
    }

    private void bottom(List<Station> stations) throws IOException {
        Bounds box = placement.apply(clear);
        List<Double> wanted = stations.stream().map(s -> placement.apply(new Vec2(s.positionMm(), 0)).x()).toList();
        List<Double> placed = LabelSpread.spread(wanted, PITCH_MM);
        double text = PITCH_MM * TEXT_SHARE;
        for (int i = 0; i < stations.size(); i++) {
            Station station = stations.get(i);
            double x = wanted.get(i);
            canvas.line(x, placement.apply(new Vec2(0, station.reachMm())).y(), x, box.minY() - 2);
            canvas.line(x, box.minY() - 2, placed.get(i), box.minY() - LEADER_MM + 1);
            String words = words(outline, station, format);
            canvas.text(placed.get(i) + text / 2, box.minY() - LEADER_MM - canvas.width(text, words), text, Math.PI / 2, words);
        }
    }

    private void left(List<Station> stations) throws IOException {
        Bounds box = placement.apply(clear);
        List<Double> wanted = stations.stream().map(s -> placement.apply(new Vec2(0, s.positionMm())).y()).toList();
        List<Double> placed = LabelSpread.spread(wanted, PITCH_MM);
        double text = PITCH_MM * TEXT_SHARE;
        for (int i = 0; i < stations.size(); i++) {
            Station station = stations.get(i);
            double y = wanted.get(i);
            canvas.line(placement.apply(new Vec2(station.reachMm(), 0)).x(), y, box.minX() - 2, y);
            canvas.line(box.minX() - 2, y, box.minX() - LEADER_MM + 1, placed.get(i));
            canvas.textEnding(box.minX() - LEADER_MM, placed.get(i) - text / 2, text,
                    words(outline, station, format));
        }
    }

    private static String words(Bounds outline, Station station, ShopFormat format) {
        double zero = station.along() == Station.Side.BOTTOM ? outline.minX() : outline.minY();
        return station.what() + "   " + format.length(Length.ofMm(station.positionMm() - zero));
    }
}

package org.capwright.desk.sketch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Rectangle2D;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.drawing.Layer;
import org.capwright.drawing.Station;
import org.capwright.drawing.Stroke;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/**
 * A blank with its running dimensions, from the left and from the bottom, on a sketch that already looks at it. Writing that has no
 * room stays away until there is some.
 */
public final class BlankSketch {
    /** Room that dimensions take at the left and below. */
    public static final double ROOM_PX = 136;
    private static final double FLAT_PX = 0.3;
    private static final double TEXT_PX = 11;
    private static final double LETTER_PX = 6.2;
    private static final double ROW_PX = 14;
    private static final double GAP_PX = 14;
    private static final double KNEE_PX = 16;
    private static final double NEAR_PX = 7;
    private static final double SAME_MM = 0.02;
    /** Writing on the screen may be this many times as large as on the template; beyond it lies on its neighbours. */
    private static final double CROWDED = 2.8;

    private final Sketch sketch;
    private final Palette palette;
    private final Drawing drawing;
    private final Bounds bounds;

    private BlankSketch(Sketch sketch, Palette palette, Drawing drawing) {
        this.sketch = sketch;
        this.palette = palette;
        this.drawing = drawing;
        this.bounds = drawing.bounds();
    }

    /** A dimension with its place on the screen: where its tick is, and where its writing went to keep clear of its neighbours. */
    private record Shown(Station station, double tickPx, double textPx) {
    }

    /**
     * Draws a blank.
     *
     * @param sketch where
     * @param palette its colours
     * @param drawing the blank
     * @param hidden layers that are off; with {@link Layer#TEXT} dimensions are off too
     * @param format how lengths are printed
     */
    public static void paint(Sketch sketch, Palette palette, Drawing drawing, Set<Layer> hidden, ShopFormat format) {
        BlankSketch picture = new BlankSketch(sketch, palette, drawing);
        drawing.strokes().stream().filter(stroke -> !hidden.contains(stroke.layer())).forEach(picture::stroke);
        if (!hidden.contains(Layer.TEXT)) {
            picture.labels();
            picture.dimensions(format);
        }
    }

    /**
     * The dimension under the pointer.
     *
     * @param sketch where the blank is drawn
     * @param drawing the blank
     * @param px from the left
     * @param py from the top
     * @return the station, if the pointer is near its line or its writing
     */
    public static Optional<Station> at(Sketch sketch, Drawing drawing, double px, double py) {
        BlankSketch picture = new BlankSketch(sketch, Palette.LIGHT, drawing);
        for (Station.Side side : Station.Side.values()) {
            boolean below = side == Station.Side.BOTTOM;
            double along = below ? px : py;
            double across = below ? py - sketch.y(picture.bounds.minY()) : sketch.x(picture.bounds.minX()) - px;
            Optional<Shown> found = picture.shown(side).stream().filter(one -> across > 0
                    && Math.abs((across > GAP_PX + KNEE_PX ? one.textPx() : one.tickPx()) - along) < NEAR_PX)
                    .min(Comparator.comparingDouble(one -> Math.abs(one.textPx() - along)));
            if (found.isPresent()) {
                return found.map(Shown::station);
            }
        }
        return Optional.empty();
    }

    private void stroke(Stroke stroke) {
        GraphicsContext g = sketch.graphics();
        g.setStroke(stroke.layer() == Layer.MARK ? palette.quiet() : palette.ink());
        g.setLineWidth(stroke.layer() == Layer.CUT ? 1.6 : 1);
        if (stroke.layer() == Layer.BEND) {
            g.setLineDashes(9, 3, 2, 3);
        }
        g.beginPath();
        boolean first = true;
        for (Vec2 point : stroke.path().points(FLAT_PX / sketch.scale())) {
            if (first) {
                g.moveTo(sketch.x(point.x()), sketch.y(point.y()));
            } else {
                g.lineTo(sketch.x(point.x()), sketch.y(point.y()));
            }
            first = false;
        }
        g.stroke();
        g.setLineDashes();
    }

    private void labels() {
        List<Rectangle2D> taken = new ArrayList<>();
        for (Label label : drawing.labels()) {
            double width = label.text().length() * LETTER_PX;
            boolean upright = Math.abs(Math.sin(label.turnRad())) > 0.5;
            double room = (upright ? bounds.height() : bounds.width()) * sketch.scale();
            Rectangle2D box = box(label, width, upright);
            boolean legible = label.heightMm() * sketch.scale() * CROWDED > TEXT_PX;
            if (legible && width < room && taken.stream().noneMatch(box::intersects)) {
                taken.add(box);
                write(label);
            }
        }
    }

    private Rectangle2D box(Label label, double width, boolean upright) {
        double before = switch (label.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double x = sketch.x(label.at().x());
        double y = sketch.y(label.at().y());
        return upright ? new Rectangle2D(x - TEXT_PX, y - width + before, TEXT_PX + 2, width)
                : new Rectangle2D(x - before, y - TEXT_PX, width, TEXT_PX + 2);
    }

    private void write(Label label) {
        GraphicsContext g = sketch.graphics();
        g.save();
        g.setFont(Font.font(TEXT_PX));
        g.setFill(palette.quiet());
        g.translate(sketch.x(label.at().x()), sketch.y(label.at().y()));
        g.rotate(-Math.toDegrees(label.turnRad()));
        g.setTextAlign(switch (label.anchor()) {
            case START -> TextAlignment.LEFT;
            case MIDDLE -> TextAlignment.CENTER;
            case END -> TextAlignment.RIGHT;
        });
        g.fillText(label.text(), 0, 0);
        g.restore();
    }

    /** The dimensions along one edge, each value once, in order, kept a row apart. */
    private List<Shown> shown(Station.Side side) {
        boolean below = side == Station.Side.BOTTOM;
        List<Station> stations = new ArrayList<>();
        drawing.stations().stream().filter(one -> one.along() == side).sorted(Comparator.comparingDouble(Station::positionMm)).forEach(one -> {
            if (stations.isEmpty() || one.positionMm() - stations.get(stations.size() - 1).positionMm() > SAME_MM) {
                stations.add(one);
            }
        });
        List<Shown> shown = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        // from the left, or from the bottom of the screen upwards
        for (Station station : stations) {
            double tick = below ? sketch.x(station.positionMm()) : sketch.y(station.positionMm());
            double wanted = below ? tick : -tick;
            double text = Math.max(wanted, last + ROW_PX);
            last = text;
            shown.add(new Shown(station, tick, below ? text : -text));
        }
        return shown;
    }

    private void dimensions(ShopFormat format) {
        GraphicsContext g = sketch.graphics();
        g.setStroke(palette.line());
        g.setFill(palette.ink());
        g.setLineWidth(1);
        double foot = sketch.y(bounds.minY());
        for (Shown one : shown(Station.Side.BOTTOM)) {
            g.strokePolyline(new double[] {one.tickPx(), one.tickPx(), one.textPx()},
                    new double[] {foot + 4, foot + GAP_PX, foot + GAP_PX + KNEE_PX}, 3);
            g.save();
            g.translate(one.textPx() + 4, foot + GAP_PX + KNEE_PX + 2);
            g.rotate(-90);
            g.setTextAlign(TextAlignment.RIGHT);
            g.fillText(format.length(Length.ofMm(one.station().positionMm() - bounds.minX())), 0, 0);
            g.restore();
        }
        double left = sketch.x(bounds.minX());
        g.setTextAlign(TextAlignment.RIGHT);
        for (Shown one : shown(Station.Side.LEFT)) {
            g.strokePolyline(new double[] {left - 4, left - GAP_PX, left - GAP_PX - KNEE_PX},
                    new double[] {one.tickPx(), one.tickPx(), one.textPx()}, 3);
            g.fillText(format.length(Length.ofMm(one.station().positionMm() - bounds.minY())), left - GAP_PX - KNEE_PX - 2,
                    one.textPx() + 4);
        }
    }
}

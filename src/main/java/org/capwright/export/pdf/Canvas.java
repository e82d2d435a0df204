package org.capwright.export.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;

/** A page to draw on, in millimetres from its lower left corner. Arcs become cubic curves of a few degrees each. */
final class Canvas implements AutoCloseable {
    private static final float POINTS_PER_MM = 72 / 25.4f;
    /** Over this turn a cubic curve leaves its arc by less than 1e-7 of the radius. */
    private static final double CURVE_RAD = Math.toRadians(20);
    /** How close the remembered ink keeps to curves. */
    private static final double INK_MM = 0.05;

    private final PDPageContentStream stream;
    private final Typeface typeface;
    private final Ink ink = new Ink();

    Canvas(PDPageContentStream stream, Typeface typeface) throws IOException {
        this.stream = stream;
        this.typeface = typeface;
        stream.transform(Matrix.getScaleInstance(POINTS_PER_MM, POINTS_PER_MM));
        stream.setLineCapStyle(1);
        stream.setLineJoinStyle(1);
    }

    /** Draws everything that follows larger by factors, about a point that stays. */
    void scale(double x, double y, double middleX, double middleY) throws IOException {
        if (x != 1 || y != 1) {
            stream.transform(new Matrix((float) x, 0, 0, (float) y, (float) (middleX * (1 - x)), (float) (middleY * (1 - y))));
        }
    }

    /** Sets how lines look: width, grey (0 black), dashes. */
    void pen(double widthMm, float grey, float... dashes) throws IOException {
        stream.setLineWidth((float) widthMm);
        stream.setStrokingColor(grey);
        stream.setLineDashPattern(dashes, 0);
    }

    void line(double x1, double y1, double x2, double y2) throws IOException {
        move(new Vec2(x1, y1));
        to(new Vec2(x2, y2));
        stream.stroke();
        ink.line(new Vec2(x1, y1), new Vec2(x2, y2));
    }

    void box(Bounds box) throws IOException {
        rectangle(box);
        stream.stroke();
        ink.box(box);
    }

    void fill(Bounds box, float grey) throws IOException {
        stream.setNonStrokingColor(grey);
        rectangle(box);
        stream.fill();
        stream.setNonStrokingColor(0f);
    }

    private void rectangle(Bounds box) throws IOException {
        stream.addRect((float) box.minX(), (float) box.minY(), (float) box.width(), (float) box.height());
    }

    /** Draws a path placed on the page. */
    void path(Path path, Placement placement) throws IOException {
        move(placement.apply(path.segments().get(0).from()));
        for (Segment segment : path.segments()) {
            if (segment instanceof Segment.Arc arc) {
                arc(arc, placement);
            } else {
                to(placement.apply(segment.to()));
            }
        }
        if (path.closed()) {
            stream.closePath();
        }
        stream.stroke();
        ink.polyline(path.points(INK_MM / placement.scale()).stream().map(placement::apply).toList());
    }

    /** What has been drawn so far. */
    Ink ink() {
        return ink;
    }

    private void arc(Segment.Arc arc, Placement placement) throws IOException {
        int parts = Math.max(1, (int) Math.ceil(Math.abs(arc.sweepRad()) / CURVE_RAD));
        double sweep = arc.sweepRad() / parts;
        double handle = 4.0 / 3 * Math.tan(sweep / 4) * arc.radius();
        for (int i = 0; i < parts; i++) {
            double from = arc.startRad() + i * sweep;
            Vec2 start = arc.center().plus(Vec2.polar(arc.radius(), from));
            Vec2 end = arc.center().plus(Vec2.polar(arc.radius(), from + sweep));
            Vec2 first = placement.apply(start.plus(Vec2.polar(handle, from + Math.PI / 2)));
            Vec2 second = placement.apply(end.plus(Vec2.polar(handle, from + sweep - Math.PI / 2)));
            Vec2 last = placement.apply(end);
            stream.curveTo((float) first.x(), (float) first.y(), (float) second.x(), (float) second.y(), (float) last.x(),
                    (float) last.y());
        }
    }

    /** An arrowhead with its tip at a point. */
    void arrow(Vec2 tip, Vec2 direction) throws IOException {
        Vec2 back = tip.minus(direction.times(DrawingStyle.ARROW_MM));
        Vec2 side = direction.left().times(DrawingStyle.ARROW_HALF_MM);
        move(tip);
        to(back.plus(side));
        to(back.minus(side));
        stream.closePath();
        stream.fill();
    }

    /** A filled dot. */
    void dot(Vec2 middle, double radiusMm) throws IOException {
        move(middle.plus(Vec2.polar(radiusMm, 0)));
        for (int i = 1; i < 12; i++) {
            to(middle.plus(Vec2.polar(radiusMm, i * Math.PI / 6)));
        }
        stream.closePath();
        stream.fill();
    }

    private void move(Vec2 p) throws IOException {
        stream.moveTo((float) p.x(), (float) p.y());
    }

    private void to(Vec2 p) throws IOException {
        stream.lineTo((float) p.x(), (float) p.y());
    }

    /** Draws only inside a box until {@link #everywhere}. */
    void within(Bounds box) throws IOException {
        stream.saveGraphicsState();
        rectangle(box);
        stream.clip();
    }

    void everywhere() throws IOException {
        stream.restoreGraphicsState();
    }

    /** Writes a line of text that begins at a point. */
    void text(double x, double y, double heightMm, String text) throws IOException {
        text(x, y, heightMm, 0, text);
    }

    /** Writes a line of text that ends at a point. */
    void textEnding(double x, double y, double heightMm, String text) throws IOException {
        text(x - width(heightMm, text), y, heightMm, 0, text);
    }

    /** Writes a line of text whose middle is at a point. */
    void textAround(double x, double y, double heightMm, String text) throws IOException {
        text(x - width(heightMm, text) / 2, y, heightMm, 0, text);
    }

    /** Writes a line of text that begins at a point and runs in a direction. */
    void text(double x, double y, double heightMm, double turnRad, String text) throws IOException {
        stream.beginText();
        stream.setFont(typeface.font(), (float) typeface.sizeMm(heightMm));
        stream.setTextMatrix(Matrix.getRotateInstance(turnRad, (float) x, (float) y));
        stream.showText(typeface.printable(text));
        stream.endText();
        ink.writing(new Vec2(x, y), width(heightMm, text), heightMm, turnRad);
    }

    Typeface typeface() {
        return typeface;
    }

    double width(double heightMm, String text) throws IOException {
        return typeface.widthMm(heightMm, text);
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}

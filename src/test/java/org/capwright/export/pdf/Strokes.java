package org.capwright.export.pdf;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/** The strokes of a page as straight pieces in millimetres from its lower left corner, cut off where they are clipped. */
final class Strokes extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;
    private static final int STEPS = 16;

    /** A straight piece that shows: its ends, the width of its pen, whether it is part of a curve. */
    record Line(Vec2 from, Vec2 to, double penMm, boolean curve) {
        double dx() {
            return Math.abs(to.x() - from.x());
        }

        double dy() {
            return Math.abs(to.y() - from.y());
        }
    }

    private record Raw(Vec2 from, Vec2 to, boolean curve) {
    }

    private final List<Line> lines = new ArrayList<>();
    private final List<Raw> path = new ArrayList<>();
    private Vec2 start = Vec2.ZERO;
    private Vec2 pen = Vec2.ZERO;

    private Strokes(PDPage page) {
        super(page);
    }

    static Strokes of(PDPage page) throws IOException {
        Strokes strokes = new Strokes(page);
        strokes.processPage(page);
        return strokes;
    }

    List<Line> lines() {
        return lines;
    }

    @Override
    public void moveTo(float x, float y) {
        pen = new Vec2(x * MM, y * MM);
        start = pen;
    }

    @Override
    public void lineTo(float x, float y) {
        to(new Vec2(x * MM, y * MM), false);
    }

    private void to(Vec2 next, boolean curve) {
        path.add(new Raw(pen, next, curve));
        pen = next;
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        Vec2 a = pen;
        Vec2 b = new Vec2(x1 * MM, y1 * MM);
        Vec2 c = new Vec2(x2 * MM, y2 * MM);
        Vec2 d = new Vec2(x3 * MM, y3 * MM);
        for (int i = 1; i <= STEPS; i++) {
            double t = (double) i / STEPS;
            double s = 1 - t;
            to(a.times(s * s * s).plus(b.times(3 * s * s * t)).plus(c.times(3 * s * t * t)).plus(d.times(t * t * t)), true);
        }
    }

    @Override
    public void closePath() {
        to(start, false);
    }

    @Override
    public Point2D getCurrentPoint() {
        return new Point2D.Double(pen.x() / MM, pen.y() / MM);
    }

    @Override
    public void strokePath() {
        double width = transformWidth(getGraphicsState().getLineWidth()) * MM;
        var area = getGraphicsState().getCurrentClippingPath().getBounds2D();
        Bounds clip = new Bounds(area.getMinX() * MM, area.getMinY() * MM, area.getMaxX() * MM, area.getMaxY() * MM);
        for (Raw raw : path) {
            Line line = clipped(raw, clip, width);
            if (line != null) {
                lines.add(line);
            }
        }
        path.clear();
    }

    /** Liang and Barsky's clipping of a line to an upright rectangle. */
    private static Line clipped(Raw raw, Bounds clip, double width) {
        Vec2 d = raw.to().minus(raw.from());
        double[] p = {-d.x(), d.x(), -d.y(), d.y()};
        double[] q = {raw.from().x() - clip.minX(), clip.maxX() - raw.from().x(), raw.from().y() - clip.minY(),
                clip.maxY() - raw.from().y()};
        double first = 0;
        double last = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0 && q[i] < 0) {
                return null;
            }
            if (p[i] < 0) {
                first = Math.max(first, q[i] / p[i]);
            } else if (p[i] > 0) {
                last = Math.min(last, q[i] / p[i]);
            }
        }
        return first > last || d.norm() == 0 ? null : new Line(raw.from().plus(d.times(first)), raw.from().plus(d.times(last)),
                width, raw.curve());
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo((float) p0.getX(), (float) p0.getY());
        lineTo((float) p1.getX(), (float) p1.getY());
        lineTo((float) p2.getX(), (float) p2.getY());
        lineTo((float) p3.getX(), (float) p3.getY());
        closePath();
    }

    @Override
    public void clip(int windingRule) {
        java.awt.geom.GeneralPath area = new java.awt.geom.GeneralPath();
        for (Raw raw : path) {
            if (area.getCurrentPoint() == null) {
                area.moveTo(raw.from().x() / MM, raw.from().y() / MM);
            }
            area.lineTo(raw.to().x() / MM, raw.to().y() / MM);
        }
        area.closePath();
        getGraphicsState().intersectClippingPath(area);
    }

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void fillPath(int windingRule) {
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void drawImage(PDImage image) {
        throw new IllegalStateException("an image where only lines belong");
    }

    @Override
    public void shadingFill(COSName name) {
        throw new IllegalStateException("a shading where only lines belong");
    }
}

package org.capwright.export.pdf;

import java.awt.geom.GeneralPath;
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

/**
 * Reads back what a page strokes, in millimetres from its lower left corner: as it was written, or as straight pieces that
 * show.
 */
final class PageStrokes extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final int STEPS = 16;

    /**
     * A piece of a stroked path: a line (two points) or a cubic curve (four), with the width of its pen, its grey, and what it is
     * clipped to.
     */
    record Piece(int path, List<Vec2> points, double penMm, float grey, Bounds clip) {
        boolean line() {
            return points.size() == 2;
        }

        Vec2 from() {
            return points.get(0);
        }

        Vec2 to() {
            return points.get(points.size() - 1);
        }

        Vec2 at(double t) {
            if (line()) {
                return from().plus(to().minus(from()).times(t));
            }
            double s = 1 - t;
            return from().times(s * s * s).plus(points.get(1).times(3 * s * s * t)).plus(points.get(2).times(3 * s * t * t))
                    .plus(to().times(t * t * t));
        }
    }

    /** A straight piece that shows: its ends, its pen, whether it is part of a curve. */
    record Line(Vec2 from, Vec2 to, double penMm, float grey, boolean curve) {
        double dx() {
            return Math.abs(to.x() - from.x());
        }

        double dy() {
            return Math.abs(to.y() - from.y());
        }
    }

    private final List<Piece> pieces = new ArrayList<>();
    private final List<List<Vec2>> current = new ArrayList<>();
    private Vec2 start = Vec2.ZERO;
    private Vec2 pen = Vec2.ZERO;
    private int paths;

    private PageStrokes(PDPage page) {
        super(page);
    }

    /** All pieces as they were written. */
    static List<Piece> pieces(PDPage page) throws IOException {
        PageStrokes reading = new PageStrokes(page);
        reading.processPage(page);
        return reading.pieces;
    }

    /** Straight pieces, curves in short ones, cut off where they are clipped. */
    static List<Line> lines(PDPage page) throws IOException {
        List<Line> lines = new ArrayList<>();
        for (Piece piece : pieces(page)) {
            int steps = piece.line() ? 1 : STEPS;
            for (int i = 0; i < steps; i++) {
                Line line = shown(piece, piece.at((double) i / steps), piece.at((i + 1.0) / steps));
                if (line != null) {
                    lines.add(line);
                }
            }
        }
        return lines;
    }

    /** Liang and Barsky's clipping of a line to an upright rectangle. */
    private static Line shown(Piece piece, Vec2 from, Vec2 to) {
        Vec2 d = to.minus(from);
        Bounds clip = piece.clip();
        double[] p = {-d.x(), d.x(), -d.y(), d.y()};
        double[] q = {from.x() - clip.minX(), clip.maxX() - from.x(), from.y() - clip.minY(), clip.maxY() - from.y()};
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
        return first > last || d.norm() == 0 ? null : new Line(from.plus(d.times(first)), from.plus(d.times(last)), piece.penMm(),
                piece.grey(), !piece.line());
    }

    private static Vec2 mm(double x, double y) {
        return new Vec2(x * MM_PER_POINT, y * MM_PER_POINT);
    }

    @Override
    public void moveTo(float x, float y) {
        pen = mm(x, y);
        start = pen;
    }

    @Override
    public void lineTo(float x, float y) {
        Vec2 to = mm(x, y);
        current.add(List.of(pen, to));
        pen = to;
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        Vec2 to = mm(x3, y3);
        current.add(List.of(pen, mm(x1, y1), mm(x2, y2), to));
        pen = to;
    }

    @Override
    public void closePath() {
        if (pen.distance(start) > 1e-4) {
            current.add(List.of(pen, start));
        }
        pen = start;
    }

    @Override
    public Point2D getCurrentPoint() {
        return new Point2D.Double(pen.x() / MM_PER_POINT, pen.y() / MM_PER_POINT);
    }

    @Override
    public void strokePath() {
        double width = transformWidth(getGraphicsState().getLineWidth()) * MM_PER_POINT;
        float grey = getGraphicsState().getStrokingColor().getComponents()[0];
        var area = getGraphicsState().getCurrentClippingPath().getBounds2D();
        Vec2 low = mm(area.getMinX(), area.getMinY());
        Vec2 high = mm(area.getMaxX(), area.getMaxY());
        for (List<Vec2> points : current) {
            pieces.add(new Piece(paths, points, width, grey, new Bounds(low.x(), low.y(), high.x(), high.y())));
        }
        paths++;
        current.clear();
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
        GeneralPath path = new GeneralPath();
        for (List<Vec2> points : current) {
            Vec2 from = points.get(0).times(1 / MM_PER_POINT);
            Vec2 to = points.get(points.size() - 1).times(1 / MM_PER_POINT);
            if (path.getCurrentPoint() == null) {
                path.moveTo(from.x(), from.y());
            }
            path.lineTo(to.x(), to.y());
        }
        path.closePath();
        getGraphicsState().intersectClippingPath(path);
    }

    @Override
    public void endPath() {
        current.clear();
    }

    @Override
    public void fillPath(int windingRule) {
        current.clear();
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

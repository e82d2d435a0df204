package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Polygons round outlines. */
final class Cover {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double CHORD_MM = 0.3;
    private static final double CHORD_SHARE = 0.0015;
    private static final double STRAIGHT_MM = 1e-6;

    private Cover() {
    }

    /** A polygon that holds an outline: bulging arcs by their tangents, hollow ones by their chords. */
    static Polygon around(Path outline) {
        Path path = outline.area() < 0 ? outline.reversed() : outline;
        List<Vec2> points = new ArrayList<>();
        for (Segment segment : path.segments()) {
            points.add(segment.from());
            if (segment instanceof Segment.Arc arc) {
                points.addAll(arc(arc));
            }
        }
        return polygon(points);
    }

    /** A polygon with the corners of an outline on it; arcs by chords that keep to a tolerance. */
    static Polygon along(Path outline, double toleranceMm) {
        List<Vec2> points = outline.points(toleranceMm);
        return polygon(points.subList(0, points.size() - 1));
    }

    /** A polygon within an outline grown by a distance: all arcs by chords, and smaller all round by what a hollow chord could add. */
    static Polygon within(Path outline, double byMm) {
        Geometry grown = along(outline, CHORD_MM / 2).buffer(byMm - CHORD_MM / 2, 2);
        return shell((Polygon) grown);
    }

    private static List<Vec2> arc(Segment.Arc arc) {
        double tolerance = Math.max(CHORD_MM, CHORD_SHARE * arc.radius());
        double most = 2 * Math.acos(Math.max(0.5, 1 - tolerance / arc.radius()));
        int steps = Math.max(2, (int) Math.ceil(Math.abs(arc.sweepRad()) / most));
        double step = arc.sweepRad() / steps;
        boolean bulging = arc.sweepRad() > 0;
        double radius = bulging ? arc.radius() / Math.cos(step / 2) : arc.radius();
        List<Vec2> points = new ArrayList<>();
        for (double k = bulging ? 0.5 : 1; k < steps; k++) {
            points.add(arc.center().plus(Vec2.polar(radius, arc.startRad() + k * step)));
        }
        return points;
    }

    /** The polygon without hollows smaller than an area: nothing would fit there. */
    static Polygon filled(Polygon polygon, double hollowMm2) {
        Geometry hull = polygon.convexHull();
        Geometry hollows = hull.difference(polygon);
        Geometry result = polygon;
        for (int i = 0; i < hollows.getNumGeometries(); i++) {
            if (hollows.getGeometryN(i).getArea() <= hollowMm2) {
                result = result.union(hollows.getGeometryN(i));
            }
        }
        return result instanceof Polygon whole ? shell(whole) : (Polygon) hull;
    }

    /** The polygon grown by a distance, corners square: it holds every point within the distance. */
    static Polygon grown(Polygon polygon, double byMm) {
        if (byMm == 0) {
            return polygon;
        }
        BufferParameters square = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2);
        return shell((Polygon) BufferOp.bufferOp(polygon, byMm, square));
    }

    private static Polygon shell(Polygon polygon) {
        Polygon filled = FACTORY.createPolygon(polygon.getExteriorRing().getCoordinateSequence());
        return DouglasPeuckerSimplifier.simplify(filled, STRAIGHT_MM) instanceof Polygon plain ? plain : filled;
    }

    private static Polygon polygon(List<Vec2> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        ring[points.size()] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }
}

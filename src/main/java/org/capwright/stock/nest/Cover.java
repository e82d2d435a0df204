package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Polygons round outlines. */
final class Cover {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double QUARTER_RAD = Math.PI / 2;
    private static final double CHORD_MM = 0.3;
    private static final double CHORD_SHARE = 0.0015;
    private static final double STRAIGHT_MM = 1e-6;

    private Cover() {
    }

    /**
     * A polygon that holds what an outline leaves beside some holes: bulging arcs by their tangents, hollow ones by
     * their chords.
     */
    static Polygon around(Path outline, List<Path> holes) {
        return polygon(points(outline, true), holes.stream().map(hole -> points(hole, false)).toList());
    }

    /** A polygon with the corners of an outline and of some holes on it; arcs by chords that keep to a tolerance. */
    static Polygon along(Path outline, List<Path> holes, double toleranceMm) {
        return polygon(chords(outline, toleranceMm), holes.stream().map(hole -> chords(hole, toleranceMm)).toList());
    }

    /**
     * A polygon within an outline, less some holes, grown by a distance: all arcs by chords, and smaller all round by
     * what chords add.
     */
    static Polygon within(Path outline, List<Path> holes, double byMm) {
        // chords make a hole smaller by half the chord tolerance at most, and leave out as much of a bulging edge
        Geometry grown = along(outline, holes, CHORD_MM / 2).buffer(byMm - CHORD_MM / 2, 2);
        return plain((Polygon) grown);
    }

    /** Holes of a piece that are at least as large as an area. */
    static List<Path> roomy(Piece piece, double leastMm2) {
        return piece.holes().stream().filter(hole -> Math.abs(hole.area()) >= leastMm2).toList();
    }

    private static List<Vec2> chords(Path path, double toleranceMm) {
        List<Vec2> points = path.points(toleranceMm);
        return points.subList(0, points.size() - 1);
    }

    /** Corners of a path: none of what it holds is left out, or nothing is held that it does not hold. */
    private static List<Vec2> points(Path outline, boolean larger) {
        Path path = outline.area() < 0 ? outline.reversed() : outline;
        List<Vec2> points = new ArrayList<>();
        for (Segment segment : path.segments()) {
            points.add(segment.from());
            if (segment instanceof Segment.Arc arc) {
                points.addAll(arc(arc, larger == arc.sweepRad() > 0));
            }
        }
        return points;
    }

    /** Quarter by quarter, so that tangents at the four outermost points keep to the arc's own bounds. */
    private static List<Vec2> arc(Segment.Arc arc, boolean tangents) {
        List<Vec2> points = new ArrayList<>();
        double sign = Math.signum(arc.sweepRad());
        double end = arc.startRad() + arc.sweepRad();
        double from = arc.startRad();
        while (sign * (end - from) > 1e-9) {
            double quarter = QUARTER_RAD * (Math.floor(sign * from / QUARTER_RAD + 1e-9) + 1) * sign;
            double to = sign * (end - quarter) > 1e-9 ? quarter : end;
            quarter(arc, from, to, tangents, points);
            from = to;
        }
        return points;
    }

    private static void quarter(Segment.Arc arc, double from, double to, boolean tangents, List<Vec2> points) {
        double tolerance = Math.max(CHORD_MM, CHORD_SHARE * arc.radius());
        double most = 2 * Math.acos(Math.max(0.5, 1 - tolerance / arc.radius()));
        int steps = Math.max(1, (int) Math.ceil(Math.abs(to - from) / most));
        double step = (to - from) / steps;
        double radius = tangents ? arc.radius() / Math.cos(step / 2) : arc.radius();
        // the arc's own beginning is there already
        for (double k = tangents ? 0.5 : from == arc.startRad() ? 1 : 0; k < steps; k++) {
            points.add(arc.center().plus(Vec2.polar(radius, from + k * step)));
        }
    }

    /** The polygon without hollows smaller than an area: nothing would fit there. */
    static Polygon filled(Polygon polygon, double hollowMm2) {
        Geometry hull = polygon.convexHull();
        // holes are kept: those without room are left out before
        Geometry hollows = hull.difference(FACTORY.createPolygon(polygon.getExteriorRing().getCoordinateSequence()));
        Geometry result = polygon;
        for (int i = 0; i < hollows.getNumGeometries(); i++) {
            if (hollows.getGeometryN(i).getArea() <= hollowMm2) {
                result = result.union(hollows.getGeometryN(i));
            }
        }
        return result instanceof Polygon whole ? plain(whole) : (Polygon) hull;
    }

    /** The polygon grown by a distance, corners square: it holds every point within the distance. */
    static Polygon grown(Polygon polygon, double byMm) {
        if (byMm == 0) {
            return polygon;
        }
        BufferParameters square = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2);
        return plain((Polygon) BufferOp.bufferOp(polygon, byMm, square));
    }

    private static Polygon plain(Polygon polygon) {
        return DouglasPeuckerSimplifier.simplify(polygon, STRAIGHT_MM) instanceof Polygon plain ? plain : polygon;
    }

    private static Polygon polygon(List<Vec2> points, List<List<Vec2>> holes) {
        return FACTORY.createPolygon(ring(points), holes.stream().map(Cover::ring).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(List<Vec2> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        ring[points.size()] = ring[0].copy();
        return FACTORY.createLinearRing(ring);
    }
}

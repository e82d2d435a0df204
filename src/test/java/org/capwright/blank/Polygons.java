package org.capwright.blank;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Turns paths into JTS shapes, arcs into many chords of its own making. */
public final class Polygons {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int CHORDS_PER_TURN = 2_000;

    private Polygons() {
    }

    /** A closed path as a polygon. */
    public static Polygon of(Path path) {
        return of(path, CHORDS_PER_TURN);
    }

    /** A closed path as a polygon with fewer chords, for distances. */
    static Polygon coarse(Path path) {
        return of(path, CHORDS_PER_TURN / 20);
    }

    private static Polygon of(Path path, int chordsPerTurn) {
        List<Coordinate> points = coordinates(path, chordsPerTurn);
        points.add(points.get(0).copy());
        return FACTORY.createPolygon(points.toArray(new Coordinate[0]));
    }

    /** A path as a line. */
    public static LineString line(Path path) {
        List<Coordinate> points = coordinates(path, CHORDS_PER_TURN);
        Vec2 end = path.segments().get(path.segments().size() - 1).to();
        points.add(new Coordinate(end.x(), end.y()));
        return FACTORY.createLineString(points.toArray(new Coordinate[0]));
    }

    private static List<Coordinate> coordinates(Path path, int chordsPerTurn) {
        List<Coordinate> points = new ArrayList<>();
        for (Segment segment : path.segments()) {
            int chords = segment instanceof Segment.Arc arc
                    ? Math.max(8, (int) (Math.abs(arc.sweepRad()) / (2 * Math.PI) * chordsPerTurn)) : 1;
            for (int i = 0; i < chords; i++) {
                Vec2 p = segment.pointAt((double) i / chords);
                points.add(new Coordinate(p.x(), p.y()));
            }
        }
        return points;
    }
}

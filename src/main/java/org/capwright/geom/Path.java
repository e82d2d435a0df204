package org.capwright.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.capwright.geom.Segment.Arc;
import org.capwright.geom.Segment.Line;

/**
 * Lines and arcs joined end to end.
 *
 * @param segments at least one, each beginning where the last ended
 * @param closed whether it returns to its beginning
 */
public record Path(List<Segment> segments, boolean closed) {
    private static final double JOINED_MM = 1e-6;

    /** Refuses segments that don't join within a millionth of a millimetre. */
    public Path {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("a path needs a segment");
        }
        for (int i = closed ? 0 : 1; i < segments.size(); i++) {
            Vec2 end = segments.get((i + segments.size() - 1) % segments.size()).to();
            if (!(end.distance(segments.get(i).from()) <= JOINED_MM)) {
                throw new IllegalArgumentException("segment " + i + " does not begin where the one before it ends: "
                        + end + ", " + segments.get(i).from());
            }
        }
    }

    /**
     * A full circle.
     *
     * @param center its centre
     * @param radius its radius
     * @return the path, counterclockwise
     */
    public static Path circle(Vec2 center, double radius) {
        return new Path(List.of(new Arc(center, radius, 0, 2 * Math.PI)), true);
    }

    /**
     * A straight line.
     *
     * @param from where it begins
     * @param to where it ends
     * @return the path, open
     */
    public static Path line(Vec2 from, Vec2 to) {
        return new Path(List.of(new Line(from, to)), false);
    }

    /**
     * Straight lines from point to point.
     *
     * @param points at least two
     * @param closed whether to return to the first
     * @return the path
     */
    public static Path polyline(List<Vec2> points, boolean closed) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a polyline needs two points, not " + points.size());
        }
        List<Segment> lines = new ArrayList<>();
        for (int i = 1; i < points.size() + (closed ? 1 : 0); i++) {
            lines.add(new Line(points.get(i - 1), points.get(i % points.size())));
        }
        return new Path(lines, closed);
    }

    /**
     * Its length.
     *
     * @return mm
     */
    public double length() {
        return segments.stream().mapToDouble(Segment::length).sum();
    }

    /**
     * The smallest upright rectangle round it.
     *
     * @return the rectangle
     */
    public Bounds bounds() {
        return segments.stream().map(Segment::bounds).reduce(Bounds::union).orElseThrow();
    }

    /**
     * Area of a closed path, exact with its arcs.
     *
     * @return mm2, positive if it runs counterclockwise
     * @throws IllegalStateException if the path is open
     */
    public double area() {
        if (!closed) {
            throw new IllegalStateException("an open path has no area");
        }
        return segments.stream().mapToDouble(Segment::doubleArea).sum() / 2;
    }

    /**
     * Centroid of the area of a closed path, exact with its arcs.
     *
     * @return the point
     * @throws IllegalStateException if the path is open
     */
    public Vec2 centroid() {
        double area = area();
        Vec2 moment = segments.stream().map(Segment::moment).reduce(Vec2::plus).orElseThrow();
        return moment.times(1 / area);
    }

    /**
     * The same, run the other way.
     *
     * @return the path
     */
    public Path reversed() {
        List<Segment> reversed = new ArrayList<>(segments.stream().map(Segment::reversed).toList());
        Collections.reverse(reversed);
        return new Path(reversed, closed);
    }

    /**
     * The same, moved.
     *
     * @param by how far
     * @return the path
     */
    public Path translated(Vec2 by) {
        return new Path(segments.stream().map(segment -> segment.translated(by)).toList(), closed);
    }

    /**
     * The same, turned about the origin.
     *
     * @param rad from +x towards +y
     * @return the path
     */
    public Path rotated(double rad) {
        return new Path(segments.stream().map(segment -> segment.rotated(rad)).toList(), closed);
    }

    /**
     * Points on it, close enough that the straight lines between them keep to a tolerance.
     *
     * @param toleranceMm largest distance between line and arc, over 0
     * @return the points; the first is repeated, to the last bit, at the end of a closed path
     */
    public List<Vec2> points(double toleranceMm) {
        if (!(toleranceMm > 0)) {
            throw new IllegalArgumentException("the tolerance must be over 0 mm, not " + toleranceMm);
        }
        List<Vec2> points = new ArrayList<>(List.of(segments.get(0).from()));
        for (Segment segment : segments) {
            int steps = segment instanceof Arc arc ? steps(arc, toleranceMm) : 1;
            for (int i = 1; i <= steps; i++) {
                points.add(segment.pointAt((double) i / steps));
            }
        }
        if (closed) {
            points.set(points.size() - 1, points.get(0));
        }
        return points;
    }

    private static int steps(Arc arc, double toleranceMm) {
        double half = Math.acos(Math.max(0, 1 - toleranceMm / arc.radius()));
        return Math.max(2, (int) Math.ceil(Math.abs(arc.sweepRad()) / (2 * half)));
    }
}

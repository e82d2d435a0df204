package org.capwright.geom;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Segment.Arc;
import org.capwright.geom.Segment.Line;

/** Draws a path from point to point. */
public final class PathBuilder {
    private static final double SAME_MM = 1e-9;
    private static final double ON_ARC_MM = 1e-6;

    private final List<Segment> segments = new ArrayList<>();
    private final Vec2 start;
    private Vec2 pen;

    private PathBuilder(Vec2 start) {
        this.start = start;
        this.pen = start;
    }

    /**
     * Begins a path.
     *
     * @param start where
     * @return the builder
     */
    public static PathBuilder from(Vec2 start) {
        return new PathBuilder(start);
    }

    /**
     * A straight line; none where it would have no length.
     *
     * @param to where it ends
     * @return the builder
     */
    public PathBuilder lineTo(Vec2 to) {
        if (pen.distance(to) > SAME_MM) {
            segments.add(new Line(pen, to));
            pen = to;
        }
        return this;
    }

    /**
     * An arc round a centre; none where it would have no length.
     *
     * @param to where it ends; as far from the centre as the pen
     * @param center its centre
     * @param counterclockwise whether it runs from +x towards +y
     * @return the builder
     * @throws IllegalArgumentException if the ends are not equally far from the centre, within a millionth of a millimetre
     */
    public PathBuilder arcTo(Vec2 to, Vec2 center, boolean counterclockwise) {
        if (!(Math.abs(pen.distance(center) - to.distance(center)) <= ON_ARC_MM)) {
            throw new IllegalArgumentException("an arc from " + pen + " to " + to + " can't have its centre at " + center
                    + ": its ends must be equally far from it");
        }
        if (pen.distance(to) <= SAME_MM) {
            return this;
        }
        double from = pen.minus(center).direction();
        double sweep = to.minus(center).direction() - from;
        double turn = 2 * Math.PI;
        double positive = sweep - turn * Math.floor(sweep / turn);
        segments.add(new Arc(center, pen.distance(center), from, counterclockwise ? positive : positive - turn));
        pen = to;
        return this;
    }

    /**
     * Ends the path, back at its beginning.
     *
     * @return the closed path
     */
    public Path close() {
        lineTo(start);
        return new Path(segments, true);
    }

    /**
     * Ends the path where the pen is.
     *
     * @return the open path
     */
    public Path open() {
        return new Path(segments, false);
    }
}

package org.capwright.geom;

/** A straight line or a circular arc, with a direction. */
public sealed interface Segment permits Segment.Line, Segment.Arc {
    /**
     * Where it begins.
     *
     * @return the point
     */
    Vec2 from();

    /**
     * Where it ends.
     *
     * @return the point
     */
    Vec2 to();

    /**
     * Its length.
     *
     * @return mm
     */
    double length();

    /**
     * A point on it.
     *
     * @param t share of its length from its beginning, 0 to 1
     * @return the point
     */
    Vec2 pointAt(double t);

    /**
     * The smallest upright rectangle round it.
     *
     * @return the rectangle
     */
    Bounds bounds();

    /**
     * The same, run the other way.
     *
     * @return the segment
     */
    Segment reversed();

    /**
     * The same, moved.
     *
     * @param by how far
     * @return the segment
     */
    Segment translated(Vec2 by);

    /**
     * The same, turned about the origin.
     *
     * @param rad from +x towards +y
     * @return the segment
     */
    Segment rotated(double rad);

    /**
     * Twice the area swept from the origin, the integral of {@code x dy - y dx} (Green's theorem).
     *
     * @return mm2
     */
    double doubleArea();

    /**
     * Moments of the area swept from the origin: integrals of {@code x^2/2 dy} and {@code -y^2/2 dx}.
     *
     * @return first moments about y and x, mm3
     */
    Vec2 moment();

    /**
     * A straight line.
     *
     * @param from where it begins
     * @param to where it ends
     */
    record Line(Vec2 from, Vec2 to) implements Segment {
        @Override
        public double length() {
            return from.distance(to);
        }

        @Override
        public Vec2 pointAt(double t) {
            return from.plus(to.minus(from).times(t));
        }

        @Override
        public Bounds bounds() {
            return new Bounds(Math.min(from.x(), to.x()), Math.min(from.y(), to.y()), Math.max(from.x(), to.x()),
                    Math.max(from.y(), to.y()));
        }

        @Override
        public Line reversed() {
            return new Line(to, from);
        }

        @Override
        public Line translated(Vec2 by) {
            return new Line(from.plus(by), to.plus(by));
        }

        @Override
        public Line rotated(double rad) {
            return new Line(from.rotated(rad), to.rotated(rad));
        }

        @Override
        public double doubleArea() {
            return from.cross(to);
        }

        @Override
        public Vec2 moment() {
            double dx = to.x() - from.x();
            double dy = to.y() - from.y();
            double xx = from.x() * from.x() + from.x() * to.x() + to.x() * to.x();
            double yy = from.y() * from.y() + from.y() * to.y() + to.y() * to.y();
            return new Vec2(dy * xx / 6, -dx * yy / 6);
        }
    }

    /**
     * A circular arc.
     *
     * @param center its centre
     * @param radius its radius, over 0
     * @param startRad direction of its beginning from the centre
     * @param sweepRad turn from beginning to end, positive from +x towards +y, at most a full turn
     */
    record Arc(Vec2 center, double radius, double startRad, double sweepRad) implements Segment {
        private static final double FULL_TURN_RAD = 2 * Math.PI + 1e-9;

        /** Refuses a radius that is none and more than a full turn. */
        public Arc {
            if (!(radius > 0 && Double.isFinite(radius) && Math.abs(sweepRad) <= FULL_TURN_RAD)) {
                throw new IllegalArgumentException("an arc needs a radius over 0 mm and at most a full turn, not " + radius
                        + " mm and " + sweepRad + " rad");
            }
        }

        @Override
        public Vec2 from() {
            return center.plus(Vec2.polar(radius, startRad));
        }

        @Override
        public Vec2 to() {
            return center.plus(Vec2.polar(radius, startRad + sweepRad));
        }

        @Override
        public double length() {
            return radius * Math.abs(sweepRad);
        }

        @Override
        public Vec2 pointAt(double t) {
            return center.plus(Vec2.polar(radius, startRad + t * sweepRad));
        }

        @Override
        public Bounds bounds() {
            Bounds bounds = new Line(from(), to()).bounds();
            double low = Math.min(startRad, startRad + sweepRad);
            double high = Math.max(startRad, startRad + sweepRad);
            double quarter = Math.PI / 2;
            for (double k = Math.ceil(low / quarter); k * quarter <= high; k++) {
                Vec2 extreme = center.plus(Vec2.polar(radius, k * quarter));
                bounds = bounds.union(new Bounds(extreme.x(), extreme.y(), extreme.x(), extreme.y()));
            }
            return bounds;
        }

        @Override
        public Arc reversed() {
            return new Arc(center, radius, startRad + sweepRad, -sweepRad);
        }

        @Override
        public Arc translated(Vec2 by) {
            return new Arc(center.plus(by), radius, startRad, sweepRad);
        }

        @Override
        public Arc rotated(double rad) {
            return new Arc(center.rotated(rad), radius, startRad + rad, sweepRad);
        }

        @Override
        public double doubleArea() {
            Vec2 chord = to().minus(from());
            return radius * radius * sweepRad + center.cross(chord);
        }

        @Override
        public Vec2 moment() {
            double end = startRad + sweepRad;
            double s1 = Math.sin(startRad);
            double s2 = Math.sin(end);
            double c1 = Math.cos(startRad);
            double c2 = Math.cos(end);
            double cosSquared = (sweepRad + s2 * c2 - s1 * c1) / 2;
            double sinSquared = (sweepRad - s2 * c2 + s1 * c1) / 2;
            double cosCubed = s2 - s2 * s2 * s2 / 3 - s1 + s1 * s1 * s1 / 3;
            double sinCubed = -c2 + c2 * c2 * c2 / 3 + c1 - c1 * c1 * c1 / 3;
            double x = center.x();
            double y = center.y();
            return new Vec2(
                    radius / 2 * (x * x * (s2 - s1) + 2 * x * radius * cosSquared + radius * radius * cosCubed),
                    radius / 2 * (y * y * (c1 - c2) + 2 * y * radius * sinSquared + radius * radius * sinCubed));
        }
    }
}

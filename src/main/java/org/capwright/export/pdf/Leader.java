package org.capwright.export.pdf;

import org.capwright.geom.Vec2;

/** Leaders: lines from a reference to its place. */
final class Leader {
    /** A leader runs along a line where it is less than so far off it for so long. */
    static final double OFF_MM = 0.7;
    static final double LONG_MM = 4;

    private Leader() {
    }

    /** Whether a leader runs along a straight line. */
    static boolean along(Vec2 from, Vec2 to, Vec2 lineFrom, Vec2 lineTo) {
        double length = from.distance(to);
        if (length < LONG_MM || lineFrom.distance(lineTo) < LONG_MM) {
            return false;
        }
        Vec2 unit = to.minus(from).times(1 / length);
        double a = lineFrom.minus(from).dot(unit);
        double b = lineTo.minus(from).dot(unit);
        double offA = lineFrom.minus(from).cross(unit);
        double offB = lineTo.minus(from).cross(unit);
        // both ends as distances along the leader and off it; the part that is near is where off is small
        double[] near = near(a, offA, b, offB);
        return Math.min(near[1], length) - Math.max(near[0], 0) >= LONG_MM;
    }

    /** From where to where, along the leader, a line is near it; empty where the second is less than the first. */
    private static double[] near(double a, double offA, double b, double offB) {
        double low = 0;
        double high = 1;
        double change = offB - offA;
        if (Math.abs(change) < 1e-12) {
            return Math.abs(offA) < OFF_MM ? new double[] {Math.min(a, b), Math.max(a, b)} : new double[] {1, 0};
        }
        double s = (-OFF_MM - offA) / change;
        double t = (OFF_MM - offA) / change;
        low = Math.max(low, Math.min(s, t));
        high = Math.min(high, Math.max(s, t));
        if (low > high) {
            return new double[] {1, 0};
        }
        double p = a + low * (b - a);
        double q = a + high * (b - a);
        return new double[] {Math.min(p, q), Math.max(p, q)};
    }
}

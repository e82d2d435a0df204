package org.capwright.geom;

/**
 * A point or a vector in the plane, in millimetres.
 *
 * @param x across
 * @param y up
 */
public record Vec2(double x, double y) {
    /** The origin. */
    public static final Vec2 ZERO = new Vec2(0, 0);

    /**
     * The point at a distance and direction from the origin.
     *
     * @param radius distance from the origin, mm
     * @param rad direction from +x towards +y
     * @return the point
     */
    public static Vec2 polar(double radius, double rad) {
        return new Vec2(radius * Math.cos(rad), radius * Math.sin(rad));
    }

    /**
     * The sum.
     *
     * @param v what to add
     * @return this + v
     */
    public Vec2 plus(Vec2 v) {
        return new Vec2(x + v.x, y + v.y);
    }

    /**
     * The difference.
     *
     * @param v what to take away
     * @return this - v
     */
    public Vec2 minus(Vec2 v) {
        return new Vec2(x - v.x, y - v.y);
    }

    /**
     * The multiple.
     *
     * @param k factor
     * @return k times this
     */
    public Vec2 times(double k) {
        return new Vec2(x * k, y * k);
    }

    /**
     * The scalar product.
     *
     * @param v the other vector
     * @return this . v
     */
    public double dot(Vec2 v) {
        return x * v.x + y * v.y;
    }

    /**
     * The z component of the vector product.
     *
     * @param v the other vector
     * @return this x v
     */
    public double cross(Vec2 v) {
        return x * v.y - y * v.x;
    }

    /**
     * The distance from the origin.
     *
     * @return the length, mm
     */
    public double norm() {
        return Math.hypot(x, y);
    }

    /**
     * The distance to another point.
     *
     * @param v the other point
     * @return the distance, mm
     */
    public double distance(Vec2 v) {
        return Math.hypot(x - v.x, y - v.y);
    }

    /**
     * The direction from the origin.
     *
     * @return radians in (-pi, pi], from +x towards +y
     */
    public double direction() {
        return Math.atan2(y, x);
    }

    /**
     * The vector turned a quarter turn to the left.
     *
     * @return (-y, x)
     */
    public Vec2 left() {
        return new Vec2(-y, x);
    }

    /**
     * The vector turned about the origin.
     *
     * @param rad from +x towards +y
     * @return the turned vector
     */
    public Vec2 rotated(double rad) {
        double c = Math.cos(rad);
        double s = Math.sin(rad);
        return new Vec2(c * x - s * y, s * x + c * y);
    }
}

package org.capwright.geom;

import java.util.Collection;

/**
 * An upright rectangle, in millimetres.
 *
 * @param minX left
 * @param minY bottom
 * @param maxX right
 * @param maxY top
 */
public record Bounds(double minX, double minY, double maxX, double maxY) {
    /**
     * The smallest rectangle round points.
     *
     * @param points at least one
     * @return the rectangle
     */
    public static Bounds of(Collection<Vec2> points) {
        Bounds bounds = null;
        for (Vec2 point : points) {
            Bounds one = new Bounds(point.x(), point.y(), point.x(), point.y());
            bounds = bounds == null ? one : bounds.union(one);
        }
        if (bounds == null) {
            throw new IllegalArgumentException("no points, no bounds");
        }
        return bounds;
    }

    /**
     * The smallest rectangle round this and another.
     *
     * @param other the other
     * @return the rectangle
     */
    public Bounds union(Bounds other) {
        return new Bounds(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /**
     * The rectangle grown on all sides.
     *
     * @param mm by how much; negative shrinks it
     * @return the rectangle
     */
    public Bounds grown(double mm) {
        return new Bounds(minX - mm, minY - mm, maxX + mm, maxY + mm);
    }

    /**
     * Whether it has a point in common with another, edges included.
     *
     * @param other the other
     * @return true if so
     */
    public boolean intersects(Bounds other) {
        return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
    }

    /**
     * Whether a point lies in it, edges included.
     *
     * @param point the point
     * @return true if so
     */
    public boolean contains(Vec2 point) {
        return point.x() >= minX && point.x() <= maxX && point.y() >= minY && point.y() <= maxY;
    }

    /**
     * Its width.
     *
     * @return mm
     */
    public double width() {
        return maxX - minX;
    }

    /**
     * Its height.
     *
     * @return mm
     */
    public double height() {
        return maxY - minY;
    }

    /**
     * Its middle.
     *
     * @return the point
     */
    public Vec2 center() {
        return new Vec2((minX + maxX) / 2, (minY + maxY) / 2);
    }
}

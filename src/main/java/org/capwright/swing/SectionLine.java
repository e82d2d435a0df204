package org.capwright.swing;

import java.awt.geom.Line2D;
import org.capwright.geom.Vec3;

/** A straight line of a leaf's section, seen along the rods, and how near it comes to other things. */
final class SectionLine {
    private SectionLine() {
    }

    /**
     * A line of the leaf and a point that stays.
     *
     * @param a one end of the leaf's line
     * @param b the other
     * @param x the point
     * @param z the same
     * @return their distance, and the place on the leaf
     */
    static Nearness toPoint(Vec3 a, Vec3 b, double x, double z) {
        double dx = b.x() - a.x();
        double dz = b.z() - a.z();
        double along = ((x - a.x()) * dx + (z - a.z()) * dz) / (dx * dx + dz * dz);
        Vec3 place = between(a, b, Math.max(0, Math.min(1, along)));
        return new Nearness(Math.hypot(place.x() - x, place.z() - z), place);
    }

    /** A line of the leaf and a line that stays: 0, where they cross. */
    static Nearness toLine(Vec3 a, Vec3 b, Line2D fixed) {
        if (fixed.intersectsLine(a.x(), a.z(), b.x(), b.z())) {
            double sideA = fixed.ptLineDist(a.x(), a.z());
            double sideB = fixed.ptLineDist(b.x(), b.z());
            return new Nearness(0, sideA + sideB == 0 ? a : between(a, b, sideA / (sideA + sideB)));
        }
        return new Nearness(fixed.ptSegDist(a.x(), a.z()), a)
                .orNearer(new Nearness(fixed.ptSegDist(b.x(), b.z()), b))
                .orNearer(toPoint(a, b, fixed.getX1(), fixed.getY1()))
                .orNearer(toPoint(a, b, fixed.getX2(), fixed.getY2()));
    }

    private static Vec3 between(Vec3 a, Vec3 b, double share) {
        return new Vec3(a.x() + (b.x() - a.x()) * share, a.y(), a.z() + (b.z() - a.z()) * share);
    }
}

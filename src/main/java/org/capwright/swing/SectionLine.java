package org.capwright.swing;

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

    private static Vec3 between(Vec3 a, Vec3 b, double share) {
        return new Vec3(a.x() + (b.x() - a.x()) * share, a.y(), a.z() + (b.z() - a.z()) * share);
    }
}

package org.capwright.swing;

import org.capwright.geom.Vec3;

/**
 * Something convex that stays, in the section across the rods.
 *
 * @param x its corners, counterclockwise with x to the right and z up
 * @param z the same
 */
record ConvexSection(double[] x, double[] z) {
    /**
     * A straight line of a leaf's section: its distance; where it lies within, how far at least it would have to move to come
     * out, negative. What keeps two convex things apart, or shows how deep they are in each other, is square to a side of either.
     *
     * @param a one end of the leaf's line
     * @param b the other
     * @return the distance or depth, and the place on the leaf
     */
    Nearness to(Vec3 a, Vec3 b) {
        Nearness within = acrossSides(a, b);
        Nearness across = acrossLine(a, b);
        within = across.mm() > within.mm() ? across : within;
        return within.mm() < 0 ? within : apart(a, b);
    }

    /** Square to that side of this thing which the line passes least. */
    private Nearness acrossSides(Vec3 a, Vec3 b) {
        Nearness least = new Nearness(Double.NEGATIVE_INFINITY, a);
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            double length = Math.hypot(x[next] - x[i], z[next] - z[i]);
            double outX = (z[next] - z[i]) / length;
            double outZ = (x[i] - x[next]) / length;
            double atA = (a.x() - x[i]) * outX + (a.z() - z[i]) * outZ;
            double atB = (b.x() - x[i]) * outX + (b.z() - z[i]) * outZ;
            Nearness across = atA <= atB ? new Nearness(atA, a) : new Nearness(atB, b);
            least = across.mm() > least.mm() ? across : least;
        }
        return least;
    }

    /** Square to the line, to whichever side is nearer. */
    private Nearness acrossLine(Vec3 a, Vec3 b) {
        double length = Math.hypot(b.x() - a.x(), b.z() - a.z());
        int lowest = 0;
        int highest = 0;
        double[] off = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            off[i] = ((x[i] - a.x()) * (a.z() - b.z()) + (z[i] - a.z()) * (b.x() - a.x())) / length;
            lowest = off[i] < off[lowest] ? i : lowest;
            highest = off[i] > off[highest] ? i : highest;
        }
        int corner = off[lowest] > -off[highest] ? lowest : highest;
        double mm = Math.max(off[lowest], -off[highest]);
        return new Nearness(mm, SectionLine.toPoint(a, b, x[corner], z[corner]).where());
    }

    private Nearness apart(Vec3 a, Vec3 b) {
        Nearness nearest = Nearness.NONE;
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            nearest = nearest.orNearer(SectionLine.toPoint(a, b, x[i], z[i])).orNearer(toSide(a, i, next))
                    .orNearer(toSide(b, i, next));
        }
        return nearest;
    }

    private Nearness toSide(Vec3 point, int i, int next) {
        Vec3 from = new Vec3(x[i], point.y(), z[i]);
        Vec3 to = new Vec3(x[next], point.y(), z[next]);
        return new Nearness(SectionLine.toPoint(from, to, point.x(), point.z()).mm(), point);
    }
}

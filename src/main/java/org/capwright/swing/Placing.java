package org.capwright.swing;

import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;

/**
 * Where the points of a leaf on a skewed rod are at one opening. The leaf lies closed as drawn, but follows its rod's height
 * and tilt; it then turns about the real axis. A point is given as in {@link Motion}: u outboard of the rod axis (in the middle),
 * y along the hinge edge, w up, leaf closed.
 *
 * <p>With the rod's direction {@code e = (sin beta, cos beta, 0)} in the leaf, the turn is Rodrigues' formula
 * {@code b cos + (b x e) sin + e (e.b)(1 - cos)}; the rod's tilt turns the whole about x.
 */
final class Placing {
    private final double side;
    private final double axisX;
    private final double axisZ;
    private final double cosine;
    private final double sine;
    private final double skewCos;
    private final double skewSin;
    private final double tiltCos;
    private final double tiltSin;

    Placing(Leaf leaf, RodLine rod, Turn open) {
        this.side = rod.side();
        this.axisX = axisMm(leaf, rod);
        this.axisZ = rod.heightMm();
        this.cosine = open.cosine();
        this.sine = open.sine();
        double skew = rod.skewRad();
        double tilt = rod.tiltRad();
        this.skewCos = Math.cos(skew);
        this.skewSin = Math.sin(skew);
        this.tiltCos = Math.cos(tilt);
        this.tiltSin = Math.sin(tilt);
    }

    /** Rod axis in the middle, as of the +x side. */
    static double axisMm(Leaf leaf, RodLine rod) {
        return leaf.slab().hingeEdgeMm() + rod.offsetMm();
    }

    double x(double u, double y, double w) {
        double along = (1 - cosine) * (skewSin * u + skewCos * y);
        return side * (axisX + cosine * u - sine * skewCos * w + skewSin * along);
    }

    double y(double u, double y, double w) {
        return level(u, y, w) * tiltCos - rise(u, y, w) * tiltSin;
    }

    double z(double u, double y, double w) {
        return axisZ + level(u, y, w) * tiltSin + rise(u, y, w) * tiltCos;
    }

    Vec3 at(double u, double y, double w) {
        return new Vec3(x(u, y, w), y(u, y, w), z(u, y, w));
    }

    private double level(double u, double y, double w) {
        return cosine * y + sine * skewSin * w + (1 - cosine) * skewCos * (skewSin * u + skewCos * y);
    }

    private double rise(double u, double y, double w) {
        return cosine * w + sine * (skewCos * u - skewSin * y);
    }
}

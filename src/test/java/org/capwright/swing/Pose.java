package org.capwright.swing;

import org.capwright.part.Leaf;

/** A leaf turned by an opening about its rod: where its points {@code u, w, y} are then. */
record Pose(double axis, double axisZ, double sine, double cosine) {
    static Pose of(Leaf leaf, double openRad) {
        return new Pose(leaf.rodAxisMm(), leaf.sheet().thicknessMm() + leaf.rodRadiusMm(), Math.sin(openRad), Math.cos(openRad));
    }

    double x(double[] p) {
        return axis + p[0] * cosine - p[1] * sine;
    }

    double z(double[] p) {
        return axisZ + p[0] * sine + p[1] * cosine;
    }

    /** Distance from the stack's axis. */
    double out(double[] p) {
        double x = x(p);
        return Math.sqrt(x * x + p[2] * p[2]);
    }
}

package org.capwright.swing;

import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;

/**
 * Turns a leaf about its rod.
 *
 * @param axisMm rod axis, x
 * @param axisZMm rod axis, z
 */
public record Motion(double axisMm, double axisZMm) {
    /**
     * The motion of a leaf.
     *
     * @param leaf a leaf of the +x side
     * @return its motion
     */
    public static Motion of(Leaf leaf) {
        return new Motion(leaf.rodAxisMm(), leaf.rodAxisZMm());
    }

    /**
     * x of a point: {@code x_r + u cos theta - w sin theta}.
     *
     * @param u outboard of the axis, leaf closed
     * @param w above the axis, leaf closed
     * @param turn opening
     * @return mm
     */
    public double xMm(double u, double w, Turn turn) {
        return axisMm + u * turn.cosine() - w * turn.sine();
    }

    /**
     * z of a point: {@code z_r + u sin theta + w cos theta}.
     *
     * @param u outboard of the axis, leaf closed
     * @param w above the axis, leaf closed
     * @param turn opening
     * @return mm
     */
    public double zMm(double u, double w, Turn turn) {
        return axisZMm + u * turn.sine() + w * turn.cosine();
    }

    /**
     * A point at an opening.
     *
     * @param u outboard of the axis, leaf closed
     * @param w above the axis, leaf closed
     * @param y along the rod
     * @param turn opening
     * @return where it is
     */
    public Vec3 at(double u, double w, double y, Turn turn) {
        return new Vec3(xMm(u, w, turn), y, zMm(u, w, turn));
    }
}

package org.capwright.geom;

/**
 * A point in space, in millimetres, in the frame of the cap: z up from the rim, y along the rods, x across them.
 *
 * @param x across the rods
 * @param y along the rods
 * @param z up
 */
public record Vec3(double x, double y, double z) {
}

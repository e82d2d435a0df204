package org.capwright.swing;

import org.capwright.geom.Vec3;

/**
 * How near two things are at one opening.
 *
 * @param mm distance; negative where they are in each other; infinite where they cannot meet at that opening
 * @param where the point of the moving one
 */
public record Nearness(double mm, Vec3 where) {
    /** Two things that cannot meet. */
    static final Nearness NONE = new Nearness(Double.POSITIVE_INFINITY, new Vec3(0, 0, 0));

    /** The smaller of two. */
    Nearness orNearer(Nearness other) {
        return other.mm < mm ? other : this;
    }
}

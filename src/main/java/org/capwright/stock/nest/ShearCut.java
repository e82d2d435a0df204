package org.capwright.stock.nest;

import org.capwright.geom.Vec2;

/**
 * A cut of a shear, from edge to edge of what is left then.
 *
 * @param from its lower or left end
 * @param to its other end
 */
public record ShearCut(Vec2 from, Vec2 to) {
    /**
     * Its length.
     *
     * @return mm
     */
    public double lengthMm() {
        return from.distance(to);
    }
}

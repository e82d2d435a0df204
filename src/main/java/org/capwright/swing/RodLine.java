package org.capwright.swing;

import org.capwright.part.Leaf;

/**
 * Where a rod really lies. Offset and height are those at the +y and the -y end; the rod may be skewed either way.
 *
 * @param number number of its leaf
 * @param side +1 for the leaf on the +x side, -1 for its counterpart
 * @param offsetPlusMm axis from the hinge flange's outside face at the +y end, into the leaf
 * @param offsetMinusMm the same at the -y end
 * @param heightPlusMm axis above the rim at the +y end, leaf closed
 * @param heightMinusMm the same at the -y end
 * @param endMm distance of both ends from the middle, along y
 */
public record RodLine(int number, int side, double offsetPlusMm, double offsetMinusMm, double heightPlusMm,
                      double heightMinusMm, double endMm) {
    /**
     * A rod as it is drawn.
     *
     * @param leaf its leaf
     * @param side +1 or -1
     * @param endMm where its bushings are, along y
     * @return straight along y
     */
    public static RodLine asDrawn(Leaf leaf, int side, double endMm) {
        double offset = leaf.rodAxisMm() - leaf.slab().hingeEdgeMm();
        return new RodLine(leaf.number(), side, offset, offset, leaf.rodAxisZMm(), leaf.rodAxisZMm(), endMm);
    }

    /**
     * Offset in the middle.
     *
     * @return mm
     */
    public double offsetMm() {
        return (offsetPlusMm + offsetMinusMm) / 2;
    }

    /**
     * Height in the middle.
     *
     * @return mm
     */
    public double heightMm() {
        return (heightPlusMm + heightMinusMm) / 2;
    }

    /**
     * Skew in plan: how far the rod turns from the y axis, outboard at the +y end being positive.
     *
     * @return radians
     */
    public double skewRad() {
        return Math.atan((offsetPlusMm - offsetMinusMm) / (2 * endMm));
    }

    /**
     * Tilt: how far the rod rises towards +y.
     *
     * @return radians
     */
    public double tiltRad() {
        return Math.atan((heightPlusMm - heightMinusMm) / (2 * endMm));
    }
}

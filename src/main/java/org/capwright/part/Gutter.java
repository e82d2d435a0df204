package org.capwright.part;

/**
 * A gutter under the gap between two hinge edges, along y at x = joint. Its ends are cut straight, square to the radius
 * through the joint on the sleeve, so far out that the middle of the cut is the spout's length beyond the sleeve.
 *
 * @param number 1 in the middle, then outwards
 * @param sheet what it is cut from
 * @param jointMm its middle, x
 * @param insideWidthMm inside width
 * @param depthMm from the rim down to its floor, inside
 * @param endRadiusMm distance of the end cuts from the stack's axis: sleeve outside radius and spout
 * @param bend its bends
 */
public record Gutter(int number, Sheet sheet, double jointMm, double insideWidthMm, double depthMm, double endRadiusMm,
                     BendRule bend) {
    /**
     * Outside width.
     *
     * @return mm
     */
    public double outsideWidthMm() {
        return insideWidthMm + 2 * sheet.thicknessMm();
    }

    /**
     * Depth over all below the rim.
     *
     * @return mm
     */
    public double outsideDepthMm() {
        return depthMm + sheet.thicknessMm();
    }

    /**
     * Where the end cut is, along the gutter, at a distance across it.
     *
     * @param acrossMm from the gutter's middle, towards +x
     * @return y of the end, mm
     */
    public double endMm(double acrossMm) {
        double across = jointMm / endRadiusMm;
        double along = Math.sqrt(1 - across * across);
        return (endRadiusMm - (jointMm + acrossMm) * across) / along;
    }

    /**
     * Distance of an outer corner of its end from the stack's axis, the farther of the two.
     *
     * @return mm
     */
    public double cornerRadiusMm() {
        double half = outsideWidthMm() / 2;
        return Math.max(Math.hypot(jointMm + half, endMm(half)), Math.hypot(jointMm - half, endMm(-half)));
    }

    /**
     * Its blank across.
     *
     * @return floor and walls
     */
    public ChannelFlat flat() {
        return new ChannelFlat(outsideWidthMm(), outsideDepthMm(), bend.square());
    }

    /**
     * Length of its blank over all.
     *
     * @return mm
     */
    public double blankLengthMm() {
        return 2 * endMm(-outsideWidthMm() / 2);
    }

    /**
     * Mass.
     *
     * @return kg
     */
    public double massKg() {
        return sheet.massKg(flat().widthMm() * 2 * endMm(0));
    }
}

package org.capwright.part;

/**
 * A stop bar: a channel, legs down, across the hood's top along y. Its ends follow the hood's inside and are welded there.
 *
 * @param number 1 in the middle, then outwards
 * @param sheet what it is cut from
 * @param jointMm its middle, x
 * @param halfWidthMm half its outside width, b
 * @param depthMm outside depth of its legs
 * @param cornerZMm height of its lower corners, z_b
 * @param endRadiusMm radius of its ends: hood inside less the end gap
 * @param bend its bends
 */
public record StopBar(int number, Sheet sheet, double jointMm, double halfWidthMm, double depthMm, double cornerZMm,
                      double endRadiusMm, BendRule bend) {
    /**
     * Half width that stops a leaf at an opening: {@code b = x_r + (r + (z_b - z_r) cos theta) / sin theta}.
     *
     * @param axisMm rod axis from the pair's centre, x_r
     * @param axisZMm rod axis, z_r
     * @param rodRadiusMm distance of the leaf's top face from the rod axis, r
     * @param cornerZMm lower corner of the bar, z_b
     * @param openRad opening at the stop, in (0, pi/2]
     * @return b, mm
     */
    public static double halfWidthMm(double axisMm, double axisZMm, double rodRadiusMm, double cornerZMm, double openRad) {
        return axisMm + (rodRadiusMm + (cornerZMm - axisZMm) * Math.cos(openRad)) / Math.sin(openRad);
    }

    /**
     * The inverse: opening at which a bar stops a leaf. With e = b - x_r and H = z_b - z_r, {@code e sin - H cos = r}, so
     * {@code theta = atan2(H, e) + asin(r / hypot(e, H))}.
     *
     * @param axisMm rod axis from the pair's centre, x_r
     * @param axisZMm rod axis, z_r
     * @param rodRadiusMm distance of the leaf's top face from the rod axis, r
     * @param cornerZMm lower corner of the bar, z_b
     * @param halfWidthMm b
     * @return radians
     */
    public static double openRad(double axisMm, double axisZMm, double rodRadiusMm, double cornerZMm, double halfWidthMm) {
        double across = halfWidthMm - axisMm;
        double up = cornerZMm - axisZMm;
        return Math.atan2(up, across) + Math.asin(rodRadiusMm / Math.hypot(across, up));
    }

    /**
     * Contact arm: distance along the leaf from the rod axis to where its top face meets the bar.
     *
     * @param axisMm rod axis from the pair's centre
     * @param axisZMm rod axis, z
     * @param openRad opening at the stop
     * @return mm
     */
    public double contactArmMm(double axisMm, double axisZMm, double openRad) {
        return (halfWidthMm - axisMm) * Math.cos(openRad) + (cornerZMm - axisZMm) * Math.sin(openRad);
    }

    /**
     * Where its end is, along y, at a distance across it.
     *
     * @param acrossMm from the bar's middle, towards +x
     * @return y of the end, mm
     */
    public double endMm(double acrossMm) {
        double x = jointMm + acrossMm;
        return Math.sqrt(endRadiusMm * endRadiusMm - x * x);
    }

    /**
     * Its blank across.
     *
     * @return web and legs
     */
    public ChannelFlat flat() {
        return new ChannelFlat(2 * halfWidthMm, depthMm, bend.square());
    }

    /**
     * Length of its blank over all.
     *
     * @return mm
     */
    public double blankLengthMm() {
        return 2 * endMm(-Math.min(jointMm, halfWidthMm));
    }

    /**
     * Mass, the ends' curve left out.
     *
     * @return kg
     */
    public double massKg() {
        return sheet.massKg(flat().widthMm() * 2 * endMm(0));
    }
}

package org.capwright.part;

/**
 * A straight passage along y through a cylinder's wall: what it takes of the wall in azimuth, seen from the middle of the
 * passage. Straight sides through a curved wall span more than their width, the more so the farther off the axis.
 *
 * @param fromRad from the y axis towards +x, near side
 * @param toRad the same, far side
 */
public record WallPassage(double fromRad, double toRad) {
    /**
     * A passage between two planes x = from and x = to: from {@code asin(from/R_outside)} to {@code asin(to/R_inside)} for
     * positive x; the outside radius for the end nearer the axis.
     *
     * @param fromMm lower plane, within the cylinder
     * @param toMm upper plane, within the cylinder
     * @param insideMm inside radius of the wall
     * @param outsideMm outside radius of the wall
     * @return the passage
     */
    public static WallPassage between(double fromMm, double toMm, double insideMm, double outsideMm) {
        double from = Math.asin(fromMm / (fromMm > 0 ? outsideMm : insideMm));
        double to = Math.asin(toMm / (toMm > 0 ? insideMm : outsideMm));
        return new WallPassage(from, to);
    }

    /**
     * Its middle.
     *
     * @return from the y axis towards +x
     */
    public double middleRad() {
        return (fromRad + toRad) / 2;
    }

    /**
     * Half its width.
     *
     * @return radians
     */
    public double halfWidthRad() {
        return (toRad - fromRad) / 2;
    }
}

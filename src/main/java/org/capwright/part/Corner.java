package org.capwright.part;

/**
 * Where two flanges of a leaf meet.
 *
 * @param xMm corner of the mould lines, across the rods
 * @param yMm the same, along the rods; the other corner is at -y
 * @param interiorRad interior angle between chord and arc
 * @param cutRad cut of each flange's end from the square, outwards positive
 */
public record Corner(double xMm, double yMm, double interiorRad, double cutRad) {
    /** Corner at a chord near the axis, with the leaf on its far side. */
    static Corner atHinge(double radiusMm, double xMm, double turnRad) {
        return of(radiusMm, xMm, Math.acos(xMm / radiusMm), turnRad);
    }

    /** Corner at a chord with the leaf on its near side. */
    static Corner atFreeChord(double radiusMm, double xMm, double turnRad) {
        return of(radiusMm, xMm, Math.PI - Math.acos(xMm / radiusMm), turnRad);
    }

    private static Corner of(double radiusMm, double xMm, double interiorRad, double turnRad) {
        double y = Math.sqrt(radiusMm * radiusMm - xMm * xMm);
        return new Corner(xMm, y, interiorRad, cutRad(turnRad, interiorRad));
    }

    /**
     * Cut of the flanges' ends where two flanges meet: {@code atan(cos(beta) / tan(alpha/2))}.
     *
     * @param turnRad turn of both flanges from flat, beta
     * @param interiorRad interior angle of the corner, alpha
     * @return from the square, outwards positive
     */
    public static double cutRad(double turnRad, double interiorRad) {
        return Math.atan(Math.cos(turnRad) / Math.tan(interiorRad / 2));
    }
}

package org.capwright.part;

import java.util.List;
import org.capwright.metal.Metal;

/**
 * A doubler plate: flat, square to the rods, outside the hood, one per pair of rods (or single rod) and side.
 *
 * @param number 1 in the middle, then outwards
 * @param metal what it is cut from
 * @param thicknessMm thickness
 * @param heightMm height, centred on the rods
 * @param fromMm its left edge, x
 * @param toMm its right edge, x
 * @param boresMm middles of its bores, x
 * @param boreMm diameter of its bores
 * @param faceYMm its inner face, y
 * @param hoodOutsideMm hood outside radius
 */
public record Doubler(int number, Metal metal, double thicknessMm, double heightMm, double fromMm, double toMm,
                      List<Double> boresMm, double boreMm, double faceYMm, double hoodOutsideMm) {
    /** Keeps its own copy. */
    public Doubler {
        boresMm = List.copyOf(boresMm);
    }

    /**
     * Where its inner face stands: the largest of {@code sqrt(R_ho^2 - x^2)} over its span.
     *
     * @param fromMm its left edge, x
     * @param toMm its right edge, x
     * @param hoodOutsideMm hood outside radius
     * @return y, mm
     */
    public static double faceYMm(double fromMm, double toMm, double hoodOutsideMm) {
        double nearest = fromMm <= 0 && toMm >= 0 ? 0 : Math.min(Math.abs(fromMm), Math.abs(toMm));
        return Math.sqrt(hoodOutsideMm * hoodOutsideMm - nearest * nearest);
    }

    /**
     * Width.
     *
     * @return mm
     */
    public double widthMm() {
        return toMm - fromMm;
    }

    /**
     * Its middle, x.
     *
     * @return mm
     */
    public double middleMm() {
        return (fromMm + toMm) / 2;
    }

    /**
     * Gap between plate and hood at an edge, to be filled.
     *
     * @param xMm the edge
     * @return mm
     */
    public double wedgeMm(double xMm) {
        return faceYMm - Math.sqrt(hoodOutsideMm * hoodOutsideMm - xMm * xMm);
    }

    /**
     * Mass of one, bores taken out.
     *
     * @return kg
     */
    public double massKg() {
        double area = widthMm() * heightMm - boresMm.size() * Math.PI / 4 * boreMm * boreMm;
        return area * thicknessMm * 1e-9 * metal.densityKgPerM3();
    }
}

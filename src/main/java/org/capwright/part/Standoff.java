package org.capwright.part;

import org.capwright.metal.Bend;

/**
 * A standoff: a C-shaped bracket in a radial plane. Its inner flange lies on the sleeve's outside, tangent at its middle;
 * its outer flange lies inside the hood, touching with both edges. Azimuths are of the middle of the outer flange, where its
 * rivets are.
 *
 * @param sheet what it is cut from
 * @param count how many, evenly spaced
 * @param firstRad azimuth of the first
 * @param heightMm height
 * @param topZMm its top edge, z (negative)
 * @param sleeveOutsideMm sleeve outside radius, R_so
 * @param hoodInsideMm hood inside radius, R_hi
 * @param innerFlangeMm outside width of the inner flange, w_i
 * @param outerFlangeMm outside width of the outer flange, w_o
 * @param bend its bends
 * @param rivets its rivets
 */
public record Standoff(Sheet sheet, int count, double firstRad, double heightMm, double topZMm, double sleeveOutsideMm,
                       double hoodInsideMm, double innerFlangeMm, double outerFlangeMm, BendRule bend, Rivets rivets) {
    /**
     * Rivets of one standoff, one above the other in the middle of the outer flange.
     *
     * @param diameterMm nominal diameter
     * @param holeMm diameter of their holes
     * @param each how many
     */
    public record Rivets(double diameterMm, double holeMm, int each) {
    }

    /**
     * Half the angle that the inner flange spans on the sleeve: {@code atan(w_i / (2 R_so))}.
     *
     * @return radians
     */
    public double innerHalfRad() {
        return Math.atan(innerFlangeMm / (2 * sleeveOutsideMm));
    }

    /**
     * Half the angle that the outer flange spans in the hood: {@code asin(w_o / (2 R_hi))}.
     *
     * @return radians
     */
    public double outerHalfRad() {
        return Math.asin(outerFlangeMm / (2 * hoodInsideMm));
    }

    /**
     * Bend between inner flange and web: a little under square.
     *
     * @return the bend
     */
    public Bend innerBend() {
        return bend.bend(Math.PI / 2 - innerHalfRad());
    }

    /**
     * Bend between web and outer flange: a little over square.
     *
     * @return the bend
     */
    public Bend outerBend() {
        return bend.bend(Math.PI / 2 + outerHalfRad());
    }

    /**
     * Outside length of the web: {@code R_hi - sqrt(R_so^2 + (w_i/2)^2)}.
     *
     * @return mm
     */
    public double webMm() {
        return hoodInsideMm - Math.hypot(sleeveOutsideMm, innerFlangeMm / 2);
    }

    /**
     * Length of the blank across the bends.
     *
     * @return mm
     */
    public double blankLengthMm() {
        return innerFlangeMm + webMm() + outerFlangeMm - innerBend().deductionMm() - outerBend().deductionMm();
    }

    /**
     * Bend line (middle of the bend) between inner flange and web, from the inner flange's edge.
     *
     * @return mm
     */
    public double innerBendLineMm() {
        return innerFlangeMm - innerBend().outsideSetbackMm() + innerBend().allowanceMm() / 2;
    }

    /**
     * Bend line (middle of the bend) between web and outer flange, from the inner flange's edge.
     *
     * @return mm
     */
    public double outerBendLineMm() {
        return blankLengthMm() - outerFlangeMm + outerBend().outsideSetbackMm() - outerBend().allowanceMm() / 2;
    }

    /**
     * Rivet line on the blank, from the inner flange's edge: half the outer flange's width in from its free edge.
     *
     * @return mm
     */
    public double rivetLineMm() {
        return blankLengthMm() - outerFlangeMm / 2;
    }

    /**
     * Height of a rivet above the bracket's lower edge.
     *
     * @param index which, from 0 at the bottom
     * @return mm
     */
    public double rivetHeightMm(int index) {
        return heightMm * (index + 0.5) / rivets.each();
    }

    /**
     * Azimuth of one standoff.
     *
     * @param index which, from 0
     * @return azimuth of its rivets
     */
    public double azimuthRad(int index) {
        return firstRad + 2 * Math.PI * index / count;
    }

    /**
     * Azimuth of the middle of one standoff's inner flange. The web stands in a radial plane, so the two flanges' middles
     * are not quite above each other.
     *
     * @param index which, from 0
     * @return azimuth on the sleeve
     */
    public double innerAzimuthRad(int index) {
        return azimuthRad(index) - outerHalfRad() + innerHalfRad();
    }

    /**
     * Mass of one.
     *
     * @return kg
     */
    public double massKg() {
        return sheet.massKg(blankLengthMm() * heightMm);
    }
}

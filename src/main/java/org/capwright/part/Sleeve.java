package org.capwright.part;

import java.util.List;

/**
 * The sleeve.
 *
 * @param sheet what it is cut from
 * @param insideRadiusMm inside radius, R_si
 * @param heightMm height from foot to rim
 * @param flat its blank
 * @param notches notches in the rim, one at each gutter mouth
 * @param holes fastener holes near the foot
 */
public record Sleeve(Sheet sheet, double insideRadiusMm, double heightMm, CylinderFlat flat, List<Notch> notches,
                     FastenerHoles holes) {
    /** Keeps its own copy. */
    public Sleeve {
        notches = List.copyOf(notches);
    }

    /**
     * A notch for a gutter mouth.
     *
     * @param gutter number of the gutter
     * @param fromRad azimuth of its right side, seen from outside
     * @param toRad azimuth of its left side
     * @param depthMm depth below the rim
     */
    public record Notch(int gutter, double fromRad, double toRad, double depthMm) {
    }

    /**
     * Fastener holes.
     *
     * @param count how many, evenly spaced
     * @param diameterMm diameter
     * @param aboveFootMm their middle above the foot
     * @param firstRad azimuth of the first
     */
    public record FastenerHoles(int count, double diameterMm, double aboveFootMm, double firstRad) {
    }

    /**
     * Outside radius, R_so.
     *
     * @return mm
     */
    public double outsideRadiusMm() {
        return insideRadiusMm + sheet.thicknessMm();
    }

    /**
     * Mass, notches and holes left in.
     *
     * @return kg
     */
    public double massKg() {
        return sheet.massKg(flat.lengthMm() * flat.widthMm() * flat.pieces());
    }
}

package org.capwright.refold;

import org.capwright.part.CylinderFlat;
import org.capwright.part.PlacedBead;

/** Rolls one piece of a cylinder to its mid-surface; its beads take up what is between them. */
record Roll(CylinderFlat flat, int piece, double insideRadiusMm, double thicknessMm) {
    /** Azimuth of a station: half the seam's allowance lies on either side of the seam's middle. */
    double azimuthRad(double stationMm) {
        double mean = insideRadiusMm + thicknessMm / 2;
        double allowance = flat.lengthMm() - 2 * Math.PI * mean / flat.pieces();
        return flat.seamAzimuthRad() + 2 * Math.PI * piece / flat.pieces() + (stationMm - allowance / 2) / mean;
    }

    /** Height above the formed foot of a height in the flat that is on no bead. */
    double heightMm(double flatMm) {
        double formed = flatMm - flat.footEdge().allowanceMm();
        for (PlacedBead bead : flat.beads()) {
            if (formed > bead.aboveFootMm()) {
                formed -= bead.bead().takeUpMm();
            }
        }
        return formed;
    }

    /** The same angle from -pi to pi. */
    static double turned(double rad) {
        return Math.IEEEremainder(rad, 2 * Math.PI);
    }
}

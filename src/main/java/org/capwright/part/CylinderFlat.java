package org.capwright.part;

import java.util.List;
import org.capwright.metal.Edge;
import org.capwright.metal.Seam;

/**
 * The flat blank of a rolled cylinder, outside face up: stations to the right along the girth, heights up from the foot.
 *
 * @param neutralRadiusMm radius of the mid-surface, R_n
 * @param heightMm height, formed
 * @param seam how it is closed
 * @param pieces number of equal pieces
 * @param seamAzimuthRad azimuth of the first seam's middle
 * @param footEdge finish of the foot
 * @param topEdge finish of the top
 * @param beads its beads, from the foot up
 * @param seamClearMm distance along the girth from the nearest seam's middle to the nearest hole, notch or plate
 */
public record CylinderFlat(double neutralRadiusMm, double heightMm, Seam seam, int pieces, double seamAzimuthRad,
                           Edge footEdge, Edge topEdge, List<PlacedBead> beads,
                           double seamClearMm) {
    /** Keeps its own copy. */
    public CylinderFlat {
        beads = List.copyOf(beads);
    }

    /**
     * Number of pieces so that none is longer than the stock: as few as do.
     *
     * @param neutralRadiusMm radius of the mid-surface
     * @param seam how they are joined
     * @param stockMm length of the stock
     * @return pieces
     */
    public static int piecesFor(double neutralRadiusMm, Seam seam, double stockMm) {
        double room = stockMm - seam.allowanceMm();
        return Math.max(1, (int) Math.ceil(2 * Math.PI * neutralRadiusMm / room));
    }

    /**
     * Girth of the mid-surface: {@code pi (inside diameter + t)}.
     *
     * @return mm
     */
    public double girthMm() {
        return 2 * Math.PI * neutralRadiusMm;
    }

    /**
     * Length of one piece's blank.
     *
     * @return its share of the girth and one seam allowance, mm
     */
    public double lengthMm() {
        return girthMm() / pieces + seam.allowanceMm();
    }

    /**
     * Width of the blank: the height, what the beads take up and what the edges need.
     *
     * @return mm
     */
    public double widthMm() {
        double takeUp = beads.stream().mapToDouble(bead -> bead.bead().takeUpMm()).sum();
        return heightMm + takeUp + footEdge.allowanceMm() + topEdge.allowanceMm();
    }

    /**
     * Height in the flat of a height in the formed part; beads below it have taken up metal.
     *
     * @param aboveFootMm above the formed foot
     * @return above the blank's lower edge, mm; the middle of a bead is the middle of its developed width
     */
    public double flatHeightMm(double aboveFootMm) {
        double flat = footEdge.allowanceMm() + aboveFootMm;
        for (PlacedBead bead : beads) {
            double share = (aboveFootMm - bead.aboveFootMm()) / bead.bead().widthMm() + 0.5;
            flat += bead.bead().takeUpMm() * Math.max(0, Math.min(1, share));
        }
        return flat;
    }

    /**
     * Which piece an azimuth falls on.
     *
     * @param azimuthRad azimuth
     * @return 0 for the piece that begins at the first seam
     */
    public int pieceAt(double azimuthRad) {
        double turns = (azimuthRad - seamAzimuthRad) / (2 * Math.PI);
        return Math.min(pieces - 1, (int) ((turns - Math.floor(turns)) * pieces));
    }

    /**
     * Station of an azimuth on its piece's blank: {@code (phi - phi_seam) R_n} and half the seam allowance.
     *
     * @param azimuthRad azimuth
     * @return from the blank's left edge, mm
     */
    public double stationMm(double azimuthRad) {
        double turns = (azimuthRad - seamAzimuthRad) / (2 * Math.PI);
        double girth = (turns - Math.floor(turns)) * girthMm();
        return girth - pieceAt(azimuthRad) * girthMm() / pieces + seam.allowanceMm() / 2;
    }
}

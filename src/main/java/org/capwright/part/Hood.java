package org.capwright.part;

/**
 * The hood.
 *
 * @param sheet what it is cut from
 * @param insideRadiusMm inside radius, R_hi
 * @param belowRimMm how far it hangs below the rim
 * @param aboveRimMm how far it stands above the rim
 * @param flat its blank
 */
public record Hood(Sheet sheet, double insideRadiusMm, double belowRimMm, double aboveRimMm, CylinderFlat flat) {
    /**
     * Outside radius, R_ho.
     *
     * @return mm
     */
    public double outsideRadiusMm() {
        return insideRadiusMm + sheet.thicknessMm();
    }

    /**
     * How far anything of it stands out: its outward beads.
     *
     * @return largest radius, mm
     */
    public double largestRadiusMm() {
        double bead = flat.beads().stream().filter(placed -> !placed.inward())
                .mapToDouble(placed -> placed.bead().depthMm()).max().orElse(0);
        return outsideRadiusMm() + bead;
    }

    /**
     * Mass, holes left in.
     *
     * @return kg
     */
    public double massKg() {
        return sheet.massKg(flat.lengthMm() * flat.widthMm() * flat.pieces());
    }
}

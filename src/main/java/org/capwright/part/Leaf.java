package org.capwright.part;

import java.util.Optional;
import org.capwright.metal.Bend;

/**
 * A damper leaf on the +x side: a slab of a disc between its hinge edge and either the arc or a free chord, with drip
 * flanges turned down all round.
 *
 * @param number 1 for the leaf next to the middle, then outwards
 * @param sheet what it is cut from
 * @param slab where it lies, formed
 * @param rodAxisMm rod axis, x
 * @param rodAxisZMm rod axis, z
 * @param rodRadiusMm radius of the rod on its top face
 * @param curveFlangeMm drip flange depth on the curve (and on a free chord), outside
 * @param hingeFlangeMm drip flange depth on the hinge edge, outside
 * @param bend bend of every flange
 * @param hingeCorner corner of hinge edge and arc
 * @param freeCorner corner of free chord and arc, where there is a free chord
 * @param shrink shrinking of the curved flange
 * @param hingeRelief notch of the blank at the hinge corner
 * @param freeRelief notch of the blank at the free chord's corner, where there is one
 * @param reliefHoleMm diameter of the relief holes
 * @param balance mass and centre of gravity
 */
public record Leaf(int number, Sheet sheet, Slab slab, double rodAxisMm, double rodAxisZMm, double rodRadiusMm,
                   double curveFlangeMm, double hingeFlangeMm, Bend bend, Corner hingeCorner,
                   Optional<Corner> freeCorner, Shrink shrink, CornerRelief hingeRelief,
                   Optional<CornerRelief> freeRelief, double reliefHoleMm,
                   Balance balance) {
    /**
     * Where a leaf lies in plan: between two chords of the leaf circle, or one chord and the arc.
     *
     * @param hingeEdgeMm hinge flange's outside face, x
     * @param freeEdgeMm free chord's outside face, x; the leaf radius where the leaf ends in the arc
     * @param radiusMm leaf radius, outside of the formed curved flange
     */
    public record Slab(double hingeEdgeMm, double freeEdgeMm, double radiusMm) {
        /**
         * Whether the leaf ends in a chord, with another leaf beyond it.
         *
         * @return false for the outermost leaf
         */
        public boolean freeChord() {
            return freeEdgeMm < radiusMm;
        }

        /**
         * Azimuth of the corner at the hinge edge.
         *
         * @return radians
         */
        public double hingeAzimuthRad() {
            return Math.acos(hingeEdgeMm / radiusMm);
        }

        /**
         * Azimuth of the corner at the free chord.
         *
         * @return radians; 0 where the leaf ends in the arc
         */
        public double freeAzimuthRad() {
            return freeChord() ? Math.acos(freeEdgeMm / radiusMm) : 0;
        }

        /**
         * Angle of all its arcs together.
         *
         * @return radians
         */
        public double arcRad() {
            return 2 * (hingeAzimuthRad() - freeAzimuthRad());
        }
    }

    /**
     * Mass and centre of gravity of the formed leaf, without its rod.
     *
     * @param massKg mass
     * @param outboardMm centre of gravity from the rod axis, outboard
     * @param upMm centre of gravity from the rod axis, up (negative)
     */
    public record Balance(double massKg, double outboardMm, double upMm) {
    }

    /**
     * How far the lip stands out from the mould line: nothing for a flange bent square.
     *
     * @param depthMm flange depth
     * @return mm
     */
    public double lipOutMm(double depthMm) {
        return depthMm * Math.cos(bend.turnRad());
    }

    /**
     * How far the lip hangs below the top face.
     *
     * @param depthMm flange depth
     * @return mm
     */
    public double lipDownMm(double depthMm) {
        return depthMm * Math.sin(bend.turnRad());
    }

    /**
     * How far the lip's inner edge hangs below the top face: the sheet is cut square, so on a flange not bent square it is
     * the lower edge of the two.
     *
     * @param depthMm flange depth
     * @return mm
     */
    public double innerLipDownMm(double depthMm) {
        return lipDownMm(depthMm) + sheet.thicknessMm() * Math.cos(bend.turnRad());
    }

    /**
     * Length of the leaf from its rod axis to its free edge.
     *
     * @return mm
     */
    public double reachMm() {
        return slab.freeEdgeMm() - rodAxisMm;
    }

    /**
     * Crimps to mark, as many on each of its arcs.
     *
     * @return what its shrinking needs, or one more
     */
    public int crimps() {
        int needed = shrink.crimps();
        return slab.freeChord() ? needed + needed % 2 : needed;
    }

    /**
     * Hinge side of the blank, x: the mould line less flange depth and bend deduction.
     *
     * @return mm
     */
    public double blankHingeEdgeMm() {
        return slab.hingeEdgeMm() - (hingeFlangeMm - bend.deductionMm());
    }

    /**
     * Free-chord side of the blank, x; the blank's radius where the leaf ends in the arc.
     *
     * @return mm
     */
    public double blankFreeEdgeMm() {
        return slab.freeChord() ? slab.freeEdgeMm() + curveFlangeMm - bend.deductionMm() : shrink.blankRadiusMm();
    }

    /**
     * Length of the blank across the rods.
     *
     * @return mm
     */
    public double blankLengthMm() {
        double from = Math.min(blankHingeEdgeMm(), hingeRelief.curveLip().x());
        double to = freeRelief.map(relief -> Math.max(blankFreeEdgeMm(), relief.curveLip().x())).orElse(blankFreeEdgeMm());
        return to - from;
    }

    /**
     * Length of the blank along the rods.
     *
     * @return mm
     */
    public double blankWidthMm() {
        double curve = hingeRelief.curveLip().x() <= 0 ? shrink.blankRadiusMm() : hingeRelief.curveLip().y();
        return 2 * Math.max(curve, hingeRelief.chordLip().y());
    }

    /**
     * Middle of the hinge edge's bend on the blank, x.
     *
     * @return mm
     */
    public double hingeBendLineMm() {
        return slab.hingeEdgeMm() + bend.outsideSetbackMm() - bend.allowanceMm() / 2;
    }

    /**
     * Radius of the middle of the curved flange's bend on the blank.
     *
     * @return mm
     */
    public double curveBendRadiusMm() {
        return slab.radiusMm() - bend.outsideSetbackMm() + bend.allowanceMm() / 2;
    }

    /**
     * Height of the free edge above the rim at an opening: of the top face's outermost point, or of the lip where its flange is
     * not bent square and stands out beyond it.
     *
     * @param openRad opening
     * @return mm
     */
    public double tipHeightMm(double openRad) {
        double lip = lipOutMm(curveFlangeMm) * Math.sin(openRad) - lipDownMm(curveFlangeMm) * Math.cos(openRad);
        return rodAxisZMm + reachMm() * Math.sin(openRad) - rodRadiusMm * Math.cos(openRad) + Math.max(0, lip);
    }
}

package org.capwright.part;

import org.capwright.metal.Bend;

/** Mass and centre of gravity of a formed leaf, from its mid-surface: flat, bends and walls, in closed form. */
final class LeafBalance {
    private double area;
    private double momentX;
    private double momentDown;

    private LeafBalance() {
    }

    /**
     * The balance of a leaf. Flange strips end square at the corners of the mould lines.
     *
     * @param slab where it lies
     * @param bend bend of its flanges
     * @param curveFlangeMm depth on arc and free chord
     * @param hingeFlangeMm depth on the hinge edge
     * @param rodAxisMm rod axis, x
     * @param rodRadiusMm rod radius
     */
    static Leaf.Balance of(Sheet sheet, Leaf.Slab slab, Bend bend, double curveFlangeMm, double hingeFlangeMm,
                           double rodAxisMm, double rodRadiusMm) {
        LeafBalance sum = new LeafBalance();
        FlangeProfile curve = FlangeProfile.of(bend, curveFlangeMm);
        FlangeProfile hinge = FlangeProfile.of(bend, hingeFlangeMm);
        sum.flat(slab, curve.setbackMm());
        sum.arcs(slab, curve);
        sum.chord(slab.hingeEdgeMm() + hinge.setbackMm(), -1, chordMm(slab, slab.hingeEdgeMm()), hinge);
        if (slab.freeChord()) {
            sum.chord(slab.freeEdgeMm() - curve.setbackMm(), 1, chordMm(slab, slab.freeEdgeMm()), curve);
        }
        double middleUp = -(rodRadiusMm + sheet.thicknessMm() / 2);
        return new Leaf.Balance(sheet.massKg(sum.area), sum.momentX / sum.area - rodAxisMm,
                middleUp - sum.momentDown / sum.area);
    }

    private static double chordMm(Leaf.Slab slab, double xMm) {
        return 2 * Math.sqrt(slab.radiusMm() * slab.radiusMm() - xMm * xMm);
    }

    private void flat(Leaf.Slab slab, double setbackMm) {
        double radius = slab.radiusMm() - setbackMm;
        double from = slab.hingeEdgeMm() + setbackMm;
        double to = slab.freeChord() ? slab.freeEdgeMm() - setbackMm : radius;
        area += CircularStrip.areaMm2(radius, from, to);
        momentX += CircularStrip.momentMm3(radius, from, to);
    }

    private void arcs(Leaf.Slab slab, FlangeProfile profile) {
        double radius = slab.radiusMm() - profile.setbackMm();
        double cosines = 2 * (Math.sin(slab.hingeAzimuthRad()) - Math.sin(slab.freeAzimuthRad()));
        area += profile.revolvedAreaMm2(radius, slab.arcRad());
        momentX += cosines * profile.squaredRadiusMm3(radius);
        momentDown += slab.arcRad() * profile.radiusDownMm3(radius);
    }

    private void chord(double flatEndMm, int direction, double lengthMm, FlangeProfile profile) {
        area += lengthMm * profile.lengthMm();
        momentX += lengthMm * (flatEndMm * profile.lengthMm() + direction * profile.outMm2());
        momentDown += lengthMm * profile.downMm2();
    }
}

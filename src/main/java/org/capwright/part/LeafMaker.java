package org.capwright.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.LeafInputs;
import org.capwright.metal.Bend;
import org.capwright.units.Length;

/** Makes the leaves of a half from the slabs they fill. */
final class LeafMaker {
    /** Smallest relief hole a rule gives: a 1/8 in drill; common practice, no source. */
    private static final double LEAST_RELIEF_MM = Length.MM_PER_INCH / 8;

    private final CapJob job;
    private final Sheet sheet;
    private final double rodRadiusMm;
    private final double offsetMm;
    private final Bend bend;
    private final double curveFlangeMm;
    private final double hingeFlangeMm;

    LeafMaker(CapJob job, Sheet sheet, double rodRadiusMm, double offsetMm) {
        this.job = job;
        this.sheet = sheet;
        this.rodRadiusMm = rodRadiusMm;
        this.offsetMm = offsetMm;
        this.bend = BendRule.of(job, LeafInputs.BEND, sheet.thicknessMm()).bend(job.get(LeafInputs.FLANGE_ANGLE).rad());
        this.curveFlangeMm = job.get(LeafInputs.DRIP_FLANGE).mm();
        this.hingeFlangeMm = job.get(LeafInputs.HINGE_FLANGE).mm();
    }

    List<Leaf> leaves(List<Leaf.Slab> slabs) {
        List<Leaf> leaves = new ArrayList<>();
        for (Leaf.Slab slab : slabs) {
            leaves.add(leaf(leaves.size() + 1, slab));
        }
        return leaves;
    }

    private Leaf leaf(int number, Leaf.Slab slab) {
        double rodAxis = slab.hingeEdgeMm() + offsetMm;
        Corner hinge = Corner.atHinge(slab.radiusMm(), slab.hingeEdgeMm(), bend.turnRad());
        Optional<Corner> free = slab.freeChord()
                ? Optional.of(Corner.atFreeChord(slab.radiusMm(), slab.freeEdgeMm(), bend.turnRad())) : Optional.empty();
        Shrink shrink = Shrink.of(bend, slab.radiusMm(), curveFlangeMm, slab.arcRad(), new Shrink.Choice(
                job.get(LeafInputs.KAPPA), job.get(LeafInputs.TRIM).mm(), job.get(LeafInputs.PASSES),
                job.get(LeafInputs.BITE).mm()));
        double relief = job.find(LeafInputs.RELIEF_HOLE).map(Length::mm)
                .orElse(Math.max(2 * sheet.thicknessMm(), LEAST_RELIEF_MM));
        return new Leaf(number, sheet, slab, rodAxis, sheet.thicknessMm() + rodRadiusMm, rodRadiusMm, curveFlangeMm,
                hingeFlangeMm, bend, hinge, free, shrink, job.get(LeafInputs.CORNER_GAP).mm(), relief,
                LeafBalance.of(sheet, slab, bend, curveFlangeMm, hingeFlangeMm, rodAxis, rodRadiusMm));
    }
}

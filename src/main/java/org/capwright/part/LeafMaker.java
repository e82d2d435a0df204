package org.capwright.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.Input;
import org.capwright.job.JobInputs;
import org.capwright.job.LeafInputs;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.metal.Bend;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

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
        double radius = slab.radiusMm();
        double rodAxis = slab.hingeEdgeMm() + offsetMm;
        Corner hinge = Corner.atHinge(radius, slab.hingeEdgeMm(), bend.turnRad());
        Optional<Corner> free = slab.freeChord()
                ? Optional.of(Corner.atFreeChord(radius, slab.freeEdgeMm(), bend.turnRad())) : Optional.empty();
        Shrink shrink = Shrink.of(bend, radius, curveFlangeMm, slab.arcRad(), new Shrink.Choice(job.get(LeafInputs.KAPPA),
                job.get(LeafInputs.TRIM).mm(), job.get(LeafInputs.PASSES), job.get(LeafInputs.BITE).mm()));
        double gap = job.get(LeafInputs.CORNER_GAP).mm();
        CornerEnds hingeEnds = CornerEnds.of(hinge, -1, radius, bend, gap);
        Optional<CornerEnds> freeEnds = free.map(corner -> CornerEnds.of(corner, 1, radius, bend, gap));
        double hole = reliefHoleMm(Math.max(hingeEnds.leastHoleMm(), freeEnds.map(CornerEnds::leastHoleMm).orElse(0.0)));
        double blank = shrink.blankRadiusMm();
        refuseShallow(LeafInputs.HINGE_FLANGE, hole, hingeFlangeMm);
        refuseShallow(LeafInputs.DRIP_FLANGE, hole, blank - radius + bend.deductionMm());
        return new Leaf(number, sheet, slab, rodAxis, sheet.thicknessMm() + rodRadiusMm, rodRadiusMm, curveFlangeMm,
                hingeFlangeMm, bend, hinge, free, shrink,
                CornerRelief.of(hingeEnds, hole, slab.hingeEdgeMm() - hingeFlangeMm + bend.deductionMm(), blank),
                freeEnds.map(ends -> CornerRelief.of(ends, hole, slab.freeEdgeMm() + curveFlangeMm - bend.deductionMm(), blank)),
                hole, LeafBalance.of(sheet, slab, bend, curveFlangeMm, hingeFlangeMm, rodAxis, rodRadiusMm));
    }

    /** The flat of a flange must reach past the relief holes at its ends; the depth counts as it lies, trimmed to the blank. */
    private void refuseShallow(Input<Length> flange, double holeMm, double depthMm) {
        double lacking = holeMm / 2 - (depthMm - bend.outsideSetbackMm() + bend.allowanceMm() / 2);
        if (lacking >= 0) {
            String least = roundedUp(job.get(flange).mm() + lacking);
            throw refused(flange, "must be over " + least + " to reach past the relief holes of " + roundedUp(holeMm),
                    "Deepen the flange, or make inside radius or relief hole smaller");
        }
    }

    /** Auto: twice the thickness, a 1/8 in drill at least, and large enough to reach both flanges' ends. */
    private double reliefHoleMm(double leastMm) {
        Optional<Length> typed = job.find(LeafInputs.RELIEF_HOLE);
        if (typed.isPresent() && typed.get().mm() < leastMm) {
            String least = roundedUp(leastMm);
            throw refused(LeafInputs.RELIEF_HOLE, "must be at least " + least + " to reach the ends of both flanges",
                    "Type " + least + " or more, or auto");
        }
        return typed.map(Length::mm).orElse(Math.max(Math.max(2 * sheet.thicknessMm(), LEAST_RELIEF_MM), leastMm));
    }

    /** Rounded up in the last place printed, so that it would not be refused if typed. */
    private String roundedUp(double mm) {
        double step = job.get(JobInputs.UNITS) == UnitSystem.INCH ? Length.MM_PER_INCH / 1e4 : 0.01;
        return new ShopFormat(job.get(JobInputs.UNITS), 64).thickness(Length.ofMm(Math.ceil(mm / step - 1e-6) * step));
    }

    private RefusedJobException refused(Input<Length> input, String reason, String remedy) {
        String typed = job.text().at(input.path()).or(input::fallback).orElse("");
        return new RefusedJobException(List.of(new Problem(input.path(), typed, reason, remedy)));
    }
}

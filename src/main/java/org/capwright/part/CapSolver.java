package org.capwright.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.GutterInputs;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.JobInputs;
import org.capwright.job.LeafInputs;
import org.capwright.job.RodInputs;
import org.capwright.job.SleeveInputs;
import org.capwright.job.StackInputs;
import org.capwright.job.StopInputs;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.UnitSystem;

/** Resolves what the parts share, in the order of the work, and hands each part what it needs. */
final class CapSolver {
    /** What an auto hood stands over the open leaves' tips; common practice, no source. */
    private static final double TIP_COVER_MM = Length.MM_PER_INCH / 4;

    private final CapJob job;
    private final UnitSystem units;
    private final Sheet leafSheet;
    private final double sleeveInsideMm;
    private final double sleeveOutsideMm;
    private final double hoodInsideMm;
    private final double hoodOutsideMm;
    private final double leafRadiusMm;
    private final double rodRadiusMm;
    private final double offsetMm;
    private final double gapMm;

    CapSolver(CapJob job) {
        this.job = job;
        this.units = job.get(JobInputs.UNITS);
        this.leafSheet = Sheet.of(job, LeafInputs.SHEET);
        this.sleeveInsideMm = (mm(StackInputs.OUTSIDE_DIAMETER) + mm(StackInputs.SLIP)) / 2;
        this.sleeveOutsideMm = sleeveInsideMm + Sheet.of(job, SleeveInputs.SHEET).thicknessMm();
        this.hoodInsideMm = sleeveOutsideMm + mm(HoodInputs.ANNULUS);
        this.hoodOutsideMm = hoodInsideMm + Sheet.of(job, HoodInputs.SHEET).thicknessMm();
        this.leafRadiusMm = sleeveOutsideMm + mm(LeafInputs.COVER) + leafSheet.thicknessMm();
        this.rodRadiusMm = mm(RodInputs.DIAMETER) / 2;
        this.offsetMm = auto(RodInputs.OFFSET, rodRadiusMm);
        this.gapMm = mm(LeafInputs.GAP);
    }

    Cap solve() {
        List<Double> joints = LeafSlabs.joints(job, leafRadiusMm, offsetMm);
        List<Leaf> leaves = new LeafMaker(job, leafSheet, rodRadiusMm, offsetMm)
                .leaves(LeafSlabs.between(joints, leafRadiusMm, gapMm));
        double hoodTopMm = auto(HoodInputs.ABOVE_RIM, hoodAboveRimMm(leaves));
        double stopRad = stopRad(leaves.get(0), hoodTopMm);
        HeelSweep heel = HeelSweep.of(offsetMm, rodRadiusMm, mm(LeafInputs.HINGE_FLANGE), leafSheet.thicknessMm(),
                job.get(LeafInputs.FLANGE_ANGLE).rad());
        List<Gutter> gutters = gutters(joints, leaves, heel, stopRad);
        List<StopBar> stops = stops(joints, leaves.get(0), hoodTopMm, stopRad);
        RodSet rodSet = new RodSet(job, hoodInsideMm, hoodOutsideMm);
        List<Doubler> doublers = rodSet.doublers(leaves);
        CylinderSet cylinders = new CylinderSet(job, sleeveInsideMm, hoodInsideMm, hoodTopMm, leaves.get(0).rodAxisZMm(), gutters,
                doublers);
        return new Cap(job, stopRad, joints, cylinders.sleeve(), cylinders.hood(), leaves, rodSet.rods(leaves, doublers),
                rodSet.bushings(doublers, leaves), rodSet.washer(), doublers, gutters, stops, cylinders.standoff());
    }

    /**
     * Auto: the tips of the open leaves covered. Where the bar's width is typed, the opening follows from the hood's height,
     * so the hood covers the tips at any opening.
     */
    private double hoodAboveRimMm(List<Leaf> leaves) {
        boolean widthTyped = job.find(StopInputs.WIDTH).isPresent();
        double openRad = widthTyped ? Math.PI / 2 : job.get(StopInputs.OPEN_ANGLE).rad();
        double tip = leaves.stream().mapToDouble(leaf -> leaf.tipHeightMm(openRad)).max().orElseThrow();
        return ShopStep.roundUpMm(tip + TIP_COVER_MM, units);
    }

    private double stopRad(Leaf leaf, double hoodTopMm) {
        Optional<Double> half = job.find(StopInputs.WIDTH).map(width -> width.mm() / 2);
        return half.map(b -> StopBar.openRad(leaf.rodAxisMm(), leaf.rodAxisZMm(), rodRadiusMm,
                hoodTopMm - mm(StopInputs.DEPTH), b)).orElseGet(() -> job.find(StopInputs.OPEN_ANGLE).map(Angle::rad).orElseThrow());
    }

    private List<Gutter> gutters(List<Double> joints, List<Leaf> leaves, HeelSweep heel, double stopRad) {
        Sheet sheet = Sheet.of(job, GutterInputs.SHEET);
        BendRule bend = BendRule.of(job, GutterInputs.BEND, sheet.thicknessMm());
        double clearance = mm(GutterInputs.CLEARANCE);
        double width = auto(GutterInputs.INSIDE_WIDTH, ShopStep.roundUpMm(
                2 * (gapMm / 2 + offsetMm + heel.farthest(stopRad).mm() + clearance), units));
        List<Gutter> gutters = new ArrayList<>();
        for (int i = 0; i < joints.size(); i++) {
            double deepest = Math.max(heel.deepest(stopRad).mm(), i == 0 ? 0 : freeLipDepthMm(leaves.get(i - 1)));
            double depth = auto(GutterInputs.DEPTH, ShopStep.roundUpMm(deepest + clearance, units));
            gutters.add(new Gutter(i + 1, sheet, joints.get(i), width, depth, sleeveOutsideMm + mm(GutterInputs.SPOUT), bend));
        }
        return gutters;
    }

    /** How far the flange of a free chord hangs below the rim while the leaf is closed. */
    private static double freeLipDepthMm(Leaf leaf) {
        return leaf.innerLipDownMm(leaf.curveFlangeMm()) - leaf.sheet().thicknessMm();
    }

    private List<StopBar> stops(List<Double> joints, Leaf leaf, double hoodTopMm, double stopRad) {
        Sheet sheet = Sheet.of(job, StopInputs.SHEET);
        BendRule bend = BendRule.of(job, StopInputs.BEND, sheet.thicknessMm());
        double cornerZ = hoodTopMm - mm(StopInputs.DEPTH);
        double half = auto(StopInputs.WIDTH, 2 * StopBar.halfWidthMm(gapMm / 2 + offsetMm, leaf.rodAxisZMm(), rodRadiusMm,
                cornerZ, stopRad)) / 2;
        List<StopBar> bars = new ArrayList<>();
        for (int i = 0; i < joints.size(); i++) {
            bars.add(new StopBar(i + 1, sheet, joints.get(i), half, mm(StopInputs.DEPTH), cornerZ,
                    hoodInsideMm - mm(StopInputs.END_GAP), bend));
        }
        return bars;
    }

    private double mm(Input<Length> input) {
        return job.get(input).mm();
    }

    private double auto(Input<Length> input, double byRuleMm) {
        return job.find(input).map(Length::mm).orElse(byRuleMm);
    }
}

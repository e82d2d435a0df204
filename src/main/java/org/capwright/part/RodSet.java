package org.capwright.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.Input;
import org.capwright.job.RodInputs;
import org.capwright.metal.BushingTable;
import org.capwright.units.Length;

/** Makes rods, bushings, washers and doubler plates. */
final class RodSet {
    /** Wall of a bushing whose bore is not in the table; common practice, no source. */
    private static final double WALL_MM = Length.MM_PER_INCH / 16;

    private final CapJob job;
    private final double hoodInsideMm;
    private final double hoodOutsideMm;
    private final double boreMm;
    private final double outsideMm;
    private final double flangeOutsideMm;
    private final double flangeMm;

    RodSet(CapJob job, double hoodInsideMm, double hoodOutsideMm) {
        this.job = job;
        this.hoodInsideMm = hoodInsideMm;
        this.hoodOutsideMm = hoodOutsideMm;
        this.boreMm = auto(RodInputs.BUSHING_BORE, mm(RodInputs.DIAMETER));
        Optional<BushingTable.Row> row = BushingTable.forBore(Length.ofMm(boreMm));
        this.outsideMm = auto(RodInputs.BUSHING_OUTSIDE,
                row.map(r -> r.outside().mm()).orElse(boreMm + 2 * WALL_MM));
        this.flangeOutsideMm = auto(RodInputs.BUSHING_FLANGE_OUTSIDE,
                row.map(r -> r.flangeOutside().mm()).orElse(boreMm + 6 * WALL_MM));
        this.flangeMm = auto(RodInputs.BUSHING_FLANGE_THICKNESS,
                row.map(r -> r.flangeThickness().mm()).orElse(2 * WALL_MM));
    }

    /** A plate for each joint: round both rods of the middle pair, round the single rod elsewhere. */
    List<Doubler> doublers(List<Leaf> leaves) {
        List<Doubler> plates = new ArrayList<>();
        double beyond = flangeOutsideMm / 2 + mm(RodInputs.DOUBLER_MARGIN);
        for (Leaf leaf : leaves) {
            double axis = leaf.rodAxisMm();
            boolean pair = leaf.number() == 1;
            double from = pair ? -axis - beyond : axis - beyond;
            List<Double> bores = pair ? List.of(-axis, axis) : List.of(axis);
            plates.add(new Doubler(leaf.number(), job.get(RodInputs.DOUBLER_METAL), mm(RodInputs.DOUBLER_THICKNESS),
                    mm(RodInputs.DOUBLER_HEIGHT), from, axis + beyond, bores, outsideMm,
                    Doubler.faceYMm(from, axis + beyond, hoodOutsideMm), hoodOutsideMm));
        }
        return plates;
    }

    List<PivotRod> rods(List<Leaf> leaves, List<Doubler> doublers) {
        List<PivotRod> rods = new ArrayList<>();
        for (Leaf leaf : leaves) {
            double length = PivotRod.lengthMm(doublers.get(leaf.number() - 1).faceYMm(), mm(RodInputs.DOUBLER_THICKNESS),
                    flangeMm, mm(RodInputs.END_PLAY), mm(RodInputs.WASHER_THICKNESS));
            rods.add(new PivotRod(leaf.number(), job.get(RodInputs.METAL), mm(RodInputs.DIAMETER), leaf.rodAxisMm(),
                    leaf.rodAxisZMm(), length));
        }
        return rods;
    }

    /**
     * Bushings by joint, alike but for their length: one that is typed serves all joints, auto reaches at each joint flush with
     * the hood's inside where plate and hood are farthest apart.
     */
    List<Bushing> bushings(List<Doubler> doublers, List<Leaf> leaves) {
        List<Bushing> bushings = new ArrayList<>();
        for (Leaf leaf : leaves) {
            Doubler plate = doublers.get(leaf.number() - 1);
            double far = Math.min(hoodInsideMm, leaf.rodAxisMm() + outsideMm / 2);
            double inside = Math.sqrt(hoodInsideMm * hoodInsideMm - far * far);
            bushings.add(new Bushing(boreMm, outsideMm, flangeOutsideMm, flangeMm,
                    auto(RodInputs.BUSHING_LENGTH, plate.faceYMm() + plate.thicknessMm() - inside)));
        }
        return bushings;
    }

    Washer washer() {
        double rod = mm(RodInputs.DIAMETER);
        return new Washer(job.get(RodInputs.METAL), auto(RodInputs.WASHER_OUTSIDE, 2 * rod), rod,
                mm(RodInputs.WASHER_THICKNESS));
    }

    private double mm(Input<Length> input) {
        return job.get(input).mm();
    }

    private double auto(Input<Length> input, double byRuleMm) {
        return job.find(input).map(Length::mm).orElse(byRuleMm);
    }
}

package org.capwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.metal.GaugeTable;
import org.capwright.metal.Metal;
import org.capwright.units.Length;

/** What must hold between inputs that are each in range. */
final class JobRules {
    private final CapJob job;
    private final List<Problem> problems = new ArrayList<>();

    private JobRules(CapJob job) {
        this.job = job;
    }

    /** Every rule that the job breaks. */
    static List<Problem> problems(CapJob job) {
        JobRules rules = new JobRules(job);
        rules.duty();
        List.of(SleeveInputs.SHEET, HoodInputs.SHEET, LeafInputs.SHEET, GutterInputs.SHEET, StopInputs.SHEET,
                StandoffInputs.SHEET).forEach(rules::thickness);
        List.of(LeafInputs.BEND, GutterInputs.BEND, StopInputs.BEND, StandoffInputs.BEND).forEach(rules::measuredBend);
        rules.stopBead();
        rules.hoodBeads();
        rules.fastenerHoles();
        rules.standoffs();
        rules.bushings();
        rules.joints();
        rules.problems.addAll(FitRules.problems(job));
        return rules.problems;
    }

    private void duty() {
        if (job.get(AirInputs.DUTY) == AirInputs.Duty.GREASE) {
            refuse(AirInputs.DUTY, "dampers have no place over grease-laden exhaust (fire rules such as NFPA 96): a leaf that"
                    + " sticks or burns traps the fire", "Use an upblast fan or an open stack head approved for cooking exhaust");
        }
    }

    private void thickness(SheetInputs sheet) {
        if (job.find(sheet.thickness()).isPresent()) {
            return;
        }
        Metal metal = job.get(sheet.metal());
        Optional<GaugeTable> table = GaugeTable.of(metal);
        int gauge = job.get(sheet.gauge());
        if (table.isEmpty()) {
            refuse(sheet.thickness(), "there is no gauge table for " + metal.word() + " sheet", "Type the measured thickness");
        } else if (table.get().thickness(gauge).isEmpty()) {
            refuse(sheet.gauge(), "the table for " + metal.word() + " has no such gauge", "Type the measured thickness");
        }
    }

    private void measuredBend(BendInputs bend) {
        if (job.get(bend.method()) == BendMethod.MEASURED && job.find(bend.deduction()).isEmpty()) {
            refuse(bend.deduction(), "the measured method needs the deduction of a test piece", "Type it, such as \"0.076 in\"");
        }
    }

    private void stopBead() {
        if (job.get(SleeveInputs.STOP_BEAD) == SleeveInputs.Presence.NONE) {
            return;
        }
        halfRound(SleeveInputs.STOP_BEAD_DEPTH, SleeveInputs.STOP_BEAD_WIDTH);
        double top = job.find(SleeveInputs.STOP_BEAD_FROM_FOOT).map(Length::mm).orElse(0.0)
                + mm(SleeveInputs.STOP_BEAD_WIDTH) / 2;
        if (top > mm(SleeveInputs.HEIGHT)) {
            refuse(SleeveInputs.STOP_BEAD_FROM_FOOT, "the bead must lie within the sleeve's height of "
                    + typed(SleeveInputs.HEIGHT), "Lower the bead or raise the sleeve");
        }
    }

    private void hoodBeads() {
        for (int i = 0; i < job.text().listSize(HoodInputs.BEADS); i++) {
            halfRound(HoodInputs.BEAD_DEPTH.at(i), HoodInputs.BEAD_WIDTH.at(i));
            Input<Length> fromTop = HoodInputs.BEAD_FROM_TOP.at(i);
            double foot = mm(fromTop) + mm(HoodInputs.BEAD_WIDTH.at(i)) / 2;
            Optional<Length> above = job.find(HoodInputs.ABOVE_RIM);
            if (above.isPresent() && foot > above.get().mm() + mm(HoodInputs.BELOW_RIM)) {
                refuse(fromTop, "the bead must lie within the hood's height", "Raise the bead or lengthen the hood");
            }
        }
    }

    private void halfRound(Input<Length> depth, Input<Length> width) {
        if (mm(depth) > mm(width) / 2) {
            refuse(depth, "a bead's depth must be at most half its width of " + typed(width), "Make it shallower or wider");
        }
    }

    private void fastenerHoles() {
        if (job.get(SleeveInputs.HOLE_COUNT) > 0 && mm(SleeveInputs.HOLE_FROM_FOOT) >= mm(SleeveInputs.HEIGHT)) {
            refuse(SleeveInputs.HOLE_FROM_FOOT, "the holes must lie within the sleeve's height of "
                    + typed(SleeveInputs.HEIGHT), "Lower the holes or raise the sleeve");
        }
    }

    private void standoffs() {
        double boreMm = mm(StackInputs.OUTSIDE_DIAMETER);
        for (Input<Length> flange : List.of(StandoffInputs.INNER_FLANGE, StandoffInputs.OUTER_FLANGE)) {
            if (mm(flange) > boreMm / 2) {
                refuse(flange, "a flange must be at most half the stack's diameter of "
                        + typed(StackInputs.OUTSIDE_DIAMETER), "Make it narrower");
            }
        }
    }

    private void bushings() {
        job.find(RodInputs.BUSHING_BORE).filter(bore -> bore.mm() < mm(RodInputs.DIAMETER)).ifPresent(bore ->
                refuse(RodInputs.BUSHING_BORE, "the bore must take the rod of " + typed(RodInputs.DIAMETER),
                        "Take a wider bushing or a thinner rod"));
    }

    private void joints() {
        Optional<Length> first = job.find(LeafInputs.FIRST_JOINT);
        Optional<Length> second = job.find(LeafInputs.SECOND_JOINT);
        if (job.get(LeafInputs.COUNT) == 6 && first.isPresent() != second.isPresent()) {
            refuse(first.isPresent() ? LeafInputs.SECOND_JOINT : LeafInputs.FIRST_JOINT,
                    "with six leaves both joints are typed, or neither", "Type both, or leave both to auto");
        }
        if (job.get(LeafInputs.COUNT) == 6 && first.isPresent() && second.isPresent()
                && second.get().mm() <= first.get().mm()) {
            refuse(LeafInputs.SECOND_JOINT, "the second joint must be farther out than the first at "
                    + typed(LeafInputs.FIRST_JOINT), "Move it outwards");
        }
    }

    private double mm(Input<Length> input) {
        return job.get(input).mm();
    }

    private String typed(Input<?> input) {
        return job.text().at(input.path()).or(input::fallback).orElse("");
    }

    private void refuse(Input<?> input, String reason, String remedy) {
        problems.add(new Problem(input.path(), typed(input), reason, remedy));
    }
}

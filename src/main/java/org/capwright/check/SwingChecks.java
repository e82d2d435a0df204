package org.capwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.Input;
import org.capwright.job.LimitInputs;
import org.capwright.part.Cap;
import org.capwright.swing.Clearance;
import org.capwright.swing.Pair;
import org.capwright.swing.StopContact;
import org.capwright.swing.Swing;
import org.capwright.units.Angle;
import org.capwright.units.Length;

/** Checks of the swing: does anything touch, does the stop catch the leaf, does the hood cover it. */
final class SwingChecks {
    /** What a clearance must have beyond its limit to be clear: what a good shop holds; common practice, no source. */
    static final double BAND_MM = Length.MM_PER_INCH / 64;
    private static final String COMMON = "common practice, no source";

    private final CapJob job;

    private SwingChecks(CapJob job) {
        this.job = job;
    }

    static List<Check> of(Cap cap, Swing swing) {
        SwingChecks checks = new SwingChecks(cap.job());
        List<Check> all = new ArrayList<>();
        for (Pair pair : Pair.values()) {
            for (int number = 1; number <= cap.leaves().size(); number++) {
                checks.clearance(swing, pair, number).ifPresent(all::add);
            }
        }
        all.add(checks.angle(cap.stopRad()));
        swing.stops().forEach(stop -> all.add(checks.contact(stop)));
        double over = cap.hood().aboveRimMm() - swing.tipHeightMm();
        all.add(Check.of("hood.tips", "hood over the open leaves' tips", Quantity.LENGTH, over,
                Limit.atLeast(checks.mm(LimitInputs.TIP_COVER), BAND_MM, COMMON)));
        return all;
    }

    private Optional<Check> clearance(Swing swing, Pair pair, int number) {
        boolean there = swing.clearances().stream().anyMatch(one -> one.pair() == pair && one.number() == number);
        return there ? Optional.of(check(swing.least(pair, number))) : Optional.empty();
    }

    private Check check(Clearance clearance) {
        String[] id = clearance.pair().word().split("\\.");
        Limit limit = Limit.atLeast(mm(limitOf(clearance.pair())), BAND_MM, COMMON);
        String[] words = clearance.pair().words().split(" ", 2);
        String name = clearance.pair() == Pair.FLANGE_SPOUT || clearance.pair() == Pair.LIP_STANDOFF
                ? clearance.pair().words() + ", leaf " + clearance.number() : words[0] + " " + clearance.number() + " " + words[1];
        return new Check(id[0] + "." + clearance.number() + "." + id[1], name, Quantity.LENGTH, clearance.leastMm(), limit,
                Optional.of(new Check.Place(clearance.where(), clearance.openRad())), false);
    }

    private static Input<Length> limitOf(Pair pair) {
        return switch (pair) {
            case LEAF_HOOD -> LimitInputs.LEAF_HOOD;
            case HEEL_WALL, HEEL_FLOOR -> LimitInputs.HEEL;
            case LIP_STANDOFF -> LimitInputs.LIP_STANDOFF;
            case FLANGE_SPOUT -> LimitInputs.FLANGE_SPOUT;
            case LEAF_SLEEVE, LEAF_LEAF, LEAF_NEXT, LEAF_BAR, LEAF_BUSHING -> LimitInputs.OTHER;
        };
    }

    /** The limit that is nearer counts. */
    private Check angle(double stopRad) {
        double least = rad(LimitInputs.STOP_LEAST);
        double most = rad(LimitInputs.STOP_MOST);
        boolean low = stopRad - least < most - stopRad;
        Limit limit = low ? Limit.atLeast(least, 0, COMMON) : Limit.atMost(most, 0, "under upright so that leaves fall shut: common practice, no source");
        return Check.of("stop.angle", "opening at the stop", Quantity.ANGLE, stopRad, limit);
    }

    private Check contact(StopContact stop) {
        return new Check("stop." + stop.number() + ".contact", "leaf " + stop.number() + " beyond its stop's contact", Quantity.LENGTH,
                stop.marginMm(), Limit.atLeast(mm(LimitInputs.CONTACT), BAND_MM, COMMON),
                Optional.of(new Check.Place(stop.where(), stop.openRad())), false);
    }

    private double mm(Input<Length> input) {
        return job.get(input).mm();
    }

    private double rad(Input<Angle> input) {
        return job.get(input).rad();
    }
}

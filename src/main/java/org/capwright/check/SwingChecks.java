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
                Limit.atLeast(checks.mm(LimitInputs.TIP_COVER), SwingLimits.BAND_MM, COMMON)));
        return all;
    }

    private Optional<Check> clearance(Swing swing, Pair pair, int number) {
        boolean there = swing.clearances().stream().anyMatch(one -> one.pair() == pair && one.number() == number);
        return there ? Optional.of(check(swing.least(pair, number))) : Optional.empty();
    }

    private Check check(Clearance clearance) {
        Pair pair = clearance.pair();
        return new Check(SwingLimits.id(pair, clearance.number()), SwingLimits.words(pair, clearance.number()), Quantity.LENGTH,
                clearance.leastMm(), SwingLimits.of(job, pair),
                Optional.of(new Check.Place(clearance.where(), clearance.openRad())), false);
    }

    /** The limit that is nearer counts. */
    private Check angle(double stopRad) {
        double least = rad(LimitInputs.STOP_LEAST);
        double most = rad(LimitInputs.STOP_MOST);
        boolean low = stopRad - least < most - stopRad;
        Limit limit = low ? Limit.atLeast(least, 0, COMMON) : Limit.atMost(most, 0,
                "under upright so that leaves fall shut: common practice, no source");
        return Check.of("stop.angle", "opening at the stop", Quantity.ANGLE, stopRad, limit);
    }

    private Check contact(StopContact stop) {
        return new Check("stop." + stop.number() + ".contact", "leaf " + stop.number() + " beyond its stop's contact",
                Quantity.LENGTH,
                stop.marginMm(), Limit.atLeast(mm(LimitInputs.CONTACT), SwingLimits.BAND_MM, COMMON),
                Optional.of(new Check.Place(stop.where(), stop.openRad())), false);
    }

    private double mm(Input<Length> input) {
        return job.get(input).mm();
    }

    private double rad(Input<Angle> input) {
        return job.get(input).rad();
    }
}

package org.capwright.check;

import java.util.ArrayList;
import java.util.List;
import org.capwright.air.Air;
import org.capwright.air.LeafAir;
import org.capwright.air.RodBending;
import org.capwright.job.AirInputs;
import org.capwright.job.CapJob;
import org.capwright.job.LimitInputs;
import org.capwright.part.Cap;
import org.capwright.units.Length;

/** Checks of the air and of what it carries: lift, float, closing, free area, rods, bushings. All but the rods' are estimates. */
final class AirChecks {
    private static final String COMMON = "common practice, no source";
    /** An estimate within a tenth of its limit is no comfort. */
    private static final double TENTH = 0.1;

    private final Cap cap;
    private final CapJob job;
    private final List<Check> checks = new ArrayList<>();

    private AirChecks(Cap cap) {
        this.cap = cap;
        this.job = cap.job();
    }

    static List<Check> of(Cap cap, Air air) {
        AirChecks checks = new AirChecks(cap);
        for (LeafAir leaf : air.leaves()) {
            checks.leaf(leaf);
        }
        double free = air.freeAreaMm2() / air.boreAreaMm2();
        checks.checks.add(Check.of("free.area", "free area, share of the bore", Quantity.RATIO, free,
                Limit.atLeast(checks.job.get(LimitInputs.FREE_AREA), 0, COMMON)));
        air.rods().forEach(checks::rod);
        double kelvin = checks.job.get(AirInputs.TEMPERATURE).kelvin();
        checks.checks.add(Check.estimate("bushing.heat", "temperature at the bushings", Quantity.TEMPERATURE, kelvin,
                Limit.atMost(checks.job.get(LimitInputs.BUSHING).kelvin(), 0,
                "oil-bronze, one bearing handbook: ask the maker of the part in hand")));
        return checks.checks;
    }

    private void leaf(LeafAir leaf) {
        int n = leaf.number();
        leaf.closing().ratio().ifPresent(ratio -> {
            double least = job.get(LimitInputs.CLOSING_RATIO);
            checks.add(Check.estimate("closing." + n + ".ratio", "closing moment of leaf " + n + " over friction", Quantity.RATIO,
                    ratio,
                    Limit.atLeast(least, least * TENTH, COMMON)));
        });
        double fan = job.get(AirInputs.SHUT_OFF_PRESSURE).pa();
        checks.add(Check.estimate("lift." + n, "lift pressure of leaf " + n, Quantity.PRESSURE, leaf.liftPressurePa(),
                Limit.atMost(fan, fan * TENTH, "the fan's pressure at no flow")));
        checks.add(floating(leaf));
    }

    /** Foul where even the upper bound falls short; tight where only the lower one does. */
    private Check floating(LeafAir leaf) {
        boolean spray = job.get(AirInputs.DUTY) == AirInputs.Duty.SPRAY_BOOTH;
        double wanted = spray ? cap.stopRad() : job.get(LimitInputs.FLOAT).rad();
        String source = spray ? "dampers of spray booths stand fully open while ventilating: 29 CFR 1910.107(d)(7), NFPA 33"
                : COMMON;
        double lower = leaf.band().drag().openRad();
        double upper = leaf.band().jet().openRad();
        return Check.estimate("float." + leaf.number(), "leaf " + leaf.number() + " floats at the design flow, upper bound",
                Quantity.ANGLE,
                upper, Limit.atLeast(wanted, Math.max(0, upper - lower), source));
    }

    private void rod(RodBending rod) {
        Limit sag = Limit.atMost(job.get(LimitInputs.SAG).mm(), Length.MM_PER_INCH / 256, COMMON);
        checks.add(Check.of("rod." + rod.number() + ".sag", "sag of rod " + rod.number(), Quantity.LENGTH, rod.sagM() * 1e3,
                sag));
        Limit stress = Limit.atMost(job.get(LimitInputs.STRESS), 0, "about 0.6 of the yield of annealed 304, from memory");
        checks.add(Check.of("rod." + rod.number() + ".stress", "bending stress of rod " + rod.number(), Quantity.STRESS,
                rod.stressPa() * 1e-6, stress));
    }
}

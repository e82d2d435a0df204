package org.capwright.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.capwright.part.Cap;
import org.junit.jupiter.api.Test;

/** Rod bending against the beam's own equation, blockage against the momentum balance it stands for. */
class BendingAndBlockageTest {
    /** {@code E I y'' = M(x) = w x (L - x) / 2}, summed twice from the supports. */
    @Test
    void sagAgainstTheBeamEquation() {
        double load = 24;
        double span = 0.566;
        double stiffness = 193e9 * 1.277e-9;
        int n = 20000;
        double dx = span / n;
        double slope = -load * Math.pow(span, 3) / 24 / stiffness;
        double sag = 0;
        for (int i = 0; i < n / 2; i++) {
            double x = (i + 0.5) * dx;
            double bend = load * x * (span - x) / 2 / stiffness * dx;
            sag += (slope + bend / 2) * dx;
            slope += bend;
        }
        assertThat(slope).as("level in the middle").isCloseTo(0, within(1e-9));
        assertThat(RodBending.sagM(load, span, 193e9, 1.277e-9)).isCloseTo(-sag, within(1e-11));
    }

    /**
     * The kiln's rod worked by hand in inches and pounds from the beam table (Machinery's Handbook: {@code 5 w L^4 / (384 E I)},
     * {@code w L^2 / 8 / Z}), bar at .29 lb/in3 and E 28e6 psi, both from memory.
     */
    @Test
    void rodOfTheKiln() {
        Cap cap = Kiln.cap(Map.of());
        RodBending rod = Air.of(cap).rods().get(0);
        double span = 2 * 11.1477;
        double pounds = cap.leaves().get(0).balance().massKg() / 0.45359237;
        double load = pounds / span + .29 * Math.PI / 4 * .25;
        assertThat(rod.spanMm() / 25.4).isCloseTo(span, within(0.0001));
        double sag = 5 * load * Math.pow(span, 4) / (384 * 28e6 * Math.PI * Math.pow(.5, 4) / 64);
        assertThat(rod.sagM() / 0.0254).isCloseTo(sag, within(1e-6)).isCloseTo(0.00513, within(0.00001));
        double psi = load * span * span / 8 / (Math.PI * Math.pow(.5, 3) / 32);
        assertThat(rod.stressPa() / 6894.757).isCloseTo(psi, within(0.05)).isCloseTo(694, within(0.5));
    }

    @Test
    void eachRodHasItsOwnSpan() {
        Cap cap = Kiln.cap(Map.of("stack.outsideDiameter", "36 in", "leaves.count", "4"));
        Air air = Air.of(cap);
        assertThat(air.rods()).extracting(RodBending::number).containsExactly(1, 2);
        assertThat(air.rods().get(1).spanMm()).isLessThan(air.rods().get(0).spanMm());
    }

    /** Momentum over the widening gives {@code rho V (V_f - V)} of pressure back; without loss it would be {@code rho (V_f^2 - V^2) / 2}. */
    @Test
    void lossIsWhatMomentumLeavesOfBernoulli() {
        Air air = Air.of(Kiln.cap(Map.of()));
        double rho = air.densityKgPerM3();
        double v = air.velocityMPerS();
        double throughGap = v * air.boreAreaMm2() / air.freeAreaMm2();
        double gainedBack = rho * v * (throughGap - v);
        double withoutLoss = rho * (throughGap * throughGap - v * v) / 2;
        assertThat(air.blockageLossPa()).isCloseTo(withoutLoss - gainedBack, within(1e-9)).isPositive();
    }
}

package org.capwright.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The search against a plain walk over the swing: the leaf rests at the first opening that holds it. */
class FloatSearchTest {
    private static final int STEPS = 2000;

    @Test
    void restsAtTheFirstOpeningThatHoldsIt() {
        Random random = new Random(7);
        int[] seen = new int[3];
        for (int i = 0; i < 3000; i++) {
            Case one = Case.random(random);
            FloatAngle found = new FloatSearch(one.closing, one.bore, one.stopRad).at(one.pressurePa);
            one.check(found, "seed 7, case " + i);
            seen[found.rest().ordinal()]++;
        }
        assertThat(seen).as("shut, floating, at the stop").doesNotContain(0);
    }

    /** A flow that just lifts the leaf holds it where its weight's arm is a little longer, a few degrees up. */
    @Test
    void justLiftedItHangsAFewDegreesUp() {
        LeafBore bore = new LeafBore(230, 26, 230, 12.7, 232);
        ClosingMoment closing = new ClosingMoment(8, 96, -7.5);
        double greatest = closing.greatestNm() / (bore.wholeMm3() * 1e-9);
        double level = Math.atan2(7.5, 96);
        FloatSearch search = new FloatSearch(closing, bore, 1.48);
        double justHeld = (1 + Math.cos(level)) / 2;
        assertThat(search.at(greatest * justHeld).openRad()).isCloseTo(level - Math.acos(justHeld), within(1e-9));
        assertThat(search.at(greatest * 1.0001).openRad()).isGreaterThan(0.36);
        assertThat(search.at(greatest * Math.cos(level) * 0.9999).staysShut()).isTrue();
    }

    @Test
    void leafWhoseShadowFallsOnTheGutterNeverReachesItsStop() {
        LeafBore bore = new LeafBore(230, 26, 230, 12.7, 232);
        FloatSearch search = new FloatSearch(new ClosingMoment(8, 96, -7.5), bore, Math.toRadians(87));
        assertThat(bore.shadowMm(Math.toRadians(87))).isLessThan(26);
        assertThat(search.stopPressurePa()).isEmpty();
        assertThat(search.at(1e9).rest()).isEqualTo(FloatAngle.Rest.FLOATING);
    }

    private record Case(ClosingMoment closing, LeafBore bore, double stopRad, double pressurePa) {
        static Case random(Random random) {
            double radius = 50 + 550 * random.nextDouble();
            double start = random.nextBoolean() ? 0 : radius * 0.7 * random.nextDouble();
            double from = start + radius * (0.02 + 0.2 * random.nextDouble());
            double to = start == 0 && random.nextBoolean() ? radius : from + (radius - from) * (0.3 + 0.7 * random.nextDouble());
            double axis = start + (from - start) * random.nextDouble();
            double reach = to - axis + 25 * random.nextDouble();
            ClosingMoment closing = new ClosingMoment(1 + 40 * random.nextDouble(), reach * (0.05 + 0.5 * random.nextDouble()),
                    -3 - 17 * random.nextDouble());
            LeafBore bore = new LeafBore(radius, from, to, axis, reach);
            double lift = LeafAir.liftPressurePa(closing, bore);
            double pressure = lift * (random.nextBoolean() ? 0.9 + 0.3 * random.nextDouble() : 1 + 40 * random.nextDouble());
            return new Case(closing, bore, Math.toRadians(70 + 19 * random.nextDouble()), pressure);
        }

        private double excessNm(double openRad) {
            return pressurePa * bore.interceptedMm3(openRad) * 1e-9 - closing.atNm(openRad);
        }

        void check(FloatAngle found, String name) {
            double tiny = 1e-8 * Math.max(closing.greatestNm(), pressurePa * bore.wholeMm3() * 1e-9);
            if (found.staysShut()) {
                assertThat(found.openRad()).as(name).isZero();
                assertThat(excessNm(0)).as(name).isLessThanOrEqualTo(0);
                return;
            }
            for (int i = 0; i <= STEPS; i++) {
                assertThat(excessNm(found.openRad() * i / STEPS)).as("%s, step %d", name, i).isGreaterThanOrEqualTo(-tiny);
            }
            boolean atStop = found.openRad() == stopRad;
            assertThat(found.reachesStop()).as(name).isEqualTo(atStop);
            if (!atStop) {
                assertThat(excessNm(found.openRad())).as(name).isCloseTo(0, within(tiny));
                assertThat(excessNm(found.openRad() + 1e-5)).as(name).isNegative();
            }
        }
    }

    @Test
    void stopPressureIsTheEdge() {
        Random random = new Random(8);
        for (int i = 0; i < 1000; i++) {
            Case one = Case.random(random);
            FloatSearch search = new FloatSearch(one.closing, one.bore, one.stopRad);
            String name = "seed 8, case " + i;
            search.stopPressurePa().ifPresent(edge -> {
                assertThat(search.at(edge * (1 + 1e-9)).reachesStop()).as(name).isTrue();
                assertThat(search.at(edge * (1 - 1e-9)).reachesStop()).as(name).isFalse();
            });
        }
    }
}

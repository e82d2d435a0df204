package org.capwright.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.capwright.units.Flow;
import org.capwright.units.Pressure;
import org.junit.jupiter.api.Test;

/**
 * The trade handbook's worked figures for the kiln-room cap (inches, in. w.g., ft/min, degrees). With standard air at
 * 1.204 kg/m3 its float angles come out within 0.25 deg and its lift pressure within 0.0006 in. w.g.; with 1.2 kg/m3 and
 * 9.81 m/s2 every angle comes out as printed.
 */
class WorkedAirFiguresTest {
    private final Air kiln = Air.of(Kiln.cap(Map.of()));

    @Test
    void boreAndFreeArea() {
        assertThat(kiln.boreAreaMm2() / (25.4 * 25.4)).isCloseTo(258.0, within(0.05));
        assertThat(kiln.freeAreaMm2() / (25.4 * 25.4)).isCloseTo(220.6, within(0.05));
        assertThat(kiln.blockage().freeShare()).isCloseTo(220.6 / 258.0, within(0.0003));
    }

    @Test
    void liftPressure() {
        double pa = kiln.leaves().get(0).liftPressurePa();
        assertThat(pa / Pressure.PA_PER_INCH_OF_WATER).isCloseTo(0.434, within(0.0006));
    }

    @Test
    void floatAngleByJetDeflection() {
        assertThat(Kiln.leafAt(1500).band().jet().staysShut()).isTrue();
        assertThat(Kiln.leafAt(1500).band().jet().openRad()).isZero();
        assertThat(jetDegrees(2000)).isCloseTo(50.3, within(0.25));
        assertThat(jetDegrees(2500)).isCloseTo(66.0, within(0.15));
        assertThat(jetDegrees(3000)).isCloseTo(72.7, within(0.05));
        assertThat(jetDegrees(4000)).isCloseTo(78.8, within(0.05));
    }

    @Test
    void floatAngleWithTheHandbooksRoundAir() {
        LeafAir leaf = Kiln.leafAt(2000);
        double[] velocities = {2000, 2500, 3000, 4000};
        double[] printed = {50.3, 66.0, 72.7, 78.8};
        for (int i = 0; i < velocities.length; i++) {
            double velocity = velocities[i] * 0.3048 / 60;
            StackFlow round = new StackFlow(StackFlow.flowM3PerS(velocity, leaf.bore().boreRadiusMm()), false,
                    leaf.bore().boreRadiusMm(), 1.2 * 9.80665 / 9.81);
            FloatBand band = FloatBand.of(leaf.closingMoment(), leaf.bore(), Math.toRadians(85), round);
            assertThat(Math.toDegrees(band.jet().openRad())).isCloseTo(printed[i], within(0.05));
        }
    }

    private static double jetDegrees(double feetPerMinute) {
        FloatAngle jet = Kiln.leafAt(feetPerMinute).band().jet();
        assertThat(jet.rest()).isEqualTo(FloatAngle.Rest.FLOATING);
        return Math.toDegrees(jet.openRad());
    }

    @Test
    void dragFormOpensLess() {
        for (double velocity : new double[] {2500, 3000, 4000}) {
            FloatBand band = Kiln.leafAt(velocity).band();
            assertThat(band.drag().openRad()).isPositive().isLessThan(band.jet().openRad());
            assertThat(band.dragStopM3PerS().getAsDouble() / band.jetStopM3PerS().getAsDouble())
                    .isCloseTo(Math.sqrt(1 / 0.585), within(1e-12));
        }
        assertThat(Kiln.leafAt(2000).band().drag().staysShut()).isTrue();
    }

    @Test
    void closingRatioFromItsParts() {
        LeafAir leaf = kiln.leaves().get(0);
        double newtonsPerPound = 4.4482216152605;
        double rodPounds = .29 * Math.PI / 4 * .5 * .5 * 23.0698;
        double friction = 0.2 * (leaf.closingMoment().weightN() / newtonsPerPound + rodPounds) * 0.25;
        assertThat(leaf.closing().frictionNm()).isCloseTo(friction * newtonsPerPound * 0.0254, within(1e-7));
        assertThat(leaf.closing().leastMomentNm()).isEqualTo(leaf.closingMoment().atNm(Math.toRadians(85)));
        assertThat(leaf.closing().ratio().getAsDouble()).isCloseTo(7.20, within(0.005));
        Air slick = Air.of(Kiln.cap(Map.of("air.friction", "0")));
        assertThat(slick.leaves().get(0).closing().ratio()).isEmpty();
    }

    @Test
    void theFlowThatReachesTheStopIsTheEdgeOfReachingIt() {
        double edge = Kiln.leafAt(2000).band().jetStopM3PerS().getAsDouble() / Flow.M3_PER_S_PER_FT3_PER_MIN;
        double velocity = edge / (Math.PI * Kiln.BORE_RADIUS_FT * Kiln.BORE_RADIUS_FT);
        assertThat(Kiln.leafAt(velocity * 1.0001).band().jet())
                .isEqualTo(new FloatAngle(Math.toRadians(85), FloatAngle.Rest.AT_STOP));
        FloatAngle below = Kiln.leafAt(velocity * 0.9999).band().jet();
        assertThat(below.rest()).isEqualTo(FloatAngle.Rest.FLOATING);
        assertThat(Math.toDegrees(below.openRad())).isCloseTo(85, within(0.001));
    }
}

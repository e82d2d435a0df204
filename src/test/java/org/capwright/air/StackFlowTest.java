package org.capwright.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.capwright.units.Pressure;
import org.junit.jupiter.api.Test;

/** The flow in the sleeve. */
class StackFlowTest {
    /** ACGIH Industrial Ventilation, {@code V = 4005 sqrt(VP)}: the usual table of velocity pressures. */
    @Test
    void velocityPressureTable() {
        double[][] table = {{1000, .062}, {2000, .249}, {3000, .561}, {4000, .998}};
        for (double[] row : table) {
            Air air = Air.of(Kiln.cap(Map.of("air.flow", Kiln.flowAt(row[0]))));
            assertThat(air.velocityMPerS()).isCloseTo(row[0] * 0.3048 / 60, within(1e-6));
            double inches = air.velocityPressurePa() / Pressure.PA_PER_INCH_OF_WATER;
            assertThat(inches).isCloseTo(row[1], within(0.0005));
            assertThat(inches).isCloseTo(Math.pow(row[0] / 4005, 2), within(0.0005));
        }
    }

    @Test
    void autoFlowIsThreeThousandFeetAMinute() {
        Air auto = Air.of(Kiln.cap(Map.of("air.flow", "auto")));
        assertThat(auto.flow().assumed()).isTrue();
        assertThat(auto.velocityMPerS()).isCloseTo(15.24, within(1e-12));
        assertThat(Air.of(Kiln.cap(Map.of())).flow().assumed()).isFalse();
    }

    @Test
    void hotThinAirPushesLess() {
        Air hot = Air.of(Kiln.cap(Map.of("air.temperature", "300 F", "air.altitude", "5000 ft")));
        Air cold = Air.of(Kiln.cap(Map.of()));
        double share = 529.67 / 759.67 * Math.pow(1 - 2.25577e-5 * 1524, 5.2559);
        assertThat(hot.densityKgPerM3() / cold.densityKgPerM3()).isCloseTo(share, within(1e-12));
        assertThat(hot.velocityPressurePa() / cold.velocityPressurePa()).isCloseTo(share, within(1e-12));
        assertThat(hot.bushingMarginK()).isNegative();
    }
}

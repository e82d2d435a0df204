package org.capwright.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.capwright.units.Length;
import org.capwright.units.Temperature;
import org.junit.jupiter.api.Test;

/** Density against published figures. */
class AirDensityTest {
    /** ASHRAE Fundamentals, standard atmosphere table (kPa), from memory. */
    @Test
    void pressureByAltitude() {
        double[][] table = {{-500, 107.478}, {0, 101.325}, {500, 95.461}, {1000, 89.875}, {1500, 84.556}, {2000, 79.495},
            {3000, 70.108}, {4000, 61.640}};
        for (double[] row : table) {
            double kPa = 101.325 * AirDensity.pressureRatio(Length.ofMm(row[0] * 1000));
            assertThat(kPa).as("at %s m", row[0]).isCloseTo(row[1], within(0.0011));
        }
    }

    /** Ventilation textbook: 90 F, 27.50 inHg give 0.88, the product of .96 and .92; unrounded it is 0.886. */
    @Test
    void densityFactor() {
        Temperature air = Temperature.ofFahrenheit(90);
        assertThat(AirDensity.factor(air, 27.50 / 29.92)).isCloseTo(530.0 / 550 * 27.50 / 29.92, within(1e-4))
                .isCloseTo(0.88, within(0.006));
    }

    @Test
    void roundedFormIsNear() {
        for (double fahrenheit = -40; fahrenheit <= 600; fahrenheit += 10) {
            double rounded = 530 / (460 + fahrenheit);
            assertThat(AirDensity.factor(Temperature.ofFahrenheit(fahrenheit), 1) / rounded).isCloseTo(1, within(3.2e-4));
        }
    }

    @Test
    void standardAir() {
        assertThat(AirDensity.kgPerM3(Temperature.ofFahrenheit(70), Length.ZERO)).isCloseTo(1.204, within(1e-12));
    }

    @Test
    void bushingLimit() {
        assertThat(BushingHeat.marginK(Temperature.ofCelsius(75))).isZero();
        assertThat(BushingHeat.marginK(Temperature.ofCelsius(90))).isCloseTo(-15, within(1e-9));
    }
}

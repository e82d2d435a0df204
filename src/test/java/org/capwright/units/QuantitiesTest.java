package org.capwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quantities' own conversions, order and refusals. Factors by NIST SP 811, appendix B. */
class QuantitiesTest {
    @Test
    void theFactorsAreThePublishedOnes() {
        assertThat(Length.ofInches(1).mm()).isEqualTo(25.4);
        assertThat(Length.ofMm(25.4).inches()).isEqualTo(1);
        assertThat(Angle.ofDegrees(180).rad()).isEqualTo(Math.PI);
        assertThat(Flow.ofCubicFeetPerMinute(1).m3PerS()).isCloseTo(4.719474e-4, within(5e-11));
        assertThat(Flow.ofCubicMetresPerHour(1).m3PerS()).isCloseTo(2.777778e-4, within(5e-11));
        assertThat(Pressure.ofInchesOfWater(1).pa()).isCloseTo(249.0889, within(5e-5));
        assertThat(Pressure.PA_PER_PSI).isCloseTo(6894.757, within(5e-4));
        assertThat(Temperature.ofFahrenheit(32).kelvin()).isCloseTo(273.15, within(1e-12));
        assertThat(Temperature.ofFahrenheit(212).celsius()).isCloseTo(100, within(1e-12));
        assertThat(Temperature.ofCelsius(-40).fahrenheit()).isCloseTo(-40, within(1e-12));
    }

    @Test
    void eachIsInOrderOfSize() {
        assertThat(Length.ZERO).isLessThan(Length.ofMm(1));
        assertThat(Angle.ofRad(1)).isGreaterThan(Angle.ofDegrees(57));
        assertThat(new Flow(1)).isGreaterThan(Flow.ofCubicMetresPerHour(3599));
        assertThat(new Pressure(249)).isLessThan(Pressure.ofInchesOfWater(1));
        assertThat(Temperature.ofCelsius(0)).isLessThan(Temperature.ofFahrenheit(33));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void noneTakesAValueThatIsNotFinite(double value) {
        refused("length", Length::ofMm, value);
        refused("length", Length::ofInches, value);
        refused("angle", Angle::ofRad, value);
        refused("angle", Angle::ofDegrees, value);
        refused("flow", Flow::new, value);
        refused("flow", Flow::ofCubicFeetPerMinute, value);
        refused("pressure", Pressure::new, value);
        refused("temperature", Temperature::ofCelsius, value);
    }

    private static void refused(String what, DoubleFunction<?> of, double value) {
        assertThatThrownBy(() -> of.apply(value)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage(what + " must be a finite number, not " + value);
    }
}

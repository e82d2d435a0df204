package org.capwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Angles, flows, pressures, temperatures and plain numbers as people type them. */
class QuantityReadingTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/quantities-typed.csv", delimiter = '|', quoteCharacter = '~')
    void whatAShopTypesIsRead(String quantity, String typed, UnitSystem bare, double si, double relative) {
        double read = switch (quantity) {
            case "angle" -> QuantityParser.angle(typed).rad();
            case "flow" -> QuantityParser.flow(typed, bare).m3PerS();
            case "pressure" -> QuantityParser.pressure(typed, bare).pa();
            case "temperature" -> QuantityParser.temperature(typed, bare).kelvin();
            default -> throw new IllegalArgumentException(quantity);
        };
        assertThat(read).isCloseTo(si, within(relative * Math.abs(si)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "upright", "85 in", "85,5", "85 deg deg", "NaN"})
    void whatIsNoAngle(String typed) {
        refused(() -> QuantityParser.angle(typed), "\"" + typed + "\" can't be read as an angle; type it like 85 deg");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5000 ft/min", "5000 ft3", "5,000 cfm", "lots"})
    void whatIsNoFlow(String typed) {
        refused(() -> QuantityParser.flow(typed, UnitSystem.INCH),
                "\"" + typed + "\" can't be read as a flow; type it like 5000 ft3/min or 2.4 m3/s");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1 in", "1 w.g.", "250 kg", "1 inHg"})
    void whatIsNoPressure(String typed) {
        refused(() -> QuantityParser.pressure(typed, UnitSystem.INCH),
                "\"" + typed + "\" can't be read as a pressure; type it like 1 inH2O or 250 Pa");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "hot", "70 deg", "70 R", "70 f f"})
    void whatIsNoTemperature(String typed) {
        refused(() -> QuantityParser.temperature(typed, UnitSystem.INCH),
                "\"" + typed + "\" can't be read as a temperature; type it like 70 F or 21 C");
    }

    @ParameterizedTest
    @CsvSource({"6, 6", "' 6 ', 6", "+6, 6", "-6, -6", "−6, -6", "0, 0", "999999999, 999999999"})
    void counts(String typed, int count) {
        assertThat(QuantityParser.count(typed)).isEqualTo(count);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "6.0", "six", "1/2", "6 pieces", "1,000", "9999999999", "٦"})
    void whatIsNoCount(String typed) {
        refused(() -> QuantityParser.count(typed), "\"" + typed + "\" can't be read as a whole number; type it like 6");
    }

    @ParameterizedTest
    @CsvSource({"0.33, 0.33", ".33, 0.33", "1/4, 0.25", "-2, -2", "1e3, 1000", "1 1/2, 1.5"})
    void numbers(String typed, double number) {
        assertThat(QuantityParser.number(typed)).isEqualTo(number);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0,33", "33 %", "k", "Infinity"})
    void whatIsNoNumber(String typed) {
        refused(() -> QuantityParser.number(typed), "\"" + typed + "\" can't be read as a number; type it like 0.33");
    }

    /** The examples that refusals give must be read themselves. */
    @Test
    void theExamplesAreReadable() {
        assertThat(QuantityParser.length("24 1/2 in", UnitSystem.METRIC).mm()).isCloseTo(622.3, within(1e-9));
        assertThat(QuantityParser.angle("85 deg").degrees()).isCloseTo(85, within(1e-12));
        assertThat(QuantityParser.flow("5000 ft3/min", UnitSystem.METRIC).cubicFeetPerMinute()).isCloseTo(5000, within(1e-9));
        assertThat(QuantityParser.pressure("1 inH2O", UnitSystem.METRIC).inchesOfWater()).isCloseTo(1, within(1e-12));
        assertThat(QuantityParser.temperature("70 F", UnitSystem.METRIC).fahrenheit()).isCloseTo(70, within(1e-9));
    }

    private static void refused(ThrowingCallable reading, String message) {
        assertThatThrownBy(reading).isInstanceOf(UnreadableQuantityException.class).hasMessage(message);
    }
}

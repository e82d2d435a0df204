package org.capwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"24 1/2|24.5", "24-1/2\"|24.5", "24.5 in|24.5", "1' 6 1/2\"|18.5", "1'6\"|18", "2 ft|24", "3/16 in|0.1875",
        ".0396 in|0.0396", "57 1/8 in -.022|57.103", "18|18", "1/2\"|0.5", "24 1/2 inches|24.5", "+3 in|3"})
    void inches(String text, double inches) {
        assertThat(QuantityParser.length(text, UnitSystem.INCH).inches()).isCloseTo(inches, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"622 mm|622", "62.2 cm|622", "0.622 m|622", "622|622", "622.5mm|622.5"})
    void millimetres(String text, double mm) {
        assertThat(QuantityParser.length(text, UnitSystem.METRIC).mm()).isCloseTo(mm, within(1e-9));
    }

    /** Conversions by definition: 1 in 25.4 mm, 1 ft 0.3048 m; 1 in of water 249.089 Pa (at 4 C, about). */
    @Test
    void otherQuantities() {
        assertThat(QuantityParser.angle("85 deg").degrees()).isCloseTo(85, within(1e-12));
        assertThat(QuantityParser.angle("85").degrees()).isCloseTo(85, within(1e-12));
        assertThat(QuantityParser.angle("1.5 rad").rad()).isEqualTo(1.5);
        assertThat(QuantityParser.flow("5000 ft3/min", UnitSystem.INCH).m3PerS()).isCloseTo(5000 * Math.pow(0.3048, 3) / 60, within(1e-12));
        assertThat(QuantityParser.flow("2.6 m3/s", UnitSystem.METRIC).m3PerS()).isCloseTo(2.6, within(1e-12));
        assertThat(QuantityParser.flow("3600 m3/h", UnitSystem.METRIC).m3PerS()).isCloseTo(1, within(1e-12));
        assertThat(QuantityParser.flow("500 L/s", UnitSystem.METRIC).m3PerS()).isCloseTo(0.5, within(1e-12));
        assertThat(QuantityParser.pressure("1 inH2O", UnitSystem.INCH).pa()).isCloseTo(249.09, within(0.1));
        assertThat(QuantityParser.pressure("300 Pa", UnitSystem.METRIC).pa()).isEqualTo(300);
        assertThat(QuantityParser.temperature("70 F", UnitSystem.INCH).kelvin()).isCloseTo(294.261, within(0.001));
        assertThat(QuantityParser.temperature("-40 C", UnitSystem.METRIC).kelvin()).isCloseTo(233.15, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "wide", "1/0", "3//4", "1 2 3 in", "12 furlongs", "1/2/3", "in", "--4", "4 in in", "NaN", "Infinity", "1e999 mm"})
    void whatCantBeReadIsQuotedWithAnExample(String text) {
        assertThatThrownBy(() -> QuantityParser.length(text, UnitSystem.INCH)).isInstanceOf(UnreadableQuantityException.class)
                .hasMessageStartingWith("\"" + text.strip()).hasMessageContaining("24 1/2");
    }

    /** What is printed with its remainder reads back to within half a thousandth of an inch. */
    @Test
    void printingAndReadingAreInverse() {
        Random random = new Random(5);
        for (int denominator : new int[] {16, 32, 64}) {
            ShopFormat format = new ShopFormat(UnitSystem.INCH, denominator);
            for (int i = 0; i < 500; i++) {
                Length length = Length.ofInches(random.nextDouble() * 200 - 20);
                String text = format.length(length);
                assertThat(QuantityParser.length(text, UnitSystem.INCH).inches()).as("seed 5: %s", text).isCloseTo(length.inches(), within(0.00051));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG", "tr-TR", "hi-IN"})
    void theMachinesLocaleDoesNotMatter(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(new ShopFormat(UnitSystem.METRIC, 32).length(Length.ofMm(1234.56))).isEqualTo("1234.6 mm");
            assertThat(new ShopFormat(UnitSystem.INCH, 32).length(Length.ofInches(57.1035))).isEqualTo("57 3/32 in +.010");
            assertThat(QuantityParser.length("24.5 IN", UnitSystem.INCH).inches()).isEqualTo(24.5);
        } finally {
            Locale.setDefault(before);
        }
    }
}

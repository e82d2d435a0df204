package org.capwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopFormatTest {
    @ParameterizedTest
    @CsvSource({"57.1035, 16, 57 1/8 in -.022", "57.1035, 32, 57 3/32 in +.010", "57.1035, 64, 57 7/64 in -.006", "24.5, 32, 24 1/2 in", "0.25, 16, 1/4 in",
        "0, 32, 0 in", "-0.5, 16, -1/2 in", "0.9999, 16, 1 in", "11.99, 16, 12 in -.010"})
    void inchesWithTheRemainderInThousandths(double inches, int denominator, String text) {
        assertThat(new ShopFormat(UnitSystem.INCH, denominator).length(Length.ofInches(inches))).isEqualTo(text);
    }

    @Test
    void millimetresToATenth() {
        ShopFormat format = new ShopFormat(UnitSystem.METRIC, 32);
        assertThat(format.length(Length.ofMm(1450.43))).isEqualTo("1450.4 mm");
        assertThat(format.plain(Length.ofMm(0.04))).isEqualTo("0.0");
        assertThat(format.length(Length.ofMm(-0.04))).isEqualTo("0.0 mm");
        assertThat(format.both(Length.ofMm(25.4))).isEqualTo("25.4 mm (1 in)");
    }

    @Test
    void onlyFractionsOfATape() {
        assertThatThrownBy(() -> new ShopFormat(UnitSystem.INCH, 10)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the smallest fraction must be 1/16, 1/32 or 1/64, not 1/10");
    }
}

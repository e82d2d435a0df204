package org.capwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShopFormatTest {
    private static final ShopFormat METRIC = new ShopFormat(UnitSystem.METRIC, 32);
    private static final ShopFormat INCH = new ShopFormat(UnitSystem.INCH, 32);

    @ParameterizedTest
    @CsvSource({
        "57.1035, 16, 57 1/8 in -.022",
        "57.1035, 32, 57 3/32 in +.010",
        "57.1035, 64, 57 7/64 in -.006",
        "24.5, 16, 24 1/2 in",
        "24.5, 64, 24 1/2 in",
        "24.6875, 16, 24 11/16 in",
        "24.6875, 64, 24 11/16 in",
        "0.0396, 64, 3/64 in -.007",
        "0.25, 16, 1/4 in",
        "0, 32, 0 in",
        "0.0004, 32, 0 in",
        "-0.0004, 32, 0 in",
        "0.010, 32, 0 in +.010",
        "-0.010, 32, 0 in -.010",
        "-0.5, 16, -1/2 in",
        "-24.51, 16, -24 1/2 in -.010",
        "0.9999, 16, 1 in",
        "0.99, 16, 1 in -.010",
        "11.99, 16, 12 in -.010",
        "70.4375, 16, 70 7/16 in"})
    void inchesWithTheRemainderInThousandths(double inches, int denominator, String text) {
        assertThat(new ShopFormat(UnitSystem.INCH, denominator).length(Length.ofInches(inches))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"1450.43, 1450.4 mm", "1450.47, 1450.5 mm", "622, 622.0 mm", "-0.04, 0.0 mm", "-0.06, -0.1 mm",
        "1234567.89, 1234567.9 mm"})
    void millimetresToATenth(double mm, String text) {
        assertThat(METRIC.length(Length.ofMm(mm))).isEqualTo(text);
    }

    @Test
    void withoutUnitOrRemainder() {
        assertThat(INCH.plain(Length.ofInches(57.1035))).isEqualTo("57 3/32");
        assertThat(METRIC.plain(Length.ofMm(1450.43))).isEqualTo("1450.4");
        assertThat(METRIC.plain(Length.ofMm(-0.04))).isEqualTo("0.0");
    }

    @Test
    void inBothSystemsTheJobsFirst() {
        assertThat(METRIC.both(Length.ofMm(25.4))).isEqualTo("25.4 mm (1 in)");
        assertThat(INCH.both(Length.ofInches(57.1035))).isEqualTo("57 3/32 in +.010 (1450.4 mm)");
    }

    @Test
    void thicknessesInDecimals() {
        assertThat(INCH.thickness(Length.ofInches(.0396))).isEqualTo("0.0396 in");
        assertThat(METRIC.thickness(Length.ofInches(.0396))).isEqualTo("1.01 mm");
    }

    /** A pound is 0.45359237 kg exactly (international yard and pound agreement, 1959). */
    @Test
    void anglesAndMasses() {
        assertThat(INCH.angle(Angle.ofDegrees(86.860))).isEqualTo("86.9 deg");
        assertThat(INCH.angle(Angle.ofDegrees(-0.01))).isEqualTo("0.0 deg");
        assertThat(INCH.mass(0.45359237)).isEqualTo("1.00 lb");
        assertThat(METRIC.mass(18.688)).isEqualTo("18.69 kg");
        assertThat(METRIC.mass(-0.001)).isEqualTo("0.00 kg");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -16, 1, 8, 10, 12, 33, 128})
    void onlyFractionsOfATape(int denominator) {
        assertThatThrownBy(() -> new ShopFormat(UnitSystem.INCH, denominator)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the smallest fraction must be 1/16, 1/32 or 1/64, not 1/" + denominator);
    }
}

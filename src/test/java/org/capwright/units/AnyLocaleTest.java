package org.capwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The machine's locale changes nothing: German has decimal commas, Arabic its own digits, Turkish a dotless i. */
class AnyLocaleTest {
    private static final String GERMAN = "de-DE";
    private static final String ARABIC = "ar-EG";
    private static final String ARABIC_WITH_ITS_DIGITS = "ar-EG-u-nu-arab";
    private static final String TURKISH = "tr-TR";
    private static final String HINDI_WITH_ITS_DIGITS = "hi-IN-u-nu-deva";

    private Locale before;

    @BeforeEach
    void remember() {
        before = Locale.getDefault();
    }

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {GERMAN, ARABIC, ARABIC_WITH_ITS_DIGITS, TURKISH, HINDI_WITH_ITS_DIGITS})
    void printing(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        ShopFormat metric = new ShopFormat(UnitSystem.METRIC, 32);
        ShopFormat inch = new ShopFormat(UnitSystem.INCH, 32);
        assertThat(metric.length(Length.ofMm(1234.56))).isEqualTo("1234.6 mm");
        assertThat(inch.length(Length.ofInches(57.1035))).isEqualTo("57 3/32 in +.010");
        assertThat(inch.thickness(Length.ofInches(.0396))).isEqualTo("0.0396 in");
        assertThat(inch.angle(Angle.ofDegrees(86.86))).isEqualTo("86.9 deg");
        assertThat(metric.mass(18.688)).isEqualTo("18.69 kg");
    }

    @ParameterizedTest
    @ValueSource(strings = {GERMAN, ARABIC, ARABIC_WITH_ITS_DIGITS, TURKISH, HINDI_WITH_ITS_DIGITS})
    void reading(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(QuantityParser.length("24.5 IN", UnitSystem.METRIC).inches()).isEqualTo(24.5);
        assertThat(QuantityParser.length("1 FT 6 INCHES", UnitSystem.METRIC).inches()).isEqualTo(18);
        assertThat(QuantityParser.pressure("1 INH2O", UnitSystem.METRIC)).isEqualTo(Pressure.ofInchesOfWater(1));
        assertThat(QuantityParser.flow("5000 FT3/MIN", UnitSystem.METRIC)).isEqualTo(Flow.ofCubicFeetPerMinute(5000));
        assertThatThrownBy(() -> QuantityParser.length("24,5 mm", UnitSystem.METRIC))
                .hasMessage("\"24,5 mm\" can't be read as a length; type it like 24 1/2 in or 622 mm");
        assertThatThrownBy(() -> Length.ofMm(Double.NaN)).hasMessage("length must be a finite number, not NaN");
    }
}

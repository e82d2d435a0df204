package org.capwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths as people type them, and texts that must not be taken for one. */
class LengthReadingTest {
    private static final char NO_QUOTES = '~';

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/lengths-typed.csv", delimiter = '|', quoteCharacter = NO_QUOTES)
    void whatAShopTypesIsRead(String typed, UnitSystem bare, double inches, double mm) {
        Length length = QuantityParser.length(typed, bare);
        assertThat(length.inches()).isCloseTo(inches, within(1e-11));
        assertThat(length.mm()).isCloseTo(mm, within(1e-9));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/lengths-refused.csv", delimiter = '|', quoteCharacter = NO_QUOTES)
    void whatIsNoLengthIsQuotedWithAnExample(String typed) {
        for (UnitSystem bare : UnitSystem.values()) {
            assertThatThrownBy(() -> QuantityParser.length(typed, bare)).isInstanceOf(UnreadableQuantityException.class)
                    .hasMessage("\"" + typed + "\" can't be read as a length; type it like 24 1/2 in or 622 mm");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t", "\n", "24\n25"})
    void blanksAndLineEndsAreNoLength(String typed) {
        assertThatThrownBy(() -> QuantityParser.length(typed, UnitSystem.INCH)).isInstanceOf(UnreadableQuantityException.class)
                .hasMessage("\"" + typed + "\" can't be read as a length; type it like 24 1/2 in or 622 mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"  24 1/2 in  ", "24\u00a01/2\u202fin", "24\t1/2  in", "24\u20091/2 in"})
    void anyBlanksWillDo(String typed) {
        assertThat(QuantityParser.length(typed, UnitSystem.METRIC).inches()).isEqualTo(24.5);
    }

    @ParameterizedTest
    @EnumSource
    void aTextTooLongToBeMeantIsRefusedAndNothingBreaks(UnitSystem bare) {
        for (String part : new String[] {"1 ", "1/", "-", "1' ", " -.022", "'", "9"}) {
            String typed = "24 in" + part.repeat(5000);
            assertThatThrownBy(() -> QuantityParser.length(typed, bare)).isInstanceOf(UnreadableQuantityException.class);
        }
    }

    /** A thousandth more or less stands after inches alone: anywhere else it could be thousandths of something else. */
    @Test
    void aRemainderWantsInches() {
        assertThat(QuantityParser.length("57 1/8 in -.022", UnitSystem.METRIC).inches()).isCloseTo(57.103, within(1e-12));
        assertThatThrownBy(() -> QuantityParser.length("1450 mm -.022", UnitSystem.INCH))
                .isInstanceOf(UnreadableQuantityException.class);
    }
}

package org.capwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed reads back: to half of the last figure printed, whatever a bare number would mean. */
class PrintedAndReadBackTest {
    private static final long SEED = 20_231;
    private static final int CASES = 2000;
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @ValueSource(ints = {16, 32, 64})
    void inchesToHalfAThousandth(int denominator) {
        Random random = new Random(SEED);
        ShopFormat format = new ShopFormat(UnitSystem.INCH, denominator);
        for (int i = 0; i < CASES; i++) {
            Length length = Length.ofInches(random.nextDouble(-20, 200));
            String printed = format.length(length);
            for (UnitSystem bare : UnitSystem.values()) {
                assertThat(QuantityParser.length(printed, bare).inches()).as("seed %d, case %d: %s", SEED, i, printed)
                        .isCloseTo(length.inches(), within(0.0005 + ROUNDING));
            }
        }
    }

    /** Round figures come back as they were, with no remainder to carry. */
    @ParameterizedTest
    @ValueSource(ints = {16, 32, 64})
    void fractionsOfATapeExactly(int denominator) {
        ShopFormat format = new ShopFormat(UnitSystem.INCH, denominator);
        for (int parts = -200; parts <= 2000; parts++) {
            double inches = (double) parts / denominator;
            String printed = format.length(Length.ofInches(inches));
            assertThat(printed).doesNotContain(".");
            assertThat(QuantityParser.length(printed, UnitSystem.INCH).inches()).as(printed)
                    .isCloseTo(inches, within(ROUNDING));
        }
    }

    @Test
    void plainFractionsToHalfTheSmallest() {
        Random random = new Random(SEED);
        ShopFormat format = new ShopFormat(UnitSystem.INCH, 32);
        for (int i = 0; i < CASES; i++) {
            Length length = Length.ofInches(random.nextDouble(-20, 200));
            String printed = format.plain(length);
            assertThat(QuantityParser.length(printed, UnitSystem.INCH).inches()).as("seed %d, case %d: %s", SEED, i, printed)
                    .isCloseTo(length.inches(), within(1 / 64.0 + ROUNDING));
        }
    }

    @Test
    void millimetresToHalfATenth() {
        Random random = new Random(SEED);
        ShopFormat format = new ShopFormat(UnitSystem.METRIC, 16);
        for (int i = 0; i < CASES; i++) {
            Length length = Length.ofMm(random.nextDouble(-500, 5000));
            String printed = format.length(length);
            for (UnitSystem bare : UnitSystem.values()) {
                assertThat(QuantityParser.length(printed, bare).mm()).as("seed %d, case %d: %s", SEED, i, printed)
                        .isCloseTo(length.mm(), within(0.05 + ROUNDING));
            }
        }
    }

    @Test
    void thicknessesAndAngles() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            Length sheet = Length.ofInches(random.nextDouble(0.01, 0.25));
            Angle angle = Angle.ofDegrees(random.nextDouble(-180, 180));
            String what = "seed " + SEED + ", case " + i;
            assertThat(readBack(sheet, UnitSystem.INCH).inches()).as(what).isCloseTo(sheet.inches(), within(0.00005 + ROUNDING));
            assertThat(readBack(sheet, UnitSystem.METRIC).mm()).as(what).isCloseTo(sheet.mm(), within(0.005 + ROUNDING));
            assertThat(QuantityParser.angle(new ShopFormat(UnitSystem.INCH, 16).angle(angle)).degrees()).as(what)
                    .isCloseTo(angle.degrees(), within(0.05 + ROUNDING));
        }
    }

    private static Length readBack(Length sheet, UnitSystem system) {
        return QuantityParser.length(new ShopFormat(system, 32).thickness(sheet), UnitSystem.INCH);
    }
}

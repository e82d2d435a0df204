package org.capwright.units;

import java.util.Locale;

/**
 * Prints quantities in a shop's units: inches to the nearest fraction with the remainder in thousandths, or millimetres to
 * a tenth. Never looks at the machine's locale.
 *
 * @param system the unit system
 * @param denominator the smallest fraction of an inch: 16, 32 or 64
 */
public record ShopFormat(UnitSystem system, int denominator) {
    private static final double KG_PER_POUND = 0.45359237;

    /** Refuses a fraction that no tape has. */
    public ShopFormat {
        if (denominator != 16 && denominator != 32 && denominator != 64) {
            throw new IllegalArgumentException("the smallest fraction must be 1/16, 1/32 or 1/64, not 1/" + denominator);
        }
    }

    /**
     * A length with its unit and the remainder.
     *
     * @param length what to print
     * @return such as {@code 57 1/8 in -.022} or {@code 1450.4 mm}
     */
    public String length(Length length) {
        return system == UnitSystem.INCH ? inches(length) : plain(length) + " mm";
    }

    /**
     * A length rounded to the shop's fraction, without unit or remainder.
     *
     * @param length what to print
     * @return such as {@code 57 1/8} or {@code 1450.4}
     */
    public String plain(Length length) {
        return system == UnitSystem.INCH ? fraction(parts(length)) : decimals(length.mm(), 1);
    }

    /**
     * A length in both systems, the job's first.
     *
     * @param length what to print
     * @return such as {@code 57 1/8 in -.022 (1450.4 mm)}
     */
    public String both(Length length) {
        UnitSystem second = system == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH;
        return length(length) + " (" + new ShopFormat(second, denominator).length(length) + ")";
    }

    /**
     * A thickness in decimals.
     *
     * @param length what to print
     * @return such as {@code 0.0396 in} or {@code 1.01 mm}
     */
    public String thickness(Length length) {
        return system == UnitSystem.INCH ? decimals(length.inches(), 4) + " in" : decimals(length.mm(), 2) + " mm";
    }

    /**
     * An angle in degrees.
     *
     * @param angle what to print
     * @return such as {@code 86.9 deg}
     */
    public String angle(Angle angle) {
        return decimals(angle.degrees(), 1) + " deg";
    }

    /**
     * A mass in pounds or kilograms.
     *
     * @param kg what to print
     * @return such as {@code 41.2 lb}
     */
    public String mass(double kg) {
        return system == UnitSystem.INCH ? decimals(kg / KG_PER_POUND, 2) + " lb" : decimals(kg, 2) + " kg";
    }

    private String inches(Length length) {
        long parts = parts(length);
        long thousandths = Math.round((length.inches() - (double) parts / denominator) * 1000);
        String rest = thousandths == 0 ? "" : String.format(Locale.ROOT, " %s.%03d", thousandths < 0 ? "-" : "+",
                Math.abs(thousandths));
        return fraction(parts) + " in" + rest;
    }

    private long parts(Length length) {
        return Math.round(length.inches() * denominator);
    }

    private String fraction(long parts) {
        long whole = Math.abs(parts) / denominator;
        long numerator = Math.abs(parts) % denominator;
        String sign = parts < 0 ? "-" : "";
        if (numerator == 0) {
            return sign + whole;
        }
        long common = Long.lowestOneBit(numerator | denominator);
        String fraction = numerator / common + "/" + denominator / common;
        return sign + (whole == 0 ? fraction : whole + " " + fraction);
    }

    private static String decimals(double value, int places) {
        String text = String.format(Locale.ROOT, "%." + places + "f", value);
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }
}

package org.capwright.check;

import java.util.Locale;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/** What a check measures: the unit of its value, and how people read it. */
public enum Quantity {
    /** Millimetres. */
    LENGTH("mm", 1),
    /** Radians, shown in degrees. */
    ANGLE("deg", 180 / Math.PI),
    /** Pascals. */
    PRESSURE("Pa", 1),
    /** Megapascals. */
    STRESS("MPa", 1),
    /** Kelvins, shown in degrees Celsius or Fahrenheit. */
    TEMPERATURE("K", 1),
    /** Kilograms. */
    MASS("kg", 1),
    /** A share or a ratio. */
    RATIO("", 1),
    /** A number of things. */
    COUNT("", 1);

    private static final double PA_PER_INCH_OF_WATER = 249.08891;

    private final String unit;
    private final double scale;

    Quantity(String unit, double scale) {
        this.unit = unit;
        this.scale = scale;
    }

    /**
     * Unit in which figures are printed.
     *
     * @return such as {@code mm}
     */
    public String unit() {
        return unit;
    }

    /**
     * The value in that unit.
     *
     * @param value in the core's unit
     * @return such as degrees for radians
     */
    public double inUnit(double value) {
        return value * scale;
    }

    /**
     * The value for people.
     *
     * @param value in the core's unit
     * @param format how numbers are printed
     * @return such as {@code 1/4 in} or {@code 85.0 deg}
     */
    public String words(double value, ShopFormat format) {
        boolean inch = format.system() == UnitSystem.INCH;
        return switch (this) {
            case LENGTH -> format.length(Length.ofMm(value));
            case ANGLE -> format.angle(Angle.ofRad(value));
            case PRESSURE -> inch ? decimals("%.3f in w.g.", value / PA_PER_INCH_OF_WATER) : decimals("%.1f Pa", value);
            case STRESS -> decimals("%.1f MPa", value);
            case TEMPERATURE -> inch ? decimals("%.0f F", (value - 273.15) * 1.8 + 32) : decimals("%.0f C", value - 273.15);
            case MASS -> format.mass(value);
            case RATIO -> decimals("%.3f", value);
            case COUNT -> decimals("%.0f", value);
        };
    }

    private static String decimals(String form, double value) {
        return String.format(Locale.ROOT, form, value);
    }
}

package org.capwright.units;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as people type them: {@code 24 1/2}, {@code 24-1/2"}, {@code 24.5 in}, {@code 1' 6 1/2"}, {@code 622
 * mm}, {@code 85 deg}, {@code 5000 ft3/min}. A decimal comma is refused, since 1,000 could be one or a thousand. What can't
 * be read is refused with the text quoted and an example of what would be.
 */
public final class QuantityParser {
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([+-]?)\\s*([0-9./ \\-]*[0-9.](?:[eE][+-]?\\d+)?)\\s*(.*)");
    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("([+-]?)\\s*([0-9.]+)\\s*(?:'|ft|feet|foot)\\s*-?\\s*([0-9./ \\-]+?)\\s*(?:\"|''|in\\.?|inch|inches)?");
    private static final Pattern WITH_REMAINDER =
            Pattern.compile("(.*\\S\\s*(?:\"|''|in\\.?|inch|inches))\\s+([+-]\\.\\d{3})", Pattern.CASE_INSENSITIVE);
    /** No length takes more signs; a page pasted into a field would keep the patterns busy for minutes. */
    private static final int LONGEST_TEXT = 100;

    private static final String LENGTH_EXAMPLE = "24 1/2 in or 622 mm";

    private static final Map<String, DoubleFunction<Length>> LENGTHS = new LinkedHashMap<>();
    private static final Map<String, DoubleFunction<Angle>> ANGLES = new LinkedHashMap<>();
    private static final Map<String, DoubleFunction<Flow>> FLOWS = new LinkedHashMap<>();
    private static final Map<String, DoubleFunction<Pressure>> PRESSURES = new LinkedHashMap<>();
    private static final Map<String, DoubleFunction<Temperature>> TEMPERATURES = new LinkedHashMap<>();

    static {
        units(LENGTHS, Length::ofInches, "in", "in.", "inch", "inches", "\"", "''");
        units(LENGTHS, feet -> Length.ofInches(12 * feet), "ft", "feet", "foot", "'");
        units(LENGTHS, Length::ofMm, "mm");
        units(LENGTHS, cm -> Length.ofMm(10 * cm), "cm");
        units(LENGTHS, m -> Length.ofMm(1000 * m), "m");
        units(ANGLES, Angle::ofDegrees, "deg", "degrees", "\u00b0", "");
        units(ANGLES, Angle::ofRad, "rad");
        units(FLOWS, Flow::ofCubicFeetPerMinute, "ft3/min", "ft\u00b3/min", "cfm");
        units(FLOWS, Flow::new, "m3/s", "m\u00b3/s");
        units(FLOWS, Flow::ofCubicMetresPerHour, "m3/h", "m\u00b3/h");
        units(FLOWS, litres -> new Flow(litres / 1000), "l/s");
        units(PRESSURES, Pressure::ofInchesOfWater, "inh2o", "in h2o", "in. w.g.", "in w.g.", "in wg", "in. wg",
                "\" w.g.", "\" wg", "in. w.c.", "in w.c.", "in wc", "in. wc", "\" w.c.", "\" wc");
        units(PRESSURES, Pressure::new, "pa");
        units(PRESSURES, kpa -> new Pressure(1000 * kpa), "kpa");
        units(PRESSURES, mbar -> new Pressure(100 * mbar), "mbar");
        units(PRESSURES, psi -> new Pressure(psi * Pressure.PA_PER_PSI), "psi");
        units(TEMPERATURES, Temperature::ofFahrenheit, "f", "\u00b0f", "deg f");
        units(TEMPERATURES, Temperature::ofCelsius, "c", "\u00b0c", "deg c");
        units(TEMPERATURES, Temperature::new, "k");
    }

    private QuantityParser() {
    }

    /**
     * Reads a length.
     *
     * @param text what was typed
     * @param bare the system whose unit a bare number has: inches or millimetres
     * @return the length
     * @throws UnreadableQuantityException if it can't be read
     */
    public static Length length(String text, UnitSystem bare) {
        String plain = NumberReader.plain(text);
        if (plain.length() > LONGEST_TEXT) {
            throw unreadable(text, "length", LENGTH_EXAMPLE);
        }
        Matcher remainder = WITH_REMAINDER.matcher(plain);
        if (remainder.matches()) {
            double extra = Double.parseDouble(remainder.group(2));
            return Length.ofInches(withoutRemainder(text, remainder.group(1), bare).inches() + extra);
        }
        return withoutRemainder(text, plain, bare);
    }

    private static Length withoutRemainder(String text, String plain, UnitSystem bare) {
        Matcher feet = FEET_AND_INCHES.matcher(plain.toLowerCase(Locale.ROOT));
        if (feet.matches()) {
            return feetAndInches(text, feet);
        }
        return read(text, plain, LENGTHS, bare == UnitSystem.INCH ? "in" : "mm", "length", LENGTH_EXAMPLE);
    }

    /**
     * Reads an angle; a bare number is degrees.
     *
     * @param text what was typed
     * @return the angle
     * @throws UnreadableQuantityException if it can't be read
     */
    public static Angle angle(String text) {
        return read(text, NumberReader.plain(text), ANGLES, "deg", "angle", "85 deg");
    }

    /**
     * Reads a volume flow.
     *
     * @param text what was typed
     * @param bare the system whose unit a bare number has: ft3/min or m3/h
     * @return the flow
     * @throws UnreadableQuantityException if it can't be read
     */
    public static Flow flow(String text, UnitSystem bare) {
        return read(text, NumberReader.plain(text), FLOWS, bare == UnitSystem.INCH ? "ft3/min" : "m3/h", "flow",
                "5000 ft3/min or 2.4 m3/s");
    }

    /**
     * Reads a pressure.
     *
     * @param text what was typed
     * @param bare the system whose unit a bare number has: inches of water or pascals
     * @return the pressure
     * @throws UnreadableQuantityException if it can't be read
     */
    public static Pressure pressure(String text, UnitSystem bare) {
        return read(text, NumberReader.plain(text), PRESSURES, bare == UnitSystem.INCH ? "inh2o" : "pa", "pressure",
                "1 inH2O or 250 Pa");
    }

    /**
     * Reads a temperature.
     *
     * @param text what was typed
     * @param bare the system whose unit a bare number has: Fahrenheit or Celsius
     * @return the temperature
     * @throws UnreadableQuantityException if it can't be read
     */
    public static Temperature temperature(String text, UnitSystem bare) {
        return read(text, NumberReader.plain(text), TEMPERATURES, bare == UnitSystem.INCH ? "f" : "c", "temperature",
                "70 F or 21 C");
    }

    /**
     * Reads a whole number.
     *
     * @param text what was typed
     * @return the number
     * @throws UnreadableQuantityException if it can't be read
     */
    public static int count(String text) {
        String plain = NumberReader.plain(text);
        if (!plain.matches("[+-]?\\d{1,9}")) {
            throw unreadable(text, "whole number", "6");
        }
        return Integer.parseInt(plain);
    }

    /**
     * Reads a plain number.
     *
     * @param text what was typed
     * @return the number
     * @throws UnreadableQuantityException if it can't be read
     */
    public static double number(String text) {
        Map<String, DoubleFunction<Double>> none = Map.of("", Double::valueOf);
        return read(text, NumberReader.plain(text), none, "", "number", "0.33");
    }

    private static Length feetAndInches(String text, Matcher match) {
        OptionalDouble feet = NumberReader.unsigned(match.group(2));
        OptionalDouble inches = NumberReader.unsigned(match.group(3).strip());
        if (feet.isEmpty() || inches.isEmpty()) {
            throw unreadable(text, "length", LENGTH_EXAMPLE);
        }
        double total = 12 * feet.getAsDouble() + inches.getAsDouble();
        return Length.ofInches(match.group(1).equals("-") ? -total : total);
    }

    private static <T> T read(String text, String plain, Map<String, DoubleFunction<T>> units, String bare, String what,
                              String example) {
        Matcher match = NUMBER_AND_UNIT.matcher(plain);
        if (!match.matches()) {
            throw unreadable(text, what, example);
        }
        OptionalDouble number = NumberReader.unsigned(match.group(2).strip());
        String unit = match.group(3).strip().toLowerCase(Locale.ROOT);
        DoubleFunction<T> of = units.get(unit.isEmpty() ? bare : unit);
        if (number.isEmpty() || of == null) {
            throw unreadable(text, what, example);
        }
        return of.apply(match.group(1).equals("-") ? -number.getAsDouble() : number.getAsDouble());
    }

    private static UnreadableQuantityException unreadable(String text, String what, String example) {
        return new UnreadableQuantityException("\"" + text + "\" can't be read as " + article(what) + what + "; type it like "
                + example);
    }

    private static String article(String what) {
        return what.startsWith("a") ? "an " : "a ";
    }

    private static <T> void units(Map<String, DoubleFunction<T>> units, DoubleFunction<T> of, String... names) {
        for (String name : names) {
            units.put(name, of);
        }
    }
}

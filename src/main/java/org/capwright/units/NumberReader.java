package org.capwright.units;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the numbers that people type: decimals, fractions, mixed numbers. Knows no units and no locale. */
final class NumberReader {
    private static final String DECIMAL = "\\d{0,9}\\.\\d{1,12}|\\d{1,9}\\.?";
    private static final Pattern PLAIN = Pattern.compile("(" + DECIMAL + ")(?:[eE]([+-]?\\d{1,2}))?");
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,9})(?:\\s+|\\s*-\\s*))?(\\d{1,6})\\s*/\\s*(\\d{1,6})");
    private static final String[][] SINGLE_SIGNS = {{"½", "1/2"}, {"¼", "1/4"}, {"¾", "3/4"}, {"⅛", "1/8"}, {"⅜", "3/8"},
        {"⅝", "5/8"}, {"⅞", "7/8"}, {"⅓", "1/3"}, {"⅔", "2/3"}};

    private NumberReader() {
    }

    /** Turns typographic signs into the plain ones: fractions, primes, minus, blanks. */
    static String plain(String text) {
        String plain = text;
        for (String[] sign : SINGLE_SIGNS) {
            plain = plain.replace(sign[0], " " + sign[1]);
        }
        return plain.replace('\u2032', '\'').replace('\u2019', '\'').replace('\u2033', '"').replace('\u201d', '"')
                .replace('\u2212', '-').replace('\u2044', '/').replaceAll("[\\s\\u00a0\\u202f\\u2009]+", " ").strip();
    }

    /** The number a text is, without a sign; empty where it is none. */
    static OptionalDouble unsigned(String text) {
        Matcher plain = PLAIN.matcher(text);
        if (plain.matches()) {
            return finite(Double.parseDouble(text));
        }
        Matcher fraction = FRACTION.matcher(text);
        if (!fraction.matches() || Integer.parseInt(fraction.group(3)) == 0) {
            return OptionalDouble.empty();
        }
        double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
        return finite(whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3)));
    }

    private static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}

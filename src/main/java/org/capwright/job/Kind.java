package org.capwright.job;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.capwright.units.Angle;
import org.capwright.units.Flow;
import org.capwright.units.Length;
import org.capwright.units.Pressure;
import org.capwright.units.QuantityParser;
import org.capwright.units.Temperature;
import org.capwright.units.UnitSystem;
import org.capwright.units.UnreadableQuantityException;

/**
 * How the text of an input is read.
 *
 * @param name the kind in plain words, such as {@code length}
 * @param example a text that can be read
 * @param numeric whether job files hold it as a bare number
 * @param words the words allowed, where it is a choice; else empty
 * @param reader turns a text into the value
 * @param <T> type of the value
 */
public record Kind<T>(String name, String example, boolean numeric, List<String> words, Reader<T> reader) {
    /** A length with its unit. */
    public static final Kind<Length> LENGTH = quantity("length", "24 1/2 in", QuantityParser::length);
    /** An angle; a bare number is degrees. */
    public static final Kind<Angle> ANGLE = quantity("angle", "85 deg", (text, bare) -> QuantityParser.angle(text));
    /** A volume flow. */
    public static final Kind<Flow> FLOW = quantity("flow", "5000 ft3/min", QuantityParser::flow);
    /** A pressure. */
    public static final Kind<Pressure> PRESSURE = quantity("pressure", "1 inH2O", QuantityParser::pressure);
    /** A temperature. */
    public static final Kind<Temperature> TEMPERATURE = quantity("temperature", "70 F", QuantityParser::temperature);
    /** A whole number. */
    public static final Kind<Integer> COUNT =
            new Kind<>("whole number", "6", true, List.of(), (text, bare) -> QuantityParser.count(text));
    /** A plain number. */
    public static final Kind<Double> NUMBER =
            new Kind<>("number", "0.33", true, List.of(), (text, bare) -> QuantityParser.number(text));
    /** Free text. */
    public static final Kind<String> TEXT = quantity("text", "any text", (text, bare) -> text);

    /** Keeps its own copy of the words. */
    public Kind {
        words = List.copyOf(words);
    }

    /**
     * Turns a text into a value.
     *
     * @param <T> type of the value
     */
    @FunctionalInterface
    public interface Reader<T> {
        /**
         * Reads a text.
         *
         * @param text what was typed
         * @param bare the unit system of a number without a unit
         * @return the value
         * @throws UnreadableQuantityException if it can't be read
         */
        T read(String text, UnitSystem bare);
    }

    /**
     * One of an enum's words.
     *
     * @param type the enum
     * @param <E> the enum
     * @return the kind
     */
    public static <E extends Enum<E> & Word> Kind<E> choice(Class<E> type) {
        return choice(List.of(type.getEnumConstants()), Word::word);
    }

    /**
     * One of a list of values, each with its word.
     *
     * @param values the values
     * @param word the word of a value
     * @param <E> type of the values
     * @return the kind
     */
    public static <E> Kind<E> choice(List<E> values, Function<E, String> word) {
        List<String> words = values.stream().map(word).toList();
        Reader<E> reader = (text, bare) -> values.get(indexOf(text, words));
        return new Kind<>("choice", words.get(0), false, words, reader);
    }

    /**
     * The words of a choice as a sentence reads them.
     *
     * @return such as {@code "butt", "lap", "lock"}
     */
    public String wordList() {
        return words.stream().map(word -> '"' + word + '"').collect(Collectors.joining(", "));
    }

    private static int indexOf(String text, List<String> words) {
        int index = words.indexOf(text.strip());
        if (index < 0) {
            String known = words.stream().map(word -> '"' + word + '"').collect(Collectors.joining(", "));
            String near = NearestName.of(text, words).map(word -> " (did you mean \"" + word + "\"?)").orElse("");
            throw new UnreadableQuantityException("\"" + text + "\" is not one of " + known + near);
        }
        return index;
    }

    private static <T> Kind<T> quantity(String name, String example, Reader<T> reader) {
        return new Kind<>(name, example, false, List.of(), reader);
    }
}

package org.capwright.job;

import java.util.Optional;
import org.capwright.units.Angle;
import org.capwright.units.Flow;
import org.capwright.units.Length;
import org.capwright.units.Pressure;
import org.capwright.units.Temperature;
import org.capwright.units.UnitSystem;

/**
 * The declaration of one input: the only place that knows its name, range, default and meaning.
 *
 * @param path where it stands in a job file, such as {@code leaves.cover}; {@code hood.beads[].width} in a list
 * @param label what a person calls it
 * @param kind how its text is read
 * @param least the smallest value allowed as text, where there is one
 * @param most the largest value allowed as text, where there is one
 * @param fallback what holds when it is left out, as text; {@link #AUTO} where a rule decides; empty where it must be typed
 * @param help one or two sentences for the person who has to decide it
 * @param <T> type of the value
 */
public record Input<T>(String path, String label, Kind<T> kind, Optional<String> least, Optional<String> most,
                       Optional<String> fallback, String help) {
    /** The word for "let the program decide by its rule". */
    public static final String AUTO = "auto";

    /** A length, still without range, default and help. */
    static Input<Length> length(String path, String label) {
        return bare(path, label, Kind.LENGTH);
    }

    /** An angle, still without range, default and help. */
    static Input<Angle> angle(String path, String label) {
        return bare(path, label, Kind.ANGLE);
    }

    /** A flow, still without range, default and help. */
    static Input<Flow> flow(String path, String label) {
        return bare(path, label, Kind.FLOW);
    }

    /** A pressure, still without range, default and help. */
    static Input<Pressure> pressure(String path, String label) {
        return bare(path, label, Kind.PRESSURE);
    }

    /** A temperature, still without range, default and help. */
    static Input<Temperature> temperature(String path, String label) {
        return bare(path, label, Kind.TEMPERATURE);
    }

    /** A whole number, still without range, default and help. */
    static Input<Integer> count(String path, String label) {
        return bare(path, label, Kind.COUNT);
    }

    /** A plain number, still without range, default and help. */
    static Input<Double> number(String path, String label) {
        return bare(path, label, Kind.NUMBER);
    }

    /** A free text, empty by default, still without help. */
    static Input<String> text(String path, String label) {
        return bare(path, label, Kind.TEXT).or("");
    }

    /** A choice among an enum's words, still without default and help. */
    static <E extends Enum<E> & Word> Input<E> choice(String path, String label, Class<E> type) {
        return bare(path, label, Kind.choice(type));
    }

    /** An input of a kind, still without range, default and help. */
    static <T> Input<T> bare(String path, String label, Kind<T> kind) {
        return new Input<>(path, label, kind, Optional.empty(), Optional.empty(), Optional.empty(), "");
    }

    /** The same input with a range, both ends allowed. */
    Input<T> between(String smallest, String largest) {
        return new Input<>(path, label, kind, Optional.of(smallest), Optional.of(largest), fallback, help);
    }

    /** The same input with a default. */
    Input<T> or(String text) {
        return new Input<>(path, label, kind, least, most, Optional.of(text), help);
    }

    /** The same input, decided by rule when it is left out or typed as {@code auto}. */
    Input<T> orAuto() {
        return or(AUTO);
    }

    /** The same input with its help. */
    Input<T> help(String text) {
        return new Input<>(path, label, kind, least, most, fallback, text);
    }

    /**
     * Whether a rule may decide it.
     *
     * @return true where {@code auto} may be typed
     */
    public boolean mayBeAuto() {
        return fallback.filter(AUTO::equals).isPresent();
    }

    /**
     * Whether it must be typed.
     *
     * @return true where there is neither default nor rule
     */
    public boolean required() {
        return fallback.isEmpty();
    }

    /**
     * The input of one element of a list.
     *
     * @param index which element, from 0
     * @return the same input with {@code []} in its path replaced by {@code [index]}
     */
    public Input<T> at(int index) {
        return new Input<>(path.replace("[]", "[" + index + "]"), label, kind, least, most, fallback, help);
    }

    /**
     * The last word of its path.
     *
     * @return such as {@code cover}
     */
    public String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /**
     * The range as a sentence reads it.
     *
     * @return such as {@code 0 in to 1 in}, the words of a choice, or the kind where there is no range
     */
    public String allowed() {
        if (!kind.words().isEmpty()) {
            return kind.wordList();
        }
        String range = least.flatMap(a -> most.map(b -> a + " to " + b)).orElse("any " + kind.name());
        return mayBeAuto() ? range + ", or " + AUTO : range;
    }

    /**
     * Reads a text as this input's value, without looking at its range.
     *
     * @param text what was typed
     * @param bare the unit system of a number without a unit
     * @return the value
     */
    T read(String text, UnitSystem bare) {
        return kind.reader().read(text, bare);
    }
}

package org.capwright.job;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.capwright.units.UnitSystem;

/** Compares a value with its input's range, and holds the values of defaults: what a declaration says is read once. */
final class Ranges {
    private static final Map<String, Object> READ = new ConcurrentHashMap<>();

    private Ranges() {
    }

    /** Whether a value lies in the input's range, both ends included. */
    static <T> boolean contains(Input<T> input, T value) {
        return compare(input, value, input.least()) >= 0 && compare(input, value, input.most()) <= 0;
    }

    /** Sign of value - bound; 0 where there is no bound. */
    @SuppressWarnings("unchecked") // an input with a range has a kind whose values compare with one another
    private static <T> int compare(Input<T> input, T value, Optional<String> bound) {
        return bound.map(text -> ((Comparable<T>) value).compareTo(declared(input, text))).orElse(0);
    }

    /** The value of a text of the declaration; such texts name their units. */
    @SuppressWarnings("unchecked") // the same kind reads the same text to the same type
    static <T> T declared(Input<T> input, String text) {
        return (T) READ.computeIfAbsent(input.path() + ' ' + text, key -> input.read(text, UnitSystem.INCH));
    }
}

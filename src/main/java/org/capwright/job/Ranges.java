package org.capwright.job;

import java.util.Optional;
import org.capwright.units.UnitSystem;

/** Compares a value with its input's range. */
final class Ranges {
    private Ranges() {
    }

    /** Whether a value lies in the input's range, both ends included. */
    static <T> boolean contains(Input<T> input, T value) {
        return compare(input, value, input.least()) >= 0 && compare(input, value, input.most()) <= 0;
    }

    /** Sign of value - bound; 0 where there is no bound. */
    @SuppressWarnings("unchecked") // an input with a range has a kind whose values compare with one another
    private static <T> int compare(Input<T> input, T value, Optional<String> bound) {
        return bound.map(text -> ((Comparable<T>) value).compareTo(input.read(text, UnitSystem.INCH))).orElse(0);
    }
}

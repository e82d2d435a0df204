package org.capwright.price;

import java.util.OptionalDouble;

/**
 * How long an operation takes.
 *
 * @param minutesEach minutes for one unit; empty where it is not known
 * @param setUpMinutes minutes to set up, once for all caps made together; empty where it is not known
 */
public record Rate(OptionalDouble minutesEach, OptionalDouble setUpMinutes) {
    /** Nothing is known of it. */
    public static final Rate UNKNOWN = new Rate(OptionalDouble.empty(), OptionalDouble.empty());

    /** Refuses negative minutes. */
    public Rate {
        if (minutesEach.orElse(0) < 0 || setUpMinutes.orElse(0) < 0) {
            throw new IllegalArgumentException("minutes must be at least 0");
        }
    }
}

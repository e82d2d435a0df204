package org.capwright.units;

/** The guard at the door of every quantity: infinities and NaN are refused, never carried along. */
public final class Finite {
    private Finite() {
    }

    /**
     * Lets a finite value pass.
     *
     * @param what what the value is, for the message
     * @param value the value
     * @return the same value
     * @throws IllegalArgumentException if it is infinite or NaN
     */
    public static double require(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a finite number, not " + value);
        }
        return value;
    }
}

package org.capwright.units;

/**
 * A length. Held in millimetres; an inch is 25.4 mm exactly.
 *
 * @param mm millimetres, finite
 */
public record Length(double mm) implements Comparable<Length> {
    /** Millimetres in an inch, exact by definition (international yard and pound agreement, 1959). */
    public static final double MM_PER_INCH = 25.4;
    /** No length at all. */
    public static final Length ZERO = new Length(0);

    /** Refuses a value that is not finite. */
    public Length {
        Finite.require("length", mm);
    }

    /**
     * A length given in millimetres.
     *
     * @param mm millimetres, finite
     * @return the length
     */
    public static Length ofMm(double mm) {
        return new Length(mm);
    }

    /**
     * A length given in inches.
     *
     * @param inches inches, finite
     * @return the length
     */
    public static Length ofInches(double inches) {
        return new Length(inches * MM_PER_INCH);
    }

    /**
     * The length in inches.
     *
     * @return inches
     */
    public double inches() {
        return mm / MM_PER_INCH;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(mm, other.mm);
    }
}

package org.capwright.units;

/**
 * An angle. Held in radians.
 *
 * @param rad radians, finite
 */
public record Angle(double rad) implements Comparable<Angle> {
    /** Refuses a value that is not finite. */
    public Angle {
        Finite.require("angle", rad);
    }

    /**
     * An angle given in radians.
     *
     * @param rad radians, finite
     * @return the angle
     */
    public static Angle ofRad(double rad) {
        return new Angle(rad);
    }

    /**
     * An angle given in degrees.
     *
     * @param degrees degrees, finite
     * @return the angle
     */
    public static Angle ofDegrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    /**
     * The angle in degrees.
     *
     * @return degrees
     */
    public double degrees() {
        return Math.toDegrees(rad);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(rad, other.rad);
    }
}

package org.capwright.units;

/**
 * A volume flow. Held in cubic metres a second.
 *
 * @param m3PerS cubic metres a second, finite
 */
public record Flow(double m3PerS) implements Comparable<Flow> {
    /** Cubic metres a second in a cubic foot a minute, exact: 0.3048^3 / 60. */
    public static final double M3_PER_S_PER_FT3_PER_MIN = 0.3048 * 0.3048 * 0.3048 / 60;

    /** Refuses a value that is not finite. */
    public Flow {
        Finite.require("flow", m3PerS);
    }

    /**
     * A flow in cubic feet a minute.
     *
     * @param value finite
     * @return the quantity
     */
    public static Flow ofCubicFeetPerMinute(double value) {
        return new Flow(value * M3_PER_S_PER_FT3_PER_MIN);
    }


    /**
     * A flow in cubic metres an hour.
     *
     * @param value finite
     * @return the quantity
     */
    public static Flow ofCubicMetresPerHour(double value) {
        return new Flow(value / 3600);
    }


    /**
     * The value in cubic feet a minute.
     *
     * @return cubic feet a minute
     */
    public double cubicFeetPerMinute() {
        return m3PerS / M3_PER_S_PER_FT3_PER_MIN;
    }

    @Override
    public int compareTo(Flow other) {
        return Double.compare(m3PerS, other.m3PerS);
    }
}

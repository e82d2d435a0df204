package org.capwright.units;

/**
 * A pressure or a difference of pressures. Held in pascals.
 *
 * @param pa pascals, finite
 */
public record Pressure(double pa) implements Comparable<Pressure> {
    /** Pascals in an inch of water, conventional (water of 1000 kg/m3, g = 9.80665 m/s2): NIST SP 811 gives 249.0889. */
    public static final double PA_PER_INCH_OF_WATER = 25.4 * 9.80665;
    /** Pascals in a pound-force a square inch, from 4.4482216152605 N and 25.4 mm, both exact. */
    public static final double PA_PER_PSI = 4.4482216152605 / (0.0254 * 0.0254);

    /** Refuses a value that is not finite. */
    public Pressure {
        Finite.require("pressure", pa);
    }

    /**
     * A pressure in inches of water.
     *
     * @param value finite
     * @return the quantity
     */
    public static Pressure ofInchesOfWater(double value) {
        return new Pressure(value * PA_PER_INCH_OF_WATER);
    }


    /**
     * The value in inches of water.
     *
     * @return inches of water
     */
    public double inchesOfWater() {
        return pa / PA_PER_INCH_OF_WATER;
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(pa, other.pa);
    }
}

package org.capwright.units;

/**
 * A temperature. Held in kelvins.
 *
 * @param kelvin kelvins, finite
 */
public record Temperature(double kelvin) implements Comparable<Temperature> {

    /** Refuses a value that is not finite. */
    public Temperature {
        Finite.require("temperature", kelvin);
    }

    /**
     * A temperature in degrees Fahrenheit.
     *
     * @param value finite
     * @return the quantity
     */
    public static Temperature ofFahrenheit(double value) {
        return new Temperature((value + 459.67) / 1.8);
    }


    /**
     * A temperature in degrees Celsius.
     *
     * @param value finite
     * @return the quantity
     */
    public static Temperature ofCelsius(double value) {
        return new Temperature(value + 273.15);
    }


    /**
     * The value in degrees Celsius.
     *
     * @return degrees Celsius
     */
    public double celsius() {
        return kelvin - 273.15;
    }


    /**
     * The value in degrees Fahrenheit.
     *
     * @return degrees Fahrenheit
     */
    public double fahrenheit() {
        return kelvin * 1.8 - 459.67;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvin, other.kelvin);
    }
}

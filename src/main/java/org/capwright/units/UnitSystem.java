package org.capwright.units;

/** The two ways in which shops write numbers. */
public enum UnitSystem {
    /** Inches, ft3/min, inches of water, degrees Fahrenheit. */
    INCH,
    /** Millimetres, m3/h, pascals, degrees Celsius. */
    METRIC
}

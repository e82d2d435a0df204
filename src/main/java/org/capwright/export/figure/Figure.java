package org.capwright.export.figure;

/**
 * A named number.
 *
 * @param id its name, such as {@code leaf.1.mass}
 * @param value its value, unrounded
 * @param unit mm, mm2, deg, kg, or empty for a plain number
 */
public record Figure(String id, double value, String unit) {
}

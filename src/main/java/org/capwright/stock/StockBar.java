package org.capwright.stock;

import java.util.OptionalDouble;
import org.capwright.metal.Metal;

/**
 * A bar that the shop can buy.
 *
 * @param metal which metal
 * @param diameterMm diameter
 * @param lengthMm length
 * @param price what one costs; empty where it is not known
 */
public record StockBar(Metal metal, double diameterMm, double lengthMm, OptionalDouble price) {
    /** Refuses what is no bar. */
    public StockBar {
        if (!(diameterMm > 0 && lengthMm > 0) || price.orElse(0) < 0) {
            throw new IllegalArgumentException("a bar's diameter and length must be over 0, its price at least 0");
        }
    }

    /**
     * Mass of one.
     *
     * @return kg
     */
    public double massKg() {
        return Math.PI / 4 * diameterMm * diameterMm * lengthMm * 1e-9 * metal.densityKgPerM3();
    }
}

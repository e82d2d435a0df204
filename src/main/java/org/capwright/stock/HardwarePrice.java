package org.capwright.stock;

import java.util.OptionalDouble;

/**
 * What a piece of hardware costs.
 *
 * @param kind what it is
 * @param sizeMm its size; 0 where one price is for every size
 * @param price of one, or of a metre of sealant; empty where it is not known
 */
public record HardwarePrice(HardwareKind kind, double sizeMm, OptionalDouble price) {
    private static final double SAME_MM = 0.05;

    /** Refuses what is no price. */
    public HardwarePrice {
        if (!(sizeMm >= 0) || price.orElse(0) < 0) {
            throw new IllegalArgumentException("a size and a price must be at least 0");
        }
    }

    /** Whether it is for this. */
    boolean suits(HardwareKind what, double size) {
        return kind == what && (sizeMm == 0 || Math.abs(sizeMm - size) < SAME_MM);
    }
}

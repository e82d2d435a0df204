package org.capwright.stock.bar;

/**
 * A length of bar that can be bought.
 *
 * @param lengthMm length
 * @param cost what one costs; only the relation to other lengths matters here
 */
public record BarSize(double lengthMm, double cost) {
    /** Refuses what is no bar. */
    public BarSize {
        if (!(lengthMm > 0 && cost > 0)) {
            throw new IllegalArgumentException("a bar's length and cost must be over 0");
        }
    }
}

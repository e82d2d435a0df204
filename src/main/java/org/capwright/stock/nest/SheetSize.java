package org.capwright.stock.nest;

/**
 * A size of sheet that may be cut up.
 *
 * @param name its name
 * @param lengthMm along the grain
 * @param widthMm across the grain
 * @param cost what one costs; only the relation to other sizes matters here
 * @param available how many there are; {@link Integer#MAX_VALUE} where more can be bought
 * @param first whether it is to be used up before any that is not
 */
public record SheetSize(String name, double lengthMm, double widthMm, double cost, int available, boolean first) {
    /** Refuses what is no sheet. */
    public SheetSize {
        if (!(lengthMm > 0 && widthMm > 0 && cost > 0 && available > 0) || Double.isInfinite(lengthMm * widthMm * cost)) {
            throw new IllegalArgumentException("length, width, cost and number of a sheet must be over 0: " + name);
        }
    }

    /**
     * Area.
     *
     * @return mm2
     */
    public double areaMm2() {
        return lengthMm * widthMm;
    }
}

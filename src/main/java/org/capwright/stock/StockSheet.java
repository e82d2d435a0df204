package org.capwright.stock;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.capwright.part.Sheet;

/**
 * A size of sheet that the shop keeps or can buy, or a remnant.
 *
 * @param sheet metal and thickness
 * @param lengthMm along the grain
 * @param widthMm across the grain
 * @param price what one costs; empty where it is not known
 * @param count how many there are; empty where more can be bought
 * @param remnant whether it is left over from other work
 */
public record StockSheet(Sheet sheet, double lengthMm, double widthMm, Optional<SheetPrice> price, OptionalInt count,
        boolean remnant) {
    /** Refuses what is no sheet. */
    public StockSheet {
        if (!(lengthMm > 0 && widthMm > 0) || Double.isInfinite(lengthMm * widthMm)) {
            throw new IllegalArgumentException("a sheet's length and width must be over 0");
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

    /**
     * Mass of one: thickness times density.
     *
     * @return kg
     */
    public double massKg() {
        return sheet.massKg(areaMm2());
    }

    /**
     * Price of one.
     *
     * @return in the stock's currency; empty where it is not known
     */
    public OptionalDouble priceEach() {
        return price.map(one -> OptionalDouble.of(one.of(massKg()))).orElse(OptionalDouble.empty());
    }
}

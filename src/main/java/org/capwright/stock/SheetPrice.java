package org.capwright.stock;

import java.util.Locale;
import org.capwright.units.Finite;

/**
 * What a sheet costs.
 *
 * @param per for what
 * @param amount in the stock's currency, at least 0
 */
public record SheetPrice(Per per, double amount) {
    /** What a price is for. */
    public enum Per {
        /** One sheet. */
        SHEET,
        /** One kilogram of sheet. */
        KG;

        /**
         * Its word in stock files.
         *
         * @return such as {@code sheet}
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Refuses what is no price. */
    public SheetPrice {
        Finite.require("price", amount);
        if (amount < 0) {
            throw new IllegalArgumentException("a price must be at least 0, not " + amount);
        }
    }

    /**
     * The price of a sheet.
     *
     * @param massKg its mass
     * @return in the stock's currency
     */
    public double of(double massKg) {
        return per == Per.SHEET ? amount : amount * massKg;
    }
}

package org.capwright.export;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Prints money.
 *
 * @param currency such as {@code USD}
 */
public record Money(String currency) {
    /**
     * An amount.
     *
     * @param amount what to print
     * @return such as {@code USD 1,234.50}, or {@code missing}
     */
    public String of(OptionalDouble amount) {
        return amount.isPresent() ? currency + " " + plain(amount) : "missing";
    }

    /**
     * An amount without its currency.
     *
     * @param amount what to print
     * @return such as {@code 1,234.50}, or {@code missing}
     */
    public String plain(OptionalDouble amount) {
        return amount.isPresent() ? String.format(Locale.ROOT, "%,.2f", amount.getAsDouble()) : "missing";
    }
}

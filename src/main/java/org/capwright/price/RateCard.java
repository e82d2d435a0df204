package org.capwright.price;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * What the shop reckons with.
 *
 * @param note what stands at its head; a sample says here that its rates are invented
 * @param labourPerHour in the stock's currency; empty where it is not known
 * @param overhead added to material, hardware and labour, as a share of labour; empty where it is not known
 * @param margin added to everything so far, as a share of it; empty where it is not known
 * @param taxName such as {@code sales tax}
 * @param tax added at the end, as a share; empty where it is not known
 * @param remnantCredit share of its price at which a usable remnant goes back to stock; empty where it is not credited
 * @param rates minutes by operation
 */
public record RateCard(String note, OptionalDouble labourPerHour, OptionalDouble overhead, OptionalDouble margin, String taxName,
                       OptionalDouble tax, OptionalDouble remnantCredit, Map<Operation, Rate> rates) {
    /** Keeps its own copy; refuses negative rates. */
    public RateCard {
        rates = Map.copyOf(rates);
        if (labourPerHour.orElse(0) < 0 || overhead.orElse(0) < 0 || margin.orElse(0) < 0 || tax.orElse(0) < 0) {
            throw new IllegalArgumentException("rates must be at least 0");
        }
        if (remnantCredit.isPresent() && !(remnantCredit.getAsDouble() >= 0 && remnantCredit.getAsDouble() <= 1)) {
            throw new IllegalArgumentException("the credit for remnants must be 0 to 1");
        }
    }

    /**
     * The rate of an operation.
     *
     * @param operation which
     * @return its minutes; unknown where the card does not have it
     */
    public Rate rate(Operation operation) {
        return rates.getOrDefault(operation, Rate.UNKNOWN);
    }
}

package org.capwright.price;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A line of a price.
 *
 * @param name what it is for
 * @param quantity how much of it
 * @param unit what the quantity is counted in
 * @param each price of one unit; empty where it is missing
 * @param amount quantity times that, rounded to hundredths; empty where it is missing
 * @param note how it came about, may be empty
 */
public record Line(String name, double quantity, String unit, OptionalDouble each, OptionalDouble amount, String note) {
    /** A line of so many at a price. */
    static Line of(String name, double quantity, String unit, OptionalDouble each, String note) {
        return new Line(name, quantity, unit, each, each.isPresent() ? rounded(quantity * each.getAsDouble()) : each, note);
    }

    /** A line that is a share of something. */
    static Line share(String name, OptionalDouble share, OptionalDouble of, String note) {
        OptionalDouble amount = share.isPresent() && of.isPresent() ? rounded(share.getAsDouble() * of.getAsDouble())
                : OptionalDouble.empty();
        return new Line(name, share.orElse(0) * 100, "%", OptionalDouble.empty(), amount, note);
    }

    /**
     * Whether its amount is not known.
     *
     * @return true if so
     */
    public boolean missing() {
        return amount.isEmpty();
    }

    /** The sum of lines; empty where any is missing. */
    static OptionalDouble sum(List<Line> lines) {
        return lines.stream().anyMatch(Line::missing) ? OptionalDouble.empty()
                : rounded(lines.stream().mapToDouble(line -> line.amount().getAsDouble()).sum());
    }

    /** Rounded to hundredths. */
    static OptionalDouble rounded(double amount) {
        return OptionalDouble.of(Math.round(amount * 100) / 100.0);
    }
}

package org.capwright.price;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.capwright.stock.StockPlan;

/**
 * The price of some caps made together.
 *
 * @param caps how many
 * @param plan what they are cut from
 * @param currency such as {@code USD}
 * @param note what stands at the heads of stock and rates; samples say here that they are
 * @param material sheets and bars
 * @param hardware bushings, rivets, fasteners, sealant
 * @param labour operations and set-ups
 * @param overhead overhead
 * @param margin margin
 * @param tax tax
 */
public record Price(int caps, StockPlan plan, String currency, String note, List<Line> material, List<Line> hardware,
        List<Line> labour,
                    Line overhead, Line margin, Line tax) {
    /** Keeps its own copies. */
    public Price {
        material = List.copyOf(material);
        hardware = List.copyOf(hardware);
        labour = List.copyOf(labour);
    }

    /**
     * Sheets and bars.
     *
     * @return the sum; empty where a price is missing
     */
    public OptionalDouble materialTotal() {
        return Line.sum(material);
    }

    /**
     * Hardware.
     *
     * @return the sum; empty where a price is missing
     */
    public OptionalDouble hardwareTotal() {
        return Line.sum(hardware);
    }

    /**
     * Labour.
     *
     * @return the sum; empty where a rate is missing
     */
    public OptionalDouble labourTotal() {
        return Line.sum(labour);
    }

    /**
     * Everything but tax.
     *
     * @return the sum; empty where anything is missing
     */
    public OptionalDouble net() {
        return Line.sum(Stream.of(material, hardware, labour, List.of(overhead, margin)).flatMap(List::stream).toList());
    }

    /**
     * Everything.
     *
     * @return the sum for all caps; empty where anything is missing
     */
    public OptionalDouble total() {
        return Line.sum(all());
    }

    /**
     * Price of one of the caps, tax included.
     *
     * @return the total by the number of caps; empty where anything is missing
     */
    public OptionalDouble each() {
        return total().isPresent() ? Line.rounded(total().getAsDouble() / caps) : OptionalDouble.empty();
    }

    /**
     * What is not known.
     *
     * @return names of the lines without an amount; those that only follow from others are left out
     */
    public List<String> missing() {
        List<String> names = new ArrayList<>(Stream.of(material, hardware, labour).flatMap(List::stream).filter(Line::missing)
                .map(Line::name).toList());
        if (names.isEmpty()) {
            Stream.of(overhead, margin, tax).filter(Line::missing).map(Line::name).forEach(names::add);
        }
        return names;
    }

    private List<Line> all() {
        List<Line> all = new ArrayList<>(material);
        all.addAll(hardware);
        all.addAll(labour);
        all.addAll(List.of(overhead, margin, tax));
        return all;
    }
}

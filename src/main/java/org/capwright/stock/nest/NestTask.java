package org.capwright.stock.nest;

import java.util.List;

/**
 * Pieces of one metal and thickness, and the sheets that they may be cut from.
 *
 * @param demands what to cut
 * @param sizes sheets to cut it from
 * @param rules what to keep to
 */
public record NestTask(List<Demand> demands, List<SheetSize> sizes, NestRules rules) {
    /** Keeps its own copies. */
    public NestTask {
        demands = List.copyOf(demands);
        sizes = List.copyOf(sizes);
    }

    /**
     * How many pieces there are in all.
     *
     * @return the number
     */
    public int pieces() {
        return demands.stream().mapToInt(Demand::quantity).sum();
    }
}

package org.capwright.stock.nest;

import java.util.List;
import java.util.Optional;
import org.capwright.geom.Bounds;

/**
 * What came of nesting a task.
 *
 * @param task what was asked
 * @param sheets the sheets, each checked with JTS
 * @param unplaced pieces that found no place: too large for every size, or no sheets were left
 * @param bound what no layout can do better than; of the pieces that fit
 * @param settled whether the search came to its own end; false where the clock or the user cut it short, so that another run may
 *        give another layout
 */
public record Nest(NestTask task, List<SheetLayout> sheets, List<Demand> unplaced, Optional<NestBound> bound, boolean settled) {
    private static final double COST_ROUNDING = 1e-9;

    /** Keeps its own copies. */
    public Nest {
        sheets = List.copyOf(sheets);
        unplaced = List.copyOf(unplaced);
    }

    /**
     * Cost of all sheets, in the unit of the sizes' costs.
     *
     * @return the sum
     */
    public double cost() {
        return sheets.stream().mapToDouble(sheet -> sheet.size().cost()).sum();
    }

    /**
     * Share of the sheets that becomes pieces.
     *
     * @return 0 to 1; 0 where there is no sheet
     */
    public double use() {
        double area = areaMm2();
        return area == 0 ? 0 : sheets.stream().mapToDouble(SheetLayout::usedMm2).sum() / area;
    }

    /**
     * Area of all sheets.
     *
     * @return mm2
     */
    public double areaMm2() {
        return sheets.stream().mapToDouble(sheet -> sheet.size().areaMm2()).sum();
    }

    /**
     * The sheet with the largest usable remnant.
     *
     * @return the sheet; empty where no remnant is usable
     */
    public Optional<SheetLayout> largestRemnant() {
        return sheets.stream().filter(sheet -> sheet.remnant().isPresent())
                .max((a, b) -> Double.compare(a.remnantMm2(), b.remnantMm2()));
    }

    /**
     * The largest usable remnant.
     *
     * @return where it lies on its sheet
     */
    public Optional<Bounds> remnant() {
        return largestRemnant().flatMap(SheetLayout::remnant);
    }

    /**
     * How it compares with its bound, in words.
     *
     * @return such as {@code 3 sheets; no layout can use fewer than 3 (area with spacing)}
     */
    public String words() {
        String number = sheets.size() + (sheets.size() == 1 ? " sheet" : " sheets");
        return bound.map(least -> number + "; no layout can use fewer than " + least.sheets() + " (" + least.reason() + ")"
                + (cost() <= least.cost() * (1 + COST_ROUNDING) ? ", none can cost less" : "")).orElse(number);
    }
}

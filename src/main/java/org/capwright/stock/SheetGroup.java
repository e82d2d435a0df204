package org.capwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.capwright.blank.Blank;
import org.capwright.part.Sheet;
import org.capwright.stock.nest.Demand;
import org.capwright.stock.nest.Nest;
import org.capwright.stock.nest.NestTask;
import org.capwright.stock.nest.Piece;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.stock.nest.SheetSize;

/**
 * All blanks of one metal and thickness, nested.
 *
 * @param sheet metal and thickness
 * @param stock sheets that serve, in the order of the nest's sizes
 * @param nest what lies where
 */
public record SheetGroup(Sheet sheet, List<StockSheet> stock, Nest nest) {
    /** Keeps its own copy. */
    public SheetGroup {
        stock = List.copyOf(stock);
    }

    /** The task of a group of blanks: costs are prices where they are known, and about the others'. */
    static NestTask task(Sheet sheet, List<StockJob> jobs, ShopStock shop) {
        List<Demand> demands = new ArrayList<>();
        for (StockJob job : jobs) {
            for (Blank blank : job.blanks()) {
                if (same(blank.sheet(), sheet)) {
                    demands.add(new Demand(Piece.of(job.name(), blank, shop.keepGrain()), blank.quantity() * job.caps()));
                }
            }
        }
        List<StockSheet> stock = shop.sheetsFor(sheet);
        List<SheetSize> sizes = new ArrayList<>();
        for (StockSheet one : stock) {
            sizes.add(size(one, sizes.size() + 1, rate(stock), shop.remnantsFirst()));
        }
        return new NestTask(demands, sizes, shop.rules());
    }

    /** The number makes sizes that are alike different. */
    private static SheetSize size(StockSheet one, int number, double rate, boolean remnantsFirst) {
        String name = String.format(Locale.ROOT, "%s %d", one.remnant() ? "remnant" : "sheet", number);
        double cost = one.priceEach().orElse(one.areaMm2() * rate);
        // a gift still takes part in the choice
        return new SheetSize(name, one.lengthMm(), one.widthMm(), Math.max(cost, 1e-6), one.count().orElse(Integer.MAX_VALUE),
                one.remnant() && remnantsFirst);
    }

    /** Mean price per area of those with a price; by the square metre where none has one. */
    private static double rate(List<StockSheet> stock) {
        return stock.stream().filter(one -> one.priceEach().isPresent())
                .mapToDouble(one -> one.priceEach().getAsDouble() / one.areaMm2()).average().orElse(1e-6);
    }

    /** Whether two thicknesses are cut from the same sheets. */
    static boolean same(Sheet a, Sheet b) {
        return a.metal() == b.metal() && Math.abs(a.thicknessMm() - b.thicknessMm()) < 1e-3;
    }

    /**
     * The stock sheet of a layout.
     *
     * @param layout one of the nest's
     * @return which sheet it is cut from
     */
    public StockSheet stockOf(SheetLayout layout) {
        return stock.get(nest.task().sizes().indexOf(layout.size()));
    }

    /**
     * Price of all sheets.
     *
     * @return in the stock's currency; empty where the price of any is not known
     */
    public OptionalDouble price() {
        double sum = 0;
        for (SheetLayout layout : nest.sheets()) {
            OptionalDouble each = stockOf(layout).priceEach();
            if (each.isEmpty()) {
                return each;
            }
            sum += each.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    /**
     * Mass of all sheets.
     *
     * @return kg
     */
    public double boughtKg() {
        return nest.sheets().stream().mapToDouble(layout -> stockOf(layout).massKg()).sum();
    }

    /**
     * Mass of what is cut from them.
     *
     * @return kg
     */
    public double usedKg() {
        return nest.sheets().stream().mapToDouble(layout -> stockOf(layout).sheet().massKg(layout.usedMm2())).sum();
    }

    /**
     * Mass of the usable remnants.
     *
     * @return kg
     */
    public double remnantKg() {
        return nest.sheets().stream().mapToDouble(layout -> stockOf(layout).sheet().massKg(layout.remnantMm2())).sum();
    }
}

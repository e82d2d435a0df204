package org.capwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import org.capwright.metal.Metal;
import org.capwright.part.PivotRod;
import org.capwright.stock.bar.BarPlan;
import org.capwright.stock.bar.BarSize;
import org.capwright.stock.bar.CutBar;

/**
 * All rods of one metal and diameter, cut from bars.
 *
 * @param metal which metal
 * @param diameterMm diameter
 * @param stock bars that serve
 * @param plan which rod comes from which bar
 * @param kerfMm what a cut takes
 */
public record BarGroup(Metal metal, double diameterMm, List<StockBar> stock, BarPlan plan, double kerfMm) {
    private static final double SAME_MM = 0.05;

    /** Keeps its own copy. */
    public BarGroup {
        stock = List.copyOf(stock);
    }

    /** The bars of some jobs, by metal and diameter. */
    static List<BarGroup> of(List<StockJob> jobs, ShopStock shop, BooleanSupplier cancelled) {
        List<BarGroup> groups = new ArrayList<>();
        for (StockJob job : jobs) {
            for (PivotRod rod : job.cap().rods()) {
                if (groups.stream().noneMatch(group -> group.holds(rod))) {
                    groups.add(of(rod.metal(), rod.diameterMm(), jobs, shop, cancelled));
                }
            }
        }
        return groups;
    }

    private static BarGroup of(Metal metal, double diameterMm, List<StockJob> jobs, ShopStock shop, BooleanSupplier cancelled) {
        List<StockBar> stock = shop.bars().stream()
                .filter(bar -> bar.metal() == metal && Math.abs(bar.diameterMm() - diameterMm) < SAME_MM).toList();
        BarGroup empty = new BarGroup(metal, diameterMm, stock, new BarPlan(List.of(), List.of(), true), shop.kerfMm());
        List<Double> pieces = new ArrayList<>();
        for (StockJob job : jobs) {
            for (PivotRod rod : job.cap().rods()) {
                for (int i = 0; empty.holds(rod) && i < 2 * job.caps(); i++) {
                    pieces.add(rod.lengthMm());
                }
            }
        }
        List<BarSize> sizes = sizes(stock);
        return new BarGroup(metal, diameterMm, stock, BarPlan.of(pieces, sizes, shop.kerfMm(), cancelled), shop.kerfMm());
    }

    /** Sizes in the order of the stock: by price where all prices are known, else by length. */
    private static List<BarSize> sizes(List<StockBar> stock) {
        boolean priced = stock.stream().allMatch(bar -> bar.price().isPresent());
        return stock.stream().map(bar -> new BarSize(bar.lengthMm(), priced ? Math.max(bar.price().getAsDouble(), 1e-6)
                : bar.lengthMm())).toList();
    }

    private boolean holds(PivotRod rod) {
        return rod.metal() == metal && Math.abs(rod.diameterMm() - diameterMm) < SAME_MM;
    }

    /**
     * The stock bar that a cut bar is.
     *
     * @param bar one of the plan's
     * @return which bar it is cut from
     */
    public StockBar stockOf(CutBar bar) {
        return stock.get(sizes(stock).indexOf(bar.size()));
    }

    /**
     * Price of all bars.
     *
     * @return in the stock's currency; empty where the price of any is not known, or a rod comes from none
     */
    public OptionalDouble price() {
        double sum = 0;
        for (CutBar bar : plan.bars()) {
            if (stockOf(bar).price().isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += stockOf(bar).price().getAsDouble();
        }
        return plan.tooLongMm().isEmpty() ? OptionalDouble.of(sum) : OptionalDouble.empty();
    }

    /**
     * Mass of all bars.
     *
     * @return kg
     */
    public double boughtKg() {
        return plan.bars().stream().mapToDouble(bar -> stockOf(bar).massKg()).sum();
    }
}

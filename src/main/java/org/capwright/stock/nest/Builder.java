package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

/** Fills sheet after sheet with pieces in a given order; each time it takes the size that promises the least cost in all. */
final class Builder {
    /** What share of a sheet good layouts use, about; only the choice between sizes rests on it. */
    private static final double GOOD_USE = 0.85;

    private final NestTask task;
    private final Shapes shapes;

    Builder(NestTask task, Shapes shapes) {
        this.task = task;
        this.shapes = shapes;
    }

    /** What became of an order; not whole where it was stopped, then with what lies already. */
    record Built(List<Fill> sheets, List<Integer> unplaced, boolean whole) {
    }

    /** Which sizes to take while they take anything, and how to fill them. */
    record Choice(List<SheetSize> preferred, Fill.Maker maker) {
    }

    /** Sheets for an order of demands, beside sheets that stay as they are. */
    Built build(List<Integer> order, List<Fill> kept, Choice choice, BooleanSupplier stop) {
        Map<SheetSize, Integer> used = new HashMap<>();
        kept.forEach(fill -> used.merge(fill.size(), 1, Integer::sum));
        List<Fill> sheets = new ArrayList<>();
        List<Integer> left = order;
        while (!left.isEmpty()) {
            Fill best = choose(left, used, choice.preferred(), choice.maker(), stop);
            best = best == null ? choose(left, used, task.sizes(), choice.maker(), stop) : best;
            if (best == null) {
                break;
            }
            sheets.add(best);
            used.merge(best.size(), 1, Integer::sum);
            left = without(left, best);
        }
        return new Built(sheets, left, left.isEmpty() || !stop.getAsBoolean());
    }

    private Fill choose(List<Integer> left, Map<SheetSize, Integer> used, List<SheetSize> from, Fill.Maker maker,
            BooleanSupplier stop) {
        List<SheetSize> sizes = from.stream().filter(size -> used.getOrDefault(size, 0) < size.available()).toList();
        Fill best = cheapest(sizes.stream().filter(SheetSize::first).toList(), left, maker, stop);
        return best == null ? cheapest(sizes.stream().filter(size -> !size.first()).toList(), left, maker, stop) : best;
    }

    private Fill cheapest(List<SheetSize> sizes, List<Integer> left, Fill.Maker maker, BooleanSupplier stop) {
        Fill best = null;
        double least = Double.MAX_VALUE;
        for (SheetSize size : sizes) {
            Fill fill = filled(maker.begin(size), left, stop);
            double cost = fill.puts().isEmpty() ? Double.MAX_VALUE : promise(fill, left);
            if (cost < least) {
                least = cost;
                best = fill;
            }
        }
        return best;
    }

    private static Fill filled(Fill fill, List<Integer> left, BooleanSupplier stop) {
        Set<Integer> failed = new HashSet<>();
        for (int demand : left) {
            if (stop.getAsBoolean()) {
                break;
            }
            if (!failed.contains(demand) && !fill.add(demand)) {
                failed.add(demand);
            }
        }
        return fill;
    }

    /** Cost of this sheet and about what the rest will cost. */
    private double promise(Fill fill, List<Integer> left) {
        double all = left.stream().mapToDouble(shapes::areaMm2).sum();
        double rest = all - fill.puts().stream().mapToDouble(put -> shapes.areaMm2(put.demand())).sum();
        if (fill.puts().size() == left.size()) {
            return fill.size().cost();
        }
        double rate = task.sizes().stream().mapToDouble(size -> size.cost() / size.areaMm2()).min().orElseThrow() / GOOD_USE;
        double one = task.sizes().stream().mapToDouble(SheetSize::cost).min().orElseThrow();
        return fill.size().cost() + Math.max(one, rest * rate);
    }

    private static List<Integer> without(List<Integer> left, Fill fill) {
        Map<Integer, Integer> gone = new HashMap<>();
        fill.puts().forEach(put -> gone.merge(put.demand(), 1, Integer::sum));
        List<Integer> rest = new ArrayList<>();
        for (int demand : left) {
            if (gone.getOrDefault(demand, 0) > 0) {
                gone.merge(demand, -1, Integer::sum);
            } else {
                rest.add(demand);
            }
        }
        return rest;
    }
}

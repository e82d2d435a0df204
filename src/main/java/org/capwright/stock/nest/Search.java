package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;

/** Tries orders: a few that usually do well, then a part of the best layout taken up and laid down again in another order. */
final class Search {
    private static final double SHUFFLED = 0.15;
    private static final int DOWN_ONE_IN = 8;
    private static final int IDLE = 20;
    private static final int IDLE_MOST = 120;

    private final NestTask task;
    private final Shapes shapes;
    private final Builder builder;
    private final Effort effort;
    private final Random random;
    private final boolean rectangles;
    private final Consumer<List<Fill>> better;
    private State current;
    private State best;

    Search(NestTask task, Effort effort, long seed, Consumer<List<Fill>> better) {
        this.task = task;
        this.shapes = Shapes.outer(task);
        this.builder = new Builder(task, shapes);
        this.effort = effort;
        this.random = new Random(seed);
        this.better = better;
        this.rectangles = task.demands().stream().allMatch(demand -> demand.piece().rectangle());
    }

    /** A layout and how good it is. */
    private record State(List<Fill> sheets, List<Integer> unplaced, Score score) {
    }

    /** Searches until the effort is spent, or until the cost is at its bound and the remnant has not grown for long. */
    void run(double costBound) {
        firstOrders();
        int idle = 0;
        int patience = Math.min(IDLE_MOST, IDLE + 2 * task.pieces());
        while (!effort.over() && !best.sheets().isEmpty() && (best.score().cost() > costBound * (1 + 1e-9) || idle < patience)) {
            idle = again() ? 0 : idle + 1;
        }
    }

    List<Fill> sheets() {
        return best.sheets();
    }

    List<Integer> unplaced() {
        return best.unplaced();
    }

    private void firstOrders() {
        List<ToDoubleFunction<Integer>> keys = List.of(shapes::areaMm2, demand -> Math.max(form(demand).width, form(demand)
                .height),
                demand -> form(demand).height, demand -> form(demand).width + form(demand).height);
        for (ToDoubleFunction<Integer> key : keys) {
            for (Fill.Maker maker : makers()) {
                if (best == null) {
                    Builder.Built built = builder.build(sorted(all(), key), List.of(), new Builder.Choice(task.sizes(), maker),
                            effort::cancelled);
                    take(built.sheets(), built.unplaced());
                } else if (!effort.over()) {
                    takeWhole(List.of(), builder.build(sorted(all(), key), List.of(), new Builder.Choice(task.sizes(), maker),
                            effort::over));
                }
            }
        }
    }

    private Form form(int demand) {
        return shapes.forms(demand).get(0);
    }

    private List<Integer> all() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < task.demands().size(); i++) {
            all.addAll(Collections.nCopies(task.demands().get(i).quantity(), i));
        }
        return all;
    }

    private List<Fill.Maker> makers() {
        Fill.Maker left = size -> new CornerFill(size, task.rules(), shapes, effort, false);
        Fill.Maker down = size -> new CornerFill(size, task.rules(), shapes, effort, true);
        Fill.Maker shear = size -> new GuillotineFill(size, task.rules(), shapes, effort);
        return rectangles ? List.of(shear, left, down) : List.of(left, down);
    }

    /** Down helps rectangles less: guillotine cuts do the same, and most may be turned. */
    private Fill.Maker maker() {
        List<Fill.Maker> makers = makers();
        int luck = random.nextInt(DOWN_ONE_IN * 2);
        return makers.get(rectangles && luck == 0 ? 2 : luck % 2);
    }

    /** Takes up some sheets and lays their pieces down again. */
    private boolean again() {
        List<Fill> kept = new ArrayList<>(current.sheets());
        Collections.shuffle(kept, random);
        int most = random.nextInt(4) == 0 ? kept.size() : Math.min(3, kept.size());
        List<Integer> order = new ArrayList<>(current.unplaced());
        for (int up = 1 + random.nextInt(most); up > 0; up--) {
            kept.remove(kept.size() - 1).puts().forEach(put -> order.add(put.demand()));
        }
        List<Integer> next = shaken(order);
        return takeWhole(kept, builder.build(next, kept, new Builder.Choice(sizes(), maker()), effort::over));
    }

    /** A layout that was stopped half way is no layout. */
    private boolean takeWhole(List<Fill> kept, Builder.Built built) {
        List<Fill> all = new ArrayList<>(kept);
        all.addAll(built.sheets());
        return built.whole() && take(all, built.unplaced());
    }

    /** All sizes, or now and then only some. */
    private List<SheetSize> sizes() {
        if (task.sizes().size() == 1 || random.nextBoolean()) {
            return task.sizes();
        }
        List<SheetSize> some = new ArrayList<>(task.sizes());
        Collections.shuffle(some, random);
        int number = 1 + random.nextInt(some.size());
        return task.sizes().stream().filter(size -> size.first() || some.indexOf(size) < number).toList();
    }

    /** Mostly large before small, with some luck; now and then in any order. */
    private List<Integer> shaken(List<Integer> order) {
        if (random.nextDouble() < SHUFFLED) {
            Collections.shuffle(order, random);
            return order;
        }
        boolean area = random.nextBoolean();
        double luck = random.nextDouble();
        Map<Integer, Double> keys = new HashMap<>();
        for (int demand : order) {
            double size = area ? Math.sqrt(shapes.areaMm2(demand)) : Math.max(form(demand).width, form(demand).height);
            keys.computeIfAbsent(demand, one -> size * (1 - luck * random.nextDouble()));
        }
        return sorted(order, keys::get);
    }

    private static List<Integer> sorted(List<Integer> order, ToDoubleFunction<Integer> key) {
        List<Integer> sorted = new ArrayList<>(order);
        sorted.sort(Comparator.comparingDouble(key).reversed().thenComparing(Comparator.naturalOrder()));
        return sorted;
    }

    /** Goes on from a layout that leads at least as far; true where it is the best so far. */
    private boolean take(List<Fill> sheets, List<Integer> without) {
        State state = new State(List.copyOf(sheets), List.copyOf(without),
                Score.of(task, shapes, sheets, without.size(), rectangles,
                best == null ? Double.MAX_VALUE : best.score().cost() * (1 + 1e-9)));
        if (current == null || Score.LEADING.compare(state.score(), current.score()) <= 0) {
            current = state;
        }
        boolean first = best == null || Score.BEST.compare(state.score(), best.score()) < 0;
        if (first) {
            best = state;
            better.accept(best.sheets());
        }
        return first;
    }
}

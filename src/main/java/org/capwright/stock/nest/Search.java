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
    private static final int SAME_REST = 60;

    private final NestTask task;
    private final Shapes shapes;
    private final Builder builder;
    private final Effort effort;
    private final Random random;
    private final boolean rectangles;
    private final Consumer<List<Fill>> better;
    private List<Fill> best = List.of();
    private List<Integer> unplaced = List.of();
    private Score score;

    Search(NestTask task, Effort effort, long seed, Consumer<List<Fill>> better) {
        this.task = task;
        this.shapes = Shapes.outer(task);
        this.builder = new Builder(task, shapes);
        this.effort = effort;
        this.random = new Random(seed);
        this.better = better;
        this.rectangles = task.demands().stream().allMatch(demand -> demand.piece().rectangle());
    }

    /** Searches until the effort is spent, or until the cost is at its bound and the remnant has not grown for long. */
    void run(double costBound) {
        firstOrders();
        int idle = 0;
        while (!effort.over() && !best.isEmpty() && (score.cost() > costBound * (1 + 1e-9) || idle < SAME_REST)) {
            idle = again() ? 0 : idle + 1;
        }
    }

    List<Fill> sheets() {
        return best;
    }

    List<Integer> unplaced() {
        return unplaced;
    }

    private void firstOrders() {
        List<ToDoubleFunction<Integer>> keys = List.of(shapes::areaMm2, demand -> Math.max(form(demand).width, form(demand).height),
                demand -> form(demand).height, demand -> form(demand).width + form(demand).height);
        for (ToDoubleFunction<Integer> key : keys) {
            for (Fill.Maker maker : makers()) {
                if (score == null || !effort.over()) {
                    Builder.Built built = builder.build(sorted(all(), key), List.of(), maker);
                    take(built.sheets(), built.unplaced());
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
        Fill.Maker left = size -> new LeftmostFill(size, task.rules(), shapes, effort);
        Fill.Maker shear = size -> new GuillotineFill(size, task.rules(), shapes, effort);
        return rectangles ? List.of(shear, left) : List.of(left);
    }

    /** Takes up some sheets and lays their pieces down again. */
    private boolean again() {
        List<Fill> kept = new ArrayList<>(best);
        Collections.shuffle(kept, random);
        int up = Math.min(kept.size(), 1 + random.nextInt(random.nextInt(4) == 0 ? kept.size() : Math.min(3, kept.size())));
        List<Integer> order = new ArrayList<>(unplaced);
        for (int i = 0; i < up; i++) {
            kept.remove(kept.size() - 1).puts().forEach(put -> order.add(put.demand()));
        }
        List<Fill.Maker> makers = makers();
        Builder.Built built = builder.build(shaken(order), kept, makers.get(random.nextInt(makers.size())));
        kept.addAll(built.sheets());
        return take(kept, built.unplaced());
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

    /** Keeps a layout that is at least as good; true where it is better. */
    private boolean take(List<Fill> sheets, List<Integer> without) {
        Score other = Score.of(task, sheets, without.size(), rectangles);
        int compared = score == null ? -1 : other.compareTo(score);
        if (compared <= 0) {
            best = List.copyOf(sheets);
            unplaced = List.copyOf(without);
            score = other;
        }
        if (compared < 0) {
            better.accept(best);
        }
        return compared < 0;
    }
}

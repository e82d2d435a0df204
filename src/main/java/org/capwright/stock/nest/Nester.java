package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.capwright.geom.Bounds;

/** Nests pieces on sheets for least cost, then for the largest usable remnant. */
public final class Nester {
    private static final double CLOSE_MM = 0.5;

    private Nester() {
    }

    /**
     * How to search.
     *
     * @param workSeconds how much to search: what a usual desktop does in so many seconds
     * @param seconds how long at most by the clock; the first layout is always finished
     * @param seed the same seed gives the same nest, unless the clock or the user cut the search short
     * @param better told of every better layout, on the calling thread; none of its bounds are known yet
     * @param cancelled asked before every piece; true ends the search with the best so far, and before there is any layout with
     * what of the first one lies already
     */
    public record Options(double workSeconds, double seconds, long seed, Consumer<Nest> better, BooleanSupplier cancelled) {
        /** Refuses a time that is none. */
        public Options {
            if (!(seconds >= 0 && workSeconds >= 0) || Double.isInfinite(seconds + workSeconds)) {
                throw new IllegalArgumentException("seconds must be at least 0, not " + seconds + ", " + workSeconds);
            }
        }

        /**
         * Without a listener.
         *
         * @param seconds how long at most
         * @param seed seed of the search
         * @return the options
         */
        public static Options of(double seconds, long seed) {
            return new Options(seconds, seconds, seed, nest -> { }, () -> false);
        }
    }

    /**
     * Nests a task.
     *
     * @param task what to cut from what
     * @param options how to search
     * @return the best layout found, valid by {@link NestCheck}; after a cancel some pieces may be unplaced and the bound not
     * known
     * @throws IllegalStateException if the layout is not valid after all: a fault of the program
     */
    public static Nest nest(NestTask task, Options options) {
        if (options.cancelled().getAsBoolean()) {
            return new Nest(task, List.of(), task.demands(), Optional.empty(), false);
        }
        List<Demand> fitting = task.sizes().isEmpty() ? List.of() : fitting(task);
        List<Demand> tooLarge = task.demands().stream().filter(demand -> !fitting.contains(demand)).toList();
        if (fitting.isEmpty()) {
            return new Nest(task, List.of(), tooLarge, Optional.empty(), true);
        }
        NestTask real = new NestTask(fitting, task.sizes(), task.rules());
        Effort effort = new Effort(options.workSeconds(), options.seconds(), options.cancelled());
        Optional<NestBound> bound = effort.cancelled() ? Optional.empty() : Optional.of(LowerBound.of(real));
        Search search = new Search(real, effort, options.seed(),
                sheets -> options.better().accept(new Nest(task, layouts(real, sheets), tooLarge, Optional.empty(), false)));
        search.run(bound.map(NestBound::cost).orElse(0.0));
        List<Demand> unplaced = new ArrayList<>(tooLarge);
        unplaced.addAll(demands(real, search.unplaced()));
        return checked(new Nest(task, layouts(real, search.sheets()), unplaced, bound, !effort.interrupted()));
    }

    /**
     * Whether a piece fits on a sheet by itself.
     *
     * @param piece the piece
     * @param size the sheet
     * @param rules what to keep to
     * @return true if so
     */
    public static boolean fits(Piece piece, SheetSize size, NestRules rules) {
        double roomMm = piece.turns().stream().mapToDouble(turns -> roomMm(piece, turns, size, rules)).max().orElseThrow();
        // the search's shapes reach beyond the true ones by less than this
        return roomMm > CLOSE_MM || roomMm >= 0 && !fitting(new NestTask(List.of(new Demand(piece, 1)), List.of(size),
                rules)).isEmpty();
    }

    /** What a sheet has to spare for the box of a piece that is turned, at its tighter side; negative where it does not fit. */
    private static double roomMm(Piece piece, int turns, SheetSize size, NestRules rules) {
        Bounds box = piece.outline().bounds();
        boolean upright = turns % 2 == 1;
        double length = upright ? box.height() : box.width();
        double width = upright ? box.width() : box.height();
        return Math.min(size.lengthMm() - length, size.widthMm() - width) - 2 * rules.marginMm();
    }

    private static List<Demand> fitting(NestTask task) {
        Shapes shapes = Shapes.outer(task);
        List<Demand> fitting = new ArrayList<>();
        for (int i = 0; i < task.demands().size(); i++) {
            int demand = i;
            if (task.sizes().stream().anyMatch(size -> new CornerFill(size, task.rules(), shapes, new Effort(0, 0, () -> false),
                    false).add(demand))) {
                fitting.add(task.demands().get(i));
            }
        }
        return fitting;
    }

    private static List<SheetLayout> layouts(NestTask task, List<Fill> sheets) {
        return sheets.stream().map(fill -> Layouts.of(task, fill)).toList();
    }

    private static List<Demand> demands(NestTask task, List<Integer> unplaced) {
        Map<Integer, Integer> counts = new LinkedHashMap<>();
        unplaced.forEach(demand -> counts.merge(demand, 1, Integer::sum));
        return counts.entrySet().stream().map(one -> new Demand(task.demands().get(one.getKey()).piece(), one.getValue()))
                .toList();
    }

    private static Nest checked(Nest nest) {
        List<String> problems = nest.sheets().stream().flatMap(sheet -> NestCheck.problems(sheet, nest.task().rules()).stream())
                .toList();
        if (!problems.isEmpty()) {
            throw new IllegalStateException("the nest is not valid: " + String.join("; ", problems));
        }
        return nest;
    }
}

package org.capwright.stock.bar;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/** Branch and bound for bars. */
final class BarSearch {
    private static final int MOST_NODES = 400_000;
    private static final int ASKED_EVERY = 64;
    private static final double SAME_MM = 1e-9;

    private final List<Double> pieces;
    private final List<BarSize> sizes;
    private final double kerfMm;
    private final BooleanSupplier cancelled;
    private final double rate;
    private final double[] lengthLeft;
    private final List<Begun> begun = new ArrayList<>();
    private List<CutBar> best = List.of();
    private double bestCost = Double.MAX_VALUE;
    private int nodes;
    private boolean stopped;

    /** A bar begun, and its length yet to be cut; the last cut may need no kerf, so a kerf is added to begin with. */
    private static final class Begun {
        private final BarSize size;
        private final List<Double> cut = new ArrayList<>();
        private double left;

        Begun(BarSize size, double kerfMm) {
            this.size = size;
            this.left = size.lengthMm() + kerfMm;
        }
    }

    BarSearch(List<Double> pieces, List<BarSize> sizes, double kerfMm, BooleanSupplier cancelled) {
        this.cancelled = cancelled;
        this.pieces = pieces;
        this.sizes = sizes;
        this.kerfMm = kerfMm;
        this.rate = sizes.stream().mapToDouble(size -> size.cost() / (size.lengthMm() + kerfMm)).min().orElse(0);
        this.lengthLeft = new double[pieces.size() + 1];
        for (int i = pieces.size() - 1; i >= 0; i--) {
            lengthLeft[i] = lengthLeft[i + 1] + pieces.get(i) + kerfMm;
        }
    }

    List<CutBar> run() {
        place(0, 0);
        return best;
    }

    boolean complete() {
        return !stopped;
    }

    private void place(int piece, double cost) {
        nodes++;
        if (bestCost < Double.MAX_VALUE && over()) {
            return;
        }
        if (piece == pieces.size()) {
            bestCost = cost;
            best = begun.stream().map(bar -> new CutBar(bar.size, bar.cut)).toList();
            return;
        }
        if (cost + least(piece) >= bestCost - 1e-9) {
            return;
        }
        double need = pieces.get(piece) + kerfMm;
        tryBegun(piece, cost, need);
        for (BarSize size : sizes) {
            if (size.lengthMm() + kerfMm >= need - SAME_MM && cost + size.cost() < bestCost - 1e-9) {
                begun.add(new Begun(size, kerfMm));
                put(begun.get(begun.size() - 1), piece, cost + size.cost(), need);
                begun.remove(begun.size() - 1);
            }
        }
    }

    private boolean over() {
        stopped |= nodes > MOST_NODES || nodes % ASKED_EVERY == 0 && cancelled.getAsBoolean();
        return stopped;
    }

    /** The fullest bar that has room first; bars with the same room are the same. */
    private void tryBegun(int piece, double cost, double need) {
        Set<Double> tried = new HashSet<>();
        List<Begun> roomy = begun.stream().filter(bar -> bar.left >= need - SAME_MM)
                .sorted((a, b) -> Double.compare(a.left, b.left)).toList();
        for (Begun bar : roomy) {
            if (tried.add(bar.left)) {
                put(bar, piece, cost, need);
            }
        }
    }

    private void put(Begun bar, int piece, double cost, double need) {
        bar.left -= need;
        bar.cut.add(pieces.get(piece));
        place(piece + 1, cost);
        bar.cut.remove(bar.cut.size() - 1);
        bar.left += need;
    }

    /** What the pieces to come must cost at least, beyond what is left of bars begun: by their length, and by their number. */
    private double least(int piece) {
        double free = begun.stream().mapToDouble(bar -> Math.max(0, bar.left)).sum();
        double length = lengthLeft[piece] - free;
        double shortest = pieces.get(pieces.size() - 1) + kerfMm;
        double room = begun.stream().mapToDouble(bar -> Math.floor(bar.left / shortest + SAME_MM)).sum();
        double byNumber = Math.max(0, pieces.size() - piece - room) * perPiece(shortest);
        double whole = sizes.size() == 1 ? Math.ceil(length / (sizes.get(0).lengthMm() + kerfMm) - SAME_MM) * sizes.get(0)
                .cost() : length * rate;
        return sizes.size() == 1 ? Math.max(whole, wholeBars(byNumber)) : Math.max(byNumber, Math.max(0, whole));
    }

    private double wholeBars(double cost) {
        return Math.ceil(cost / sizes.get(0).cost() - SAME_MM) * sizes.get(0).cost();
    }

    /** Cost of a piece where a bar is full of the shortest ones. */
    private double perPiece(double shortest) {
        return sizes.stream().filter(size -> size.lengthMm() + kerfMm >= shortest)
                .mapToDouble(size -> size.cost() / Math.floor((size.lengthMm() + kerfMm) / shortest + SAME_MM)).min().orElse(0);
    }
}

package org.capwright.stock.bar;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Branch and bound for bars. */
final class BarSearch {
    private static final int MOST_NODES = 400_000;
    private static final double SAME_MM = 1e-9;

    private final List<Double> pieces;
    private final List<BarSize> sizes;
    private final double kerfMm;
    private final double rate;
    private final double[] lengthLeft;
    private final List<Begun> begun = new ArrayList<>();
    private List<CutBar> best = List.of();
    private double bestCost = Double.MAX_VALUE;
    private int nodes;

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

    BarSearch(List<Double> pieces, List<BarSize> sizes, double kerfMm) {
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
        return nodes <= MOST_NODES;
    }

    private void place(int piece, double cost) {
        if (++nodes > MOST_NODES && bestCost < Double.MAX_VALUE) {
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

    /** What the pieces to come must cost at least, beyond what is left of bars begun. */
    private double least(int piece) {
        double free = begun.stream().mapToDouble(bar -> Math.max(0, bar.left)).sum();
        double length = lengthLeft[piece] - free;
        if (length <= SAME_MM) {
            return 0;
        }
        double whole = sizes.size() == 1 ? Math.ceil(length / (sizes.get(0).lengthMm() + kerfMm) - SAME_MM) : 1;
        return Math.max(length * rate, whole * sizes.get(0).cost());
    }
}

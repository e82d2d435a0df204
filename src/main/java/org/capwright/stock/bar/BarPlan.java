package org.capwright.stock.bar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * How pieces are cut from bars at least cost.
 *
 * @param bars the bars
 * @param tooLongMm pieces longer than every bar
 * @param proved whether no plan can cost less: every other one was ruled out
 */
public record BarPlan(List<CutBar> bars, List<Double> tooLongMm, boolean proved) {
    /** Keeps its own copies. */
    public BarPlan {
        bars = List.copyOf(bars);
        tooLongMm = List.copyOf(tooLongMm);
    }

    /**
     * The plan for some pieces: the longest piece goes into every bar begun that has room, or begins one, until what is left
     * can't cost less than the best plan found.
     *
     * @param piecesMm lengths of the pieces
     * @param sizes bars that can be bought
     * @param kerfMm what a cut takes
     * @return the plan; the same for the same input
     */
    public static BarPlan of(List<Double> piecesMm, List<BarSize> sizes, double kerfMm) {
        return of(piecesMm, sizes, kerfMm, () -> false);
    }

    /**
     * The same, until somebody wants no more.
     *
     * @param piecesMm lengths of the pieces
     * @param sizes bars that can be bought
     * @param kerfMm what a cut takes
     * @param cancelled asked now and then; true keeps the best so far, and the first plan is always finished
     * @return the plan
     */
    public static BarPlan of(List<Double> piecesMm, List<BarSize> sizes, double kerfMm, BooleanSupplier cancelled) {
        double longest = sizes.stream().mapToDouble(BarSize::lengthMm).max().orElse(0);
        List<Double> tooLong = piecesMm.stream().filter(piece -> piece > longest).toList();
        List<Double> pieces = new ArrayList<>(piecesMm.stream().filter(piece -> piece <= longest).toList());
        pieces.sort(Collections.reverseOrder());
        BarSearch search = new BarSearch(pieces, sizes.stream().sorted(Comparator.comparingDouble(BarSize::cost)).toList(),
                kerfMm, cancelled);
        return new BarPlan(search.run(), tooLong, search.complete());
    }

    /**
     * What all bars cost.
     *
     * @return the sum
     */
    public double cost() {
        return bars.stream().mapToDouble(bar -> bar.size().cost()).sum();
    }
}

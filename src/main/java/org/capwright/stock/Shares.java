package org.capwright.stock;

import java.util.List;

/**
 * Shares a time out among things to nest one after the other: work by weight, the clock by what is left for this one
 * and those after it.
 */
public final class Shares {
    /** Share of the time of later ones that is kept for them. */
    private static final double KEPT = 0.5;

    private final StockPlan.Options options;
    private final List<Double> shares;
    private final long begin = System.nanoTime();

    /**
     * Shares of what some options allow for; the clock runs from now on.
     *
     * @param options the whole
     * @param weights how much each asks for; 0 for what is known already
     */
    public Shares(StockPlan.Options options, List<Double> weights) {
        this.options = options;
        double all = Math.max(Double.MIN_NORMAL, weights.stream().mapToDouble(Double::doubleValue).sum());
        this.shares = weights.stream().map(weight -> weight / all).toList();
    }

    /**
     * What one may take now.
     *
     * @param index which
     * @return options with its work, the same on every machine, and its time; else as the whole
     */
    public StockPlan.Options of(int index) {
        double later = shares.subList(index + 1, shares.size()).stream().mapToDouble(Double::doubleValue).sum();
        double left = options.seconds() - (System.nanoTime() - begin) * 1e-9;
        return new StockPlan.Options(options.workSeconds() * shares.get(index),
                Math.max(0, left - KEPT * later * options.seconds()),
                options.seed(), options.better(), options.cancelled());
    }
}

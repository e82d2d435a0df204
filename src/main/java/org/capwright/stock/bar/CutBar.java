package org.capwright.stock.bar;

import java.util.List;

/**
 * A bar and the pieces cut from it.
 *
 * @param size which bar
 * @param piecesMm lengths of its pieces, longest first
 */
public record CutBar(BarSize size, List<Double> piecesMm) {
    /** Keeps its own copy. */
    public CutBar {
        piecesMm = List.copyOf(piecesMm);
    }

    /**
     * What is left of it.
     *
     * @param kerfMm what a cut takes
     * @return mm, at least 0
     */
    public double restMm(double kerfMm) {
        double pieces = piecesMm.stream().mapToDouble(Double::doubleValue).sum();
        return Math.max(0, size.lengthMm() - pieces - kerfMm * piecesMm.size());
    }
}

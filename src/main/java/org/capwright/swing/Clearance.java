package org.capwright.swing;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.capwright.geom.Vec3;

/**
 * The least clearance of two things over the swing, and the whole curve.
 *
 * @param pair what and what
 * @param number number of the leaf (or of the heel's leaf)
 * @param leastMm least clearance
 * @param openRad opening at which it happens
 * @param where where it happens, a point of the leaf
 * @param stopRad end of the swing
 * @param curve nearness at any opening of the swing
 */
public record Clearance(Pair pair, int number, double leastMm, double openRad, Vec3 where, double stopRad,
                        DoubleFunction<Nearness> curve) {
    /**
     * Searches the swing for the least clearance.
     *
     * @param pair what and what
     * @param number number of the leaf
     * @param stopRad end of the swing
     * @param curve nearness at any opening
     * @return the clearance
     */
    static Clearance search(Pair pair, int number, double stopRad, DoubleFunction<Nearness> curve) {
        return search(pair, number, stopRad, curve, OpeningSearch.SMOOTH);
    }

    /** The same with a number of samples of its own. */
    static Clearance search(Pair pair, int number, double stopRad, DoubleFunction<Nearness> curve, int samples) {
        double open = OpeningSearch.lowest(at -> curve.apply(at).mm(), stopRad, samples);
        Nearness least = curve.apply(open);
        return new Clearance(pair, number, least.mm(), open, least.where(), stopRad, curve);
    }

    /**
     * The curve for a plot.
     *
     * @param steps number of equal steps from closed to the stop
     * @return clearance at each opening, mm
     */
    public List<Double> samplesMm(int steps) {
        return IntStream.rangeClosed(0, steps).mapToObj(i -> curve.apply(stopRad * i / steps).mm()).toList();
    }
}

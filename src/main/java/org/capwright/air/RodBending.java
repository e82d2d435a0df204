package org.capwright.air;

import org.capwright.part.Cap;
import org.capwright.part.PivotRod;

/**
 * Bending of a pivot rod under its leaf's weight and its own: a beam simply supported at the inner faces of the doubler
 * plates, the load spread evenly. On the safe side, since the leaf welded to it stiffens it; blows against the stop are
 * left out. An estimate.
 *
 * @param number number of the rod
 * @param spanMm span between the inner faces of the doubler plates, L
 * @param loadNPerM load, w
 * @param sagM sag in the middle
 * @param stressPa bending stress in the middle
 */
public record RodBending(int number, double spanMm, double loadNPerM, double sagM, double stressPa) {
    /** The bending of a cap's rod. */
    static RodBending of(Cap cap, PivotRod rod) {
        int i = rod.number() - 1;
        double spanMm = 2 * cap.doublers().get(i).faceYMm();
        double spanM = spanMm * 1e-3;
        double diameterM = rod.diameterMm() * 1e-3;
        double leafN = Weight.newtons(cap.leaves().get(i).balance().massKg());
        double load = leafN / spanM + Weight.newtons(rod.massKg()) / (rod.lengthMm() * 1e-3);
        double secondMoment = Math.PI * Math.pow(diameterM, 4) / 64;
        return new RodBending(rod.number(), spanMm, load,
                sagM(load, spanM, rod.metal().elasticityPa(), secondMoment),
                stressPa(load, spanM, Math.PI * Math.pow(diameterM, 3) / 32));
    }

    /**
     * Sag in the middle of a simply supported beam under an even load, {@code 5 w L^4 / (384 E I)}: beam table of any
     * mechanics text, Machinery's Handbook among them. For sags small against the span.
     *
     * @param loadNPerM w, N/m
     * @param spanM L, m
     * @param elasticityPa E, Pa
     * @param secondMomentM4 I, m4; {@code pi d^4 / 64} for round bar
     * @return m
     */
    public static double sagM(double loadNPerM, double spanM, double elasticityPa, double secondMomentM4) {
        return 5 * loadNPerM * Math.pow(spanM, 4) / (384 * elasticityPa * secondMomentM4);
    }

    /**
     * Bending stress in the middle of the same beam, {@code (w L^2 / 8) / Z}: same source.
     *
     * @param loadNPerM w, N/m
     * @param spanM L, m
     * @param sectionModulusM3 Z, m3; {@code pi d^3 / 32} for round bar
     * @return Pa
     */
    public static double stressPa(double loadNPerM, double spanM, double sectionModulusM3) {
        return loadNPerM * spanM * spanM / 8 / sectionModulusM3;
    }
}

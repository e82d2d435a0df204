package org.capwright.air;

import org.capwright.part.Leaf;

/**
 * Moment of a leaf's own weight about its rod, positive where it closes the leaf: {@code M_g = W (u_c cos theta - w_c sin
 * theta)}. The rod is welded to the leaf and turns with it, but its weight acts at the axis: no moment, so W is the leaf's
 * alone. With {@code m = hypot(u_c, w_c)} and {@code phi = atan2(-w_c, u_c)} the same is {@code W m cos(theta - phi)}: it rises
 * to phi, then falls.
 *
 * @param weightN weight of the leaf without its rod, W
 * @param outboardMm centre of gravity from the rod axis, outboard, u_c
 * @param upMm centre of gravity from the rod axis, up, w_c; negative: it hangs below the rod
 */
public record ClosingMoment(double weightN, double outboardMm, double upMm) {
    /** The moment of a leaf. */
    static ClosingMoment of(Leaf leaf) {
        Leaf.Balance balance = leaf.balance();
        return new ClosingMoment(Weight.newtons(balance.massKg()), balance.outboardMm(), balance.upMm());
    }

    /**
     * The moment at an opening.
     *
     * @param openRad opening, theta
     * @return N m; negative where the leaf would fall open
     */
    public double atNm(double openRad) {
        return weightN * (outboardMm * Math.cos(openRad) - upMm * Math.sin(openRad)) * 1e-3;
    }

    /**
     * The least moment from closed to the stop. Between them it bends one way only, so the least is at one end.
     *
     * @param stopRad opening at the stop, at most a right angle
     * @return N m
     */
    public double leastNm(double stopRad) {
        return Math.min(atNm(0), atNm(stopRad));
    }

    /**
     * Opening at which the centre of gravity is level with the rod axis, and the moment greatest: phi.
     *
     * @return radians
     */
    public double greatestAtRad() {
        return Math.atan2(-upMm, outboardMm);
    }

    /**
     * The moment at its greatest, {@code W m}.
     *
     * @return N m
     */
    public double greatestNm() {
        return weightN * Math.hypot(outboardMm, upMm) * 1e-3;
    }
}

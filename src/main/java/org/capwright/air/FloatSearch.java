package org.capwright.air;

import java.util.OptionalDouble;

/**
 * Finds where the air's moment {@code p S(theta)} and the closing moment {@code M_g(theta)} balance, the leaf opening from 0.
 *
 * <p>Up to the opening at which the shadow comes inside the bore the air's moment is constant while M_g first rises, to phi,
 * then falls: there the balance is closed form. Beyond, the pressure that a leaf needs, {@code M_g / S}, may sink at first and
 * then rises without end as S vanishes, so a leaf that got there has one balance left, which bisection finds.
 */
final class FloatSearch {
    private static final double ENOUGH_RAD = 1e-10;

    private final ClosingMoment closing;
    private final LeafBore bore;
    private final double stopRad;
    private final double wholeUntilRad;

    FloatSearch(ClosingMoment closing, LeafBore bore, double stopRad) {
        this.closing = closing;
        this.bore = bore;
        this.stopRad = stopRad;
        this.wholeUntilRad = Math.min(stopRad, bore.wholeUntilRad());
    }

    /** Where a pressure (Pa) on the intercepted bore takes the leaf. */
    FloatAngle at(double pressurePa) {
        double whole = momentNm(pressurePa, bore.wholeMm3());
        if (whole <= closing.atNm(0)) {
            return new FloatAngle(0, FloatAngle.Rest.SHUT);
        }
        if (whole < hardestEarlyNm()) {
            return floating(closing.greatestAtRad() - Math.acos(whole / closing.greatestNm()));
        }
        if (excessNm(pressurePa, stopRad) >= 0) {
            return new FloatAngle(stopRad, FloatAngle.Rest.AT_STOP);
        }
        return floating(bisect(pressurePa));
    }

    /** Least pressure (Pa) that takes the leaf to its stop; empty where at the stop it has left the jet. */
    OptionalDouble stopPressurePa() {
        double last = bore.interceptedMm3(stopRad);
        if (last <= 0) {
            return OptionalDouble.empty();
        }
        double early = hardestEarlyNm() / momentNm(1, bore.wholeMm3());
        return OptionalDouble.of(Math.max(early, closing.atNm(stopRad) / momentNm(1, last)));
    }

    /** The greatest closing moment while the leaf intercepts the whole strip. */
    private double hardestEarlyNm() {
        double greatestAt = closing.greatestAtRad();
        return greatestAt < wholeUntilRad ? closing.greatestNm() : closing.atNm(wholeUntilRad);
    }

    private double excessNm(double pressurePa, double openRad) {
        return momentNm(pressurePa, bore.interceptedMm3(openRad)) - closing.atNm(openRad);
    }

    private double bisect(double pressurePa) {
        double opening = wholeUntilRad;
        double closingAgain = stopRad;
        while (closingAgain - opening > ENOUGH_RAD) {
            double middle = (opening + closingAgain) / 2;
            if (excessNm(pressurePa, middle) >= 0) {
                opening = middle;
            } else {
                closingAgain = middle;
            }
        }
        return (opening + closingAgain) / 2;
    }

    private static FloatAngle floating(double openRad) {
        return new FloatAngle(openRad, FloatAngle.Rest.FLOATING);
    }

    private static double momentNm(double pressurePa, double momentMm3) {
        return pressurePa * momentMm3 * 1e-9;
    }
}

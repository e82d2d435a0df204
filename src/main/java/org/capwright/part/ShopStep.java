package org.capwright.part;

import org.capwright.units.Length;
import org.capwright.units.UnitSystem;

/** Sizes that a rule decides are rounded up to what a shop can set out: sixteenths of an inch, or whole millimetres. */
final class ShopStep {
    private static final double ROUNDING_MM = 1e-6;

    private ShopStep() {
    }

    /** The step of a unit system, mm. */
    static double ofMm(UnitSystem system) {
        return system == UnitSystem.INCH ? Length.MM_PER_INCH / 16 : 1;
    }

    /** The next size that is not smaller. */
    static double roundUpMm(double sizeMm, UnitSystem system) {
        double step = ofMm(system);
        return Math.ceil(sizeMm / step - ROUNDING_MM) * step;
    }
}

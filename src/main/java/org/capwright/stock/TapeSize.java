package org.capwright.stock;

import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/**
 * Sizes of sheets and rests as a person measures them with a tape: to a fraction of an inch or a millimetre, on the
 * safe side.
 */
public final class TapeSize {
    private static final double ROUNDING = 1e-6;

    private TapeSize() {
    }

    /**
     * What is there at least.
     *
     * @param mm the length
     * @param format how lengths are printed
     * @return rounded down, such as {@code 29 7/8 in} or {@code 759 mm}
     */
    public static String down(double mm, ShopFormat format) {
        return words(Math.floor(mm / step(format) + ROUNDING), format);
    }

    /**
     * What is needed at least.
     *
     * @param mm the length
     * @param format how lengths are printed
     * @return rounded up
     */
    public static String up(double mm, ShopFormat format) {
        return words(Math.ceil(mm / step(format) - ROUNDING), format);
    }

    private static String words(double steps, ShopFormat format) {
        Length length = Length.ofMm(steps * step(format));
        return format.system() == UnitSystem.INCH ? format.length(length) : Math.round(length.mm()) + " mm";
    }

    private static double step(ShopFormat format) {
        return format.system() == UnitSystem.INCH ? Length.MM_PER_INCH / format.denominator() : 1;
    }
}

package org.capwright.geom;

import java.util.function.DoubleUnaryOperator;

/** Golden-section search for the lowest value of a function with one valley. */
public final class GoldenSection {
    private static final double RATIO = (Math.sqrt(5) - 1) / 2;

    private GoldenSection() {
    }

    /**
     * Where a function is lowest.
     *
     * @param f the function, with one valley between the ends
     * @param from lower end
     * @param to upper end
     * @param enough width of the bracket at which to stop
     * @return the middle of the last bracket
     */
    public static double lowest(DoubleUnaryOperator f, double from, double to, double enough) {
        double a = from;
        double b = to;
        double left = b - RATIO * (b - a);
        double right = a + RATIO * (b - a);
        double atLeft = f.applyAsDouble(left);
        double atRight = f.applyAsDouble(right);
        while (b - a > enough) {
            if (atLeft <= atRight) {
                b = right;
                right = left;
                atRight = atLeft;
                left = b - RATIO * (b - a);
                atLeft = f.applyAsDouble(left);
            } else {
                a = left;
                left = right;
                atLeft = atRight;
                right = a + RATIO * (b - a);
                atRight = f.applyAsDouble(right);
            }
        }
        return (a + b) / 2;
    }
}

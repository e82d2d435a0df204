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
     * @param f the function, with one valley between the ends, which may end in a jump
     * @param from lower end
     * @param to upper end
     * @param enough width of the bracket at which to stop
     * @return the lowest place tried: beside a jump that is on its low side
     */
    public static double lowest(DoubleUnaryOperator f, double from, double to, double enough) {
        double a = from;
        double b = to;
        double left = b - RATIO * (b - a);
        double right = a + RATIO * (b - a);
        double atLeft = f.applyAsDouble(left);
        double atRight = f.applyAsDouble(right);
        double best = atLeft <= atRight ? left : right;
        double bestValue = Math.min(atLeft, atRight);
        while (b - a > enough) {
            boolean leftwards = atLeft <= atRight;
            if (leftwards) {
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
            double tried = leftwards ? atLeft : atRight;
            if (tried < bestValue) {
                best = leftwards ? left : right;
                bestValue = tried;
            }
        }
        return best;
    }
}

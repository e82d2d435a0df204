package org.capwright.check;

/**
 * What a check asks for.
 *
 * @param value the limit itself; beyond it the check is foul
 * @param least whether it is a smallest value, else a largest
 * @param band how far from the limit a value must be to be clear; nearer it is tight
 * @param source where the limit comes from
 */
public record Limit(double value, boolean least, double band, String source) {
    private static final double ROUNDING = 1e-9;

    /** A smallest value. */
    static Limit atLeast(double value, double band, String source) {
        return new Limit(value, true, band, source);
    }

    /** A largest value. */
    static Limit atMost(double value, double band, String source) {
        return new Limit(value, false, band, source);
    }

    /**
     * How far a value is on the good side of the limit.
     *
     * @param measured the value
     * @return negative where it fails
     */
    public double margin(double measured) {
        return least ? measured - value : value - measured;
    }

    /**
     * The verdict on a value.
     *
     * @param measured the value
     * @return foul beyond the limit, tight within the band, else clear
     */
    public Verdict verdict(double measured) {
        double margin = margin(measured);
        double rounding = ROUNDING * Math.max(1, Math.abs(value));
        if (!(margin >= -rounding)) {
            return Verdict.FOUL;
        }
        return margin >= band - rounding ? Verdict.CLEAR : Verdict.TIGHT;
    }
}

package org.capwright.check;

import org.capwright.job.CapJob;
import org.capwright.job.Input;
import org.capwright.job.LimitInputs;
import org.capwright.swing.Pair;
import org.capwright.units.Length;

/** What the clearances of the swing are asked for. */
public final class SwingLimits {
    /** What a clearance must have beyond its limit to be clear: what a good shop holds; common practice, no source. */
    static final double BAND_MM = Length.MM_PER_INCH / 64;
    private static final String COMMON = "common practice, no source";

    private SwingLimits() {
    }

    /**
     * The limit of a clearance.
     *
     * @param job the job, whose own limits count
     * @param pair what and what
     * @return its least value
     */
    public static Limit of(CapJob job, Pair pair) {
        return Limit.atLeast(job.get(input(pair)).mm(), BAND_MM, COMMON);
    }

    private static Input<Length> input(Pair pair) {
        return switch (pair) {
            case LEAF_HOOD -> LimitInputs.LEAF_HOOD;
            case HEEL_WALL, HEEL_FLOOR -> LimitInputs.HEEL;
            case LIP_STANDOFF -> LimitInputs.LIP_STANDOFF;
            case FLANGE_SPOUT -> LimitInputs.FLANGE_SPOUT;
            case LEAF_SLEEVE, LEAF_LEAF, LEAF_NEXT, LEAF_BAR, LEAF_BUSHING -> LimitInputs.OTHER;
        };
    }

    /**
     * The name of a clearance's check.
     *
     * @param pair what and what
     * @param number number of the leaf
     * @return such as {@code leaf.1.hood}
     */
    public static String id(Pair pair, int number) {
        String[] id = pair.word().split("\\.");
        return id[0] + "." + number + "." + id[1];
    }

    /**
     * The same for people.
     *
     * @param pair what and what
     * @param number number of the leaf
     * @return such as {@code leaf 1 to hood}
     */
    public static String words(Pair pair, int number) {
        String[] words = pair.words().split(" ", 2);
        return pair == Pair.FLANGE_SPOUT || pair == Pair.LIP_STANDOFF ? pair.words() + ", leaf " + number
                : words[0] + " " + number + " " + words[1];
    }
}

package org.capwright.fitup.tolerance;

import java.util.SplittableRandom;

/** Draws deviations for one build. */
final class Draw {
    private final SplittableRandom random;
    private final boolean normal;

    Draw(long seed, int build, boolean normal) {
        this.random = new SplittableRandom(mixed(seed, build));
        this.normal = normal;
    }

    /**
     * A seed of its own for each build: the finisher of MurmurHash3 in Stafford's variant 13 (as in {@link SplittableRandom}) over
     * both numbers, so that neighbouring builds have nothing in common.
     */
    private static long mixed(long seed, int build) {
        long z = seed * 0xD1342543DE82EF95L + build + 1;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }

    /** Normal with two standard deviations to the tolerance, or uniform between both ends of it. */
    double deviation(double tolerance) {
        return normal ? random.nextGaussian() * tolerance / 2 : (2 * random.nextDouble() - 1) * tolerance;
    }

    /** A direction that an ovality may have. */
    double halfTurn() {
        return Math.PI * random.nextDouble();
    }
}

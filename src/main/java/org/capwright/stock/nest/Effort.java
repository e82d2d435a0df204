package org.capwright.stock.nest;

import java.util.function.BooleanSupplier;

/**
 * How much work the search may still do. Counted in steps, not seconds, so that a seed gives the same nest on every run;
 * the clock only stops a machine that is slower than the steps allow for.
 */
final class Effort {
    /** Steps a second: about half of what a desktop of 2020 does. */
    static final double STEPS_PER_SECOND = 16e6;

    private final long nanosEnd;
    private final BooleanSupplier cancelled;
    private final long steps;
    private long spent;
    private boolean interrupted;

    /** So many seconds of a usual desktop's work, in so many seconds by the clock. */
    Effort(double workSeconds, double seconds, BooleanSupplier cancelled) {
        this.steps = (long) (workSeconds * STEPS_PER_SECOND);
        this.nanosEnd = System.nanoTime() + (long) (seconds * 1e9);
        this.cancelled = cancelled;
    }

    /** Notes work done. */
    void spend(long work) {
        spent += work;
    }

    /** Work done so far. */
    long spent() {
        return spent;
    }

    /** Whether the user wants no more. */
    boolean cancelled() {
        boolean now = cancelled.getAsBoolean();
        interrupted |= now;
        return now;
    }

    /** Whether to stop. */
    boolean over() {
        interrupted |= cancelled.getAsBoolean() || System.nanoTime() > nanosEnd;
        return interrupted || spent >= steps;
    }

    /** Whether it was the clock or the user that stopped it. */
    boolean interrupted() {
        return interrupted;
    }
}

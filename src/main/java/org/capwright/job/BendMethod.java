package org.capwright.job;

/** How a bend's allowance is found. */
public enum BendMethod implements Word {
    /** From the neutral-axis factor. */
    K,
    /** Handbook form for soft metal. */
    SOFT,
    /** Handbook form for half-hard metal and mild steel. */
    HALF_HARD,
    /** Handbook form for hard metal. */
    HARD,
    /** From a deduction measured on a test piece. */
    MEASURED
}

package org.capwright.check;

import java.util.Locale;

/** What comes of a check. */
public enum Verdict {
    /** Fails. */
    FOUL,
    /** Passes, margin used up. */
    TIGHT,
    /** Passes with the margin asked for. */
    CLEAR;

    /**
     * Its word.
     *
     * @return such as {@code clear}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}

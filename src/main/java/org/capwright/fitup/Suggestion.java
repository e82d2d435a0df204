package org.capwright.fitup;

import org.capwright.check.Verdict;

/**
 * What the lead hand can do; it has been tried on this very work.
 *
 * @param kind what sort of thing it is
 * @param words what to do, in plain words
 * @param before the value that decided, mm
 * @param after the same clearance once it is done, mm
 * @param verdict the verdict on that clearance then
 * @param spoilsNothing whether no other clearance becomes worse in verdict by it
 */
public record Suggestion(Kind kind, String words, double before, double after, Verdict verdict, boolean spoilsNothing) {
    /** What sort of thing to do. */
    public enum Kind {
        /** Shift the hood before tacking. */
        SHIFT,
        /** Pull the hood round. */
        ROUND,
        /** Take something off a lip. */
        DRESS,
        /** Raise the bushings. */
        SHIM,
        /** Change a part that is not cut yet. */
        UNCUT
    }
}

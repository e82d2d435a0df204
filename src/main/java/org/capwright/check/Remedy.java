package org.capwright.check;

import java.util.Map;

/**
 * What turns a check clear; it has been tried on this very job.
 *
 * @param words what to do, such as {@code widen the gutter to 2 9/16 in}
 * @param typed what to type where, by path
 * @param spoilsNothing whether no other check becomes worse by it
 */
public record Remedy(String words, Map<String, String> typed, boolean spoilsNothing) {
    /** Keeps its own copy. */
    public Remedy {
        typed = Map.copyOf(typed);
    }
}

package org.capwright.price;

import java.util.Map;

/**
 * Another way to make a job.
 *
 * @param name what to call it, such as {@code hood 20 ga}
 * @param typed inputs that differ, by path
 */
public record Variant(String name, Map<String, String> typed) {
    /** Keeps its own copy. */
    public Variant {
        typed = Map.copyOf(typed);
    }
}

package org.capwright.fitup;

import java.util.List;
import org.capwright.check.Check;

/**
 * Something about cut parts that do not go together.
 *
 * @param check what was found against what would do; foul where they contradict each other
 * @param parts the parts that it is about: no fewer of them contradict each other
 * @param remedy what to do, in plain words; tried, where it says to make a part anew
 */
public record Contradiction(Check check, List<String> parts, String remedy) {
    /** Keeps its own copy. */
    public Contradiction {
        parts = List.copyOf(parts);
    }
}

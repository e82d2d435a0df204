package org.capwright.layout;

import java.util.List;

/**
 * A step of the work.
 *
 * @param title what is made
 * @param actions what to do, one line to tick each
 * @param cautions what can hurt there
 */
public record BuildStep(String title, List<String> actions, List<String> cautions) {
    /** Keeps its own copies. */
    public BuildStep {
        actions = List.copyOf(actions);
        cautions = List.copyOf(cautions);
    }
}

package org.capwright.job;

import java.util.ArrayList;
import java.util.List;

/**
 * Inputs that belong together, in the order in which they are decided.
 *
 * @param key the name in job files, such as {@code leaves}
 * @param label what a person calls it
 * @param inputs its inputs, in order
 */
public record Group(String key, String label, List<Input<?>> inputs) {
    /** Keeps its own copy. */
    public Group {
        inputs = List.copyOf(inputs);
    }

    /** A group of single inputs and of input sets, in order. */
    static Group of(String key, String label, Object... members) {
        List<Input<?>> inputs = new ArrayList<>();
        for (Object member : members) {
            if (member instanceof InputSet set) {
                inputs.addAll(set.inputs());
            } else {
                inputs.add((Input<?>) member);
            }
        }
        return new Group(key, label, inputs);
    }
}

package org.capwright.check;

import java.util.List;
import org.capwright.job.Input;

/**
 * An input that can turn a check clear.
 *
 * @param input the input
 * @param up whether to raise it, else to lower it
 * @param words what that is called, such as {@code widen the gutter}
 * @param toAuto other inputs to leave to their rules then
 */
record Lever(Input<?> input, boolean up, String words, List<Input<?>> toAuto) {
    static Lever raise(Input<?> input, String words, Input<?>... toAuto) {
        return new Lever(input, true, words, List.of(toAuto));
    }

    static Lever lower(Input<?> input, String words, Input<?>... toAuto) {
        return new Lever(input, false, words, List.of(toAuto));
    }
}

package org.capwright.job;

import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;

/**
 * A job whose inputs have all been read and found good: what {@code Cap.solve} takes. Immutable; made by {@link
 * JobReader} only. Keeps what was typed beside the values.
 */
public final class CapJob {
    private final JobText text;
    private final Map<String, Object> values;

    CapJob(JobText text, Map<String, Object> values) {
        this.text = text;
        this.values = Map.copyOf(values);
    }

    /** The values, by path. */
    Map<String, Object> values() {
        return values;
    }

    /**
     * What was typed.
     *
     * @return the texts this job was read from
     */
    public JobText text() {
        return text;
    }

    /**
     * The value of an input that always has one: typed, or its default.
     *
     * @param input its declaration
     * @param <T> type of the value
     * @return the value
     * @throws NoSuchElementException if it is left to a rule; ask {@link #find} then
     */
    public <T> T get(Input<T> input) {
        return find(input).orElseThrow(() -> new NoSuchElementException(input.path() + " is auto"));
    }

    /**
     * The value of an input that may be left to a rule.
     *
     * @param input its declaration
     * @param <T> type of the value
     * @return the value, typed or default; empty where it is auto
     */
    @SuppressWarnings("unchecked") // JobReader stores under an input's path what that input's kind has read
    public <T> Optional<T> find(Input<T> input) {
        return Optional.ofNullable((T) values.get(input.path()));
    }

    /**
     * Whether a list was typed at all.
     *
     * @param path the list, such as {@code hood.beads}
     * @return true if it was typed, even as an empty list; false where it is left to a rule
     */
    public boolean listTyped(String path) {
        return text.listSize(path) > 0 || text.at(path).filter(typed -> !typed.equals(Input.AUTO)).isPresent();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CapJob job && text.equals(job.text);
    }

    @Override
    public int hashCode() {
        return Objects.hash(text);
    }
}

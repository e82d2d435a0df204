package org.capwright.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was typed for a job, right or wrong: texts by path, in the order of the file. Immutable. A list is held by its
 * elements' paths ({@code hood.beads[0].width}); an empty list as the list's own path with {@link #EMPTY_LIST}.
 */
public final class JobText {
    /** The text that stands for a list without elements. */
    public static final String EMPTY_LIST = "none";

    private final Map<String, String> texts;

    private JobText(Map<String, String> texts) {
        this.texts = Collections.unmodifiableMap(texts);
    }

    /**
     * What was typed.
     *
     * @param texts texts by path; copied
     * @return the same, immutable
     */
    public static JobText of(Map<String, String> texts) {
        return new JobText(new LinkedHashMap<>(texts));
    }

    /**
     * All texts.
     *
     * @return by path, unmodifiable
     */
    public Map<String, String> texts() {
        return texts;
    }

    /**
     * One text.
     *
     * @param path where
     * @return what was typed there, if anything
     */
    public Optional<String> at(String path) {
        return Optional.ofNullable(texts.get(path));
    }

    /**
     * The same with one text changed.
     *
     * @param path where
     * @param text what is typed there now
     * @return a new object
     */
    public JobText with(String path, String text) {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.put(path, text);
        return new JobText(changed);
    }

    /**
     * The same with nothing typed at a path.
     *
     * @param path where
     * @return a new object
     */
    public JobText without(String path) {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.remove(path);
        return new JobText(changed);
    }

    /**
     * How many elements a list has.
     *
     * @param path the list, such as {@code hood.beads}
     * @return one more than the largest index typed; 0 where none is
     */
    public int listSize(String path) {
        return texts.keySet().stream().filter(key -> key.startsWith(path + "["))
                .mapToInt(key -> 1 + Integer.parseInt(key.substring(path.length() + 1, key.indexOf(']'))))
                .max().orElse(0);
    }

    /**
     * The same without one element of a list; the later ones move up.
     *
     * @param list the list, such as {@code hood.beads}
     * @param index which element, from 0
     * @return a new object
     */
    public JobText withoutElement(String list, int index) {
        Map<String, String> kept = new LinkedHashMap<>();
        texts.forEach((path, typed) -> {
            if (!path.startsWith(list + "[")) {
                kept.put(path, typed);
                return;
            }
            int close = path.indexOf(']', list.length());
            int at = Integer.parseInt(path.substring(list.length() + 1, close));
            if (at != index) {
                kept.put(list + "[" + (at > index ? at - 1 : at) + path.substring(close), typed);
            }
        });
        return new JobText(kept);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JobText text && texts.equals(text.texts);
    }

    @Override
    public int hashCode() {
        return texts.hashCode();
    }

    @Override
    public String toString() {
        return texts.toString();
    }
}

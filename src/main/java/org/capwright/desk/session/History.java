package org.capwright.desk.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Undo and redo of immutable states. Edits in a row with the same key count as one until {@link #seal}. Bounded: the oldest
 * are forgotten.
 *
 * @param <T> type of the states
 */
public final class History<T> {
    private static final int MOST = 500;

    private final Deque<T> past = new ArrayDeque<>();
    private final Deque<T> future = new ArrayDeque<>();
    private T present;
    private Optional<String> openKey = Optional.empty();

    /**
     * A history that begins with a state.
     *
     * @param first the state
     */
    public History(T first) {
        this.present = first;
    }

    /**
     * The state now.
     *
     * @return the present
     */
    public T present() {
        return present;
    }

    /**
     * Goes on to a new state; what was undone is forgotten.
     *
     * @param state the new state
     * @param key what is being edited
     */
    public void go(T state, String key) {
        if (state.equals(present)) {
            return;
        }
        if (!openKey.equals(Optional.of(key)) || past.isEmpty()) {
            past.addLast(present);
            if (past.size() > MOST) {
                past.removeFirst();
            }
        }
        openKey = Optional.of(key);
        future.clear();
        present = state;
    }

    /** The next edit stands by itself, whatever its key. */
    public void seal() {
        openKey = Optional.empty();
    }

    /**
     * Goes back one edit.
     *
     * @return the state there; empty where there is none
     */
    public Optional<T> undo() {
        return step(past, future);
    }

    /**
     * Goes forward again.
     *
     * @return the state there; empty where nothing was undone
     */
    public Optional<T> redo() {
        return step(future, past);
    }

    private Optional<T> step(Deque<T> from, Deque<T> to) {
        seal();
        if (from.isEmpty()) {
            return Optional.empty();
        }
        to.addLast(present);
        present = from.removeLast();
        return Optional.of(present);
    }

    /**
     * Whether there is anything to undo.
     *
     * @return true if so
     */
    public boolean canUndo() {
        return !past.isEmpty();
    }

    /**
     * Whether there is anything to redo.
     *
     * @return true if so
     */
    public boolean canRedo() {
        return !future.isEmpty();
    }
}

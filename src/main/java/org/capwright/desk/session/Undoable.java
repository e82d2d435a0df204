package org.capwright.desk.session;

/** Something whose edits can be taken back and done again. */
public interface Undoable {
    /** Takes the last edit back. */
    void undo();

    /** Does it again. */
    void redo();
}

package org.capwright.store;

import java.nio.file.Path;
import tools.jackson.core.TokenStreamLocation;

/** A file is not well-formed as a job file. The message names file, line, column and what is wrong there. */
public final class UnreadableJobException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    /** Refuses the file at a place in it. */
    UnreadableJobException(Path file, TokenStreamLocation place, String reason) {
        super(file + ", line " + place.getLineNr() + ", column " + place.getColumnNr() + ": " + reason + ".");
        this.line = place.getLineNr();
        this.column = place.getColumnNr();
    }

    /**
     * Where it is wrong.
     *
     * @return line, from 1
     */
    public int line() {
        return line;
    }

    /**
     * Where it is wrong.
     *
     * @return column, from 1
     */
    public int column() {
        return column;
    }
}

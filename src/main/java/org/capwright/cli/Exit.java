package org.capwright.cli;

/** What the program tells the shell that started it. */
final class Exit {
    /** Done. */
    static final int DONE = 0;
    /** The job was read, and a check is foul. */
    static final int FOUL = 1;
    /** The words typed or the job file are no good; nothing was written. */
    static final int BAD_INPUT = 2;
    /** A file or folder could not be read or written. */
    static final int NO_FILE = 3;

    private Exit() {
    }
}

package org.capwright.drawing;

import java.util.Locale;

/** What a line is for. */
public enum Layer {
    /** To be cut. */
    CUT,
    /** To be bent. */
    BEND,
    /** To be scribed or only looked at. */
    MARK,
    /** Writing. */
    TEXT;

    /**
     * Its name in files.
     *
     * @return such as {@code cut}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}

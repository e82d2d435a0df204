package org.capwright.job;

import java.util.Locale;

/** A choice that a job file names by a word of its own: an enum constant whose word is its name in plain writing. */
public interface Word {
    /**
     * The constant's name.
     *
     * @return as declared
     */
    String name();

    /**
     * The word that job files use.
     *
     * @return lower case, blanks for underscores, such as {@code half hard}
     */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

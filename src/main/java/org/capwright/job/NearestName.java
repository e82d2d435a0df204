package org.capwright.job;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a mistyped one was probably meant to be. */
final class NearestName {
    private NearestName() {
    }

    /**
     * The known name nearest to a text, by edit distance without regard to case.
     *
     * @param text what was typed
     * @param known the names there are
     * @return the nearest, if at most about a third of its letters differ
     */
    static Optional<String> of(String text, Collection<String> known) {
        return known.stream()
                .min(Comparator.comparingInt(name -> distance(text, name)))
                .filter(name -> distance(text, name) <= Math.max(2, name.length() / 3));
    }

    /** Levenshtein distance: the least number of letters to insert, delete or replace. */
    private static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}

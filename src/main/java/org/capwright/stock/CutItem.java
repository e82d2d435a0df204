package org.capwright.stock;

import java.util.List;
import org.capwright.part.Sheet;

/**
 * A line of the cut list.
 *
 * @param number its number, from 1
 * @param part what to cut
 * @param quantity how many
 * @param sheet from what
 * @param lengthMm size of the blank along its x
 * @param widthMm size of the blank along its y
 * @param massKg mass of one, cut
 * @param grain how it lies to the grain
 * @param notes what else the shop must know
 */
public record CutItem(int number, String part, int quantity, Sheet sheet, double lengthMm, double widthMm, double massKg,
                      String grain, List<String> notes) {
    /** Keeps its own copy. */
    public CutItem {
        notes = List.copyOf(notes);
    }
}

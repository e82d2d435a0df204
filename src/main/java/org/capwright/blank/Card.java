package org.capwright.blank;

import java.util.List;
import org.capwright.drawing.Drawing;

/**
 * A gauge at true size, to be glued on card or thin sheet, cut out and held against the work.
 *
 * @param name what it gauges
 * @param notes how to hold it
 * @param drawing its lines
 */
public record Card(String name, List<String> notes, Drawing drawing) {
    /** Keeps its own copy. */
    public Card {
        notes = List.copyOf(notes);
    }
}

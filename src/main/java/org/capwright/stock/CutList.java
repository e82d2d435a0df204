package org.capwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.part.Cap;

/**
 * Everything that a cap is made from.
 *
 * @param items blanks to cut
 * @param hardware bars, bushings, rivets, screws
 * @param joins welds and seams
 */
public record CutList(List<CutItem> items, List<HardwareItem> hardware, List<JoinItem> joins) {
    /** Keeps its own copies. */
    public CutList {
        items = List.copyOf(items);
        hardware = List.copyOf(hardware);
        joins = List.copyOf(joins);
    }

    /**
     * The list of a cap.
     *
     * @param cap the cap
     * @param blanks its blanks
     * @return the list
     */
    public static CutList of(Cap cap, List<Blank> blanks) {
        List<CutItem> items = new ArrayList<>();
        for (Blank blank : blanks) {
            items.add(new CutItem(items.size() + 1, blank.name(), blank.quantity(), blank.sheet(), blank.lengthMm(),
                    blank.widthMm(), blank.massKg(), blank.grain().words(), blank.notes()));
        }
        return new CutList(items, Hardware.of(cap), Joins.of(cap));
    }
}

package org.capwright.blank;

import java.util.ArrayList;
import java.util.List;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.StopBar;

/** All blanks of a cap, in the order of the work. */
public final class Blanks {
    private Blanks() {
    }

    /**
     * All blanks of a cap.
     *
     * @param cap the cap
     * @return its blanks; alike ones once, with their quantity
     */
    public static List<Blank> of(Cap cap) {
        Writing writing = Writing.of(cap);
        List<Blank> blanks = new ArrayList<>(SleeveBlank.of(cap, writing));
        blanks.addAll(HoodBlank.of(cap, writing));
        for (Leaf leaf : cap.leaves()) {
            blanks.add(LeafBlank.of(leaf, writing));
        }
        for (Gutter gutter : cap.gutters()) {
            blanks.add(GutterBlank.of(gutter, writing));
        }
        for (StopBar bar : cap.stops()) {
            blanks.add(StopBlank.of(bar, writing));
        }
        blanks.add(StandoffBlank.of(cap.standoff(), writing));
        for (Doubler plate : cap.doublers()) {
            blanks.add(DoublerBlank.of(plate, writing));
        }
        blanks.add(WasherBlank.of(cap, writing));
        return List.copyOf(blanks);
    }

    /** A part's name with its number, which is left out where it is the only one. */
    static String numbered(String part, int number, int count) {
        return count == 1 ? part : part + " " + number;
    }
}

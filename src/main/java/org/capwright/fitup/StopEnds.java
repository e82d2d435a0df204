package org.capwright.fitup;

import java.util.ArrayList;
import java.util.List;
import org.capwright.check.Quantity;
import org.capwright.geom.Oval;
import org.capwright.part.Cap;
import org.capwright.part.StopBar;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/**
 * The stop bars in the hood that was made. A bar is clamped against the opened leaves with the stop card and then welded to the
 * hood, so the leaves place it, not the hood; what a shifted or oval hood changes is the room for its ends.
 */
final class StopEnds {
    /** Farther than this a weld does not reach; common practice, no source. */
    private static final double WIDEST_MM = Length.MM_PER_INCH / 8;
    /** As much as a tape tells. */
    private static final double TOLD_MM = Length.MM_PER_INCH / 32;
    private static final int ACROSS = 8;
    private static final int MOST_STEPS = 60;

    private StopEnds() {
    }

    static List<String> notes(Cap made, Oval hood, ShopFormat format) {
        List<String> notes = new ArrayList<>();
        for (StopBar bar : made.stops()) {
            String name = "stop bar " + bar.number();
            if (bar.number() == 1) {
                note(name, gapMm(bar, 1, hood), format, notes);
            } else {
                note(name + " (+x side)", gapMm(bar, 1, hood), format, notes);
                note(name + " (-x side)", gapMm(bar, -1, hood), format, notes);
            }
        }
        return notes;
    }

    private static void note(String bar, double gapMm, ShopFormat format, List<String> notes) {
        String length = Quantity.LENGTH.words(Math.abs(gapMm), format);
        if (gapMm < -TOLD_MM) {
            notes.add("As the hood stands, dress " + length + " off each end of " + bar + ", or it will not go in.");
        } else if (gapMm > WIDEST_MM) {
            notes.add("As the hood stands, the ends of " + bar + " are " + length
                    + " short of it, too far to weld: make it longer.");
        }
    }

    /** Gap at each end when the bar lies midway; negative where it is too long. */
    static double gapMm(StopBar bar, int side, Oval hood) {
        double plus = Double.POSITIVE_INFINITY;
        double minus = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= ACROSS; i++) {
            double across = bar.halfWidthMm() * (2.0 * i / ACROSS - 1);
            double x = side * (bar.jointMm() + across);
            plus = Math.min(plus, wallMm(hood, x, 1) - bar.endMm(across));
            minus = Math.min(minus, wallMm(hood, x, -1) - bar.endMm(across));
        }
        return (plus + minus) / 2;
    }

    /** Distance of the hood's inside from the plane y = 0, at an x, towards +y or -y. */
    private static double wallMm(Oval hood, double x, int end) {
        double y = hood.radiusMm();
        for (int i = 0; i < MOST_STEPS; i++) {
            // along y the room falls by no more than one to one, so from outside no step goes too far in
            y += hood.insideMm(x, end * y);
        }
        return y;
    }
}

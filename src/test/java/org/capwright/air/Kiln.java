package org.capwright.air;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;

/** The kiln-room demo with the gutter of the handbook's worked air figures: 2 in inside, 1.0336 in outside half width. */
final class Kiln {
    static final double BORE_RADIUS_FT = 9.0625 / 12;

    private Kiln() {
    }

    static Cap cap(Map<String, String> typed) {
        Map<String, String> all = new HashMap<>(Map.of("gutter.insideWidth", "2 in"));
        all.putAll(typed);
        return Cap.solve(Jobs.kilnWith(all));
    }

    /** Its one leaf at a velocity in the sleeve, ft/min. */
    static LeafAir leafAt(double feetPerMinute) {
        return Air.of(cap(Map.of("air.flow", flowAt(feetPerMinute)))).leaves().get(0);
    }

    static String flowAt(double feetPerMinute) {
        return String.format(Locale.ROOT, "%.4f ft3/min", feetPerMinute * Math.PI * BORE_RADIUS_FT * BORE_RADIUS_FT);
    }
}

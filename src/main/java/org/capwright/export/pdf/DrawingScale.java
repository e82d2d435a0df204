package org.capwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.capwright.units.UnitSystem;

/**
 * A scale at which a view is drawn.
 *
 * @param factor paper mm to real mm
 * @param words what the page says about it
 */
record DrawingScale(double factor, String words) {
    private static final int LARGEST = 50;
    private static final int SMALLEST = 100;

    /**
     * Standard scales, the largest first: 1, 2 and 5 times powers of ten, both ways (ISO 5455, from memory); in inches
     * also 1:4, 1:8
     * and 1:16, the scales of 3, 1 1/2 and 3/4 in to the foot (common practice, no source).
     */
    static List<DrawingScale> standard(UnitSystem system) {
        List<Integer> reductions = new ArrayList<>(List.of(2, 5, 10, 20, 50, SMALLEST));
        if (system == UnitSystem.INCH) {
            reductions.addAll(List.of(4, 8, 16));
            reductions.sort(null);
        }
        List<DrawingScale> scales = new ArrayList<>();
        for (int enlarged : List.of(LARGEST, 20, 10, 5, 2)) {
            scales.add(new DrawingScale(enlarged, words(enlarged + ":1")));
        }
        scales.add(new DrawingScale(1, words("1:1")));
        reductions.forEach(reduced -> scales.add(new DrawingScale(1.0 / reduced, words("1:" + reduced))));
        return scales;
    }

    /** As large as fits, where even the smallest standard scale is too large. */
    static DrawingScale odd(double factor) {
        return new DrawingScale(factor, "not to scale");
    }

    private static String words(String ratio) {
        return String.format(Locale.ROOT, "scale %s (reference only)", ratio);
    }
}

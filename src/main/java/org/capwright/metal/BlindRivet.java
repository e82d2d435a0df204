package org.capwright.metal;

import java.util.Comparator;
import java.util.List;
import org.capwright.units.Length;

/**
 * A blind rivet size.
 *
 * @param diameter nominal diameter
 * @param holeLeast smallest hole
 * @param holeMost largest hole
 * @param headMost largest head
 * @param drill the drill for its hole
 */
public record BlindRivet(Length diameter, Length holeLeast, Length holeMost, Length headMost, String drill) {
    /** The sizes there are, thinnest first; sources in the resource's head. */
    public static final List<BlindRivet> SIZES = Table.read("blind-rivets.txt").rows().stream().map(BlindRivet::of)
            .sorted(Comparator.comparing(BlindRivet::diameter)).toList();
    private static final double SAME_SIZE_MM = 0.06;
    private static final double METRIC_EXTRA_MM = 0.1;

    /**
     * Hole for a rivet of a nominal diameter: the middle of the table's range, or for a size that is not in it the diameter
     * and 0.1 mm (the least of the rule of ISO 15977).
     *
     * @param diameter nominal diameter
     * @return diameter of the hole
     */
    public static Length holeFor(Length diameter) {
        return SIZES.stream().filter(size -> Math.abs(size.diameter.mm() - diameter.mm()) < SAME_SIZE_MM).findFirst()
                .map(size -> Length.ofMm((size.holeLeast.mm() + size.holeMost.mm()) / 2))
                .orElse(Length.ofMm(diameter.mm() + METRIC_EXTRA_MM));
    }

    /**
     * Least distance from a hole's middle to a sheet's edge: twice the diameter (FAA AC 43.13-1B, for solid rivets; common
     * practice for blind ones).
     *
     * @param diameter nominal diameter
     * @return the distance
     */
    public static Length leastEdgeDistance(Length diameter) {
        return Length.ofMm(2 * diameter.mm());
    }

    /**
     * Least distance between the middles of two holes: three times the diameter (FAA AC 43.13-1B, for solid rivets; common
     * practice for blind ones).
     *
     * @param diameter nominal diameter
     * @return the distance
     */
    public static Length leastPitch(Length diameter) {
        return Length.ofMm(3 * diameter.mm());
    }

    private static BlindRivet of(List<String> fields) {
        return new BlindRivet(inches(fields, 0), inches(fields, 1), inches(fields, 2), inches(fields, 3), fields.get(4));
    }

    private static Length inches(List<String> fields, int index) {
        return Length.ofInches(Double.parseDouble(fields.get(index)));
    }
}

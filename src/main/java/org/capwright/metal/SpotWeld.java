package org.capwright.metal;

import java.util.List;
import java.util.Optional;
import org.capwright.units.Length;

/**
 * Spot welds in uncoated low-carbon steel, by the thinner sheet.
 *
 * @param thickness thickness of the thinner sheet
 * @param leastSpacing least distance between welds
 * @param leastOverlap least lap of the sheets
 */
public record SpotWeld(Length thickness, Length leastSpacing, Length leastOverlap) {
    /** The rows of the table, thinnest first; sources in the resource's head. */
    public static final List<SpotWeld> ROWS = Table.read("spot-welds.txt").rows().stream()
            .map(fields -> new SpotWeld(inches(fields, 0), inches(fields, 1), inches(fields, 2))).toList();

    /** Well under any real difference of thickness: the same thickness in inches and in millimetres is one row. */
    private static final double SAME_THICKNESS_MM = 1e-6;

    /**
     * The row for a thickness: the next one up. For zinc-coated sheet, prove it with a test coupon.
     *
     * @param thinner thickness of the thinner sheet
     * @return the row; empty above the table
     */
    public static Optional<SpotWeld> forThickness(Length thinner) {
        return ROWS.stream().filter(row -> row.thickness.mm() > thinner.mm() - SAME_THICKNESS_MM).findFirst();
    }

    private static Length inches(List<String> fields, int index) {
        return Length.ofInches(Double.parseDouble(fields.get(index)));
    }
}

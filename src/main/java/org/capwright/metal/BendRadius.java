package org.capwright.metal;

import java.util.List;
import java.util.Optional;
import org.capwright.units.Length;

/**
 * Least inside radii of a conservative design table, beyond the rule for annealed sheet: at least the thickness.
 *
 * @param thickness thickness of the sheet
 * @param steel least inside radius of 1020 steel
 * @param stainless of 304 stainless
 * @param aluminium of 5052-H32 aluminium
 */
public record BendRadius(Length thickness, Length steel, Length stainless, Length aluminium) {
    /** The rows of the table, thinnest first; sources in the resource's head. */
    public static final List<BendRadius> ROWS = Table.read("bend-radii.txt").rows().stream()
            .map(fields -> new BendRadius(inches(fields, 0), inches(fields, 1), inches(fields, 2), inches(fields, 3))).toList();

    /** Well under any real difference of thickness: the same thickness in inches and in millimetres is one row. */
    private static final double SAME_THICKNESS_MM = 1e-6;

    /**
     * The table's radius for a sheet: the next row up. Coated steel counts as 1020, both stainless metals as 304, aluminium as
     * 5052-H32: the sheet in hand may be softer or harder.
     *
     * @param metal metal of the sheet
     * @param thickness its thickness
     * @return the least inside radius; empty above the table
     */
    public static Optional<Length> of(Metal metal, Length thickness) {
        return ROWS.stream().filter(row -> row.thickness.mm() > thickness.mm() - SAME_THICKNESS_MM).findFirst()
                .map(row -> row.of(metal));
    }

    /**
     * What the table calls a metal.
     *
     * @param metal the metal
     * @return such as {@code 1020}
     */
    public static String column(Metal metal) {
        return switch (metal) {
            case GALVANIZED, ALUMINIZED, COLD_ROLLED -> "1020";
            case STAINLESS_304, STAINLESS_316 -> "304";
            case ALUMINIUM -> "5052-H32";
        };
    }

    private Length of(Metal metal) {
        return switch (metal) {
            case GALVANIZED, ALUMINIZED, COLD_ROLLED -> steel;
            case STAINLESS_304, STAINLESS_316 -> stainless;
            case ALUMINIUM -> aluminium;
        };
    }

    private static Length inches(List<String> fields, int index) {
        return Length.ofInches(Double.parseDouble(fields.get(index)));
    }
}

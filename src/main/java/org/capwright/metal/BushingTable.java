package org.capwright.metal;

import java.util.List;
import java.util.Optional;
import org.capwright.units.Length;
import org.capwright.units.QuantityParser;
import org.capwright.units.UnitSystem;

/** Sizes of flanged oil-bronze bushings. From memory and not sure: the part in hand is to be measured. */
public final class BushingTable {
    private static final double SAME_SIZE_MM = 0.05;
    private static final List<Row> ROWS = Table.read("bushings.txt").rows().stream().map(fields -> new Row(size(fields, 0),
            size(fields, 1), size(fields, 2), size(fields, 3))).toList();

    private BushingTable() {
    }

    /**
     * One size.
     *
     * @param bore bore
     * @param outside outside diameter of the body
     * @param flangeOutside outside diameter of the flange
     * @param flangeThickness thickness of the flange
     */
    public record Row(Length bore, Length outside, Length flangeOutside, Length flangeThickness) {
    }

    /**
     * The size for a bore.
     *
     * @param bore bore
     * @return its row; empty where the table has none
     */
    public static Optional<Row> forBore(Length bore) {
        return ROWS.stream().filter(row -> Math.abs(row.bore().mm() - bore.mm()) < SAME_SIZE_MM).findFirst();
    }

    private static Length size(List<String> fields, int index) {
        return QuantityParser.length(fields.get(index), UnitSystem.INCH);
    }
}

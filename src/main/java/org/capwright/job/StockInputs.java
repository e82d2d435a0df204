package org.capwright.job;

import org.capwright.units.Length;

/** The largest sheet the shop cuts from. */
public final class StockInputs {
    /** Length of a sheet. */
    public static final Input<Length> SHEET_LENGTH = Input.length("stock.sheetLength", "sheet length")
            .between("12 in", "480 in").or("120 in").help("Length of the largest sheet at hand; cylinders longer than that are made in pieces.");
    /** Width of a sheet. */
    public static final Input<Length> SHEET_WIDTH = Input.length("stock.sheetWidth", "sheet width")
            .between("12 in", "120 in").or("48 in").help(
                "Width of the largest sheet at hand; blanks that do not fit are told by a check. Measure a sheet in "
                    + "the rack, trimmed ones are smaller than their name.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("stock", "Stock", SHEET_LENGTH, SHEET_WIDTH);

    private StockInputs() {
    }
}

package org.capwright.export;

import org.capwright.part.Sheet;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** How a sheet is named on paper: a gauge number is no thickness, so the decimal thickness always stands beside it. */
public final class Sheets {
    private Sheets() {
    }

    /**
     * The gauge and thickness.
     *
     * @param sheet the sheet
     * @param format how lengths are printed
     * @return such as {@code 20 ga (.0396 in)} or {@code .1250 in}
     */
    public static String thickness(Sheet sheet, ShopFormat format) {
        String decimal = format.thickness(Length.ofMm(sheet.thicknessMm()));
        return sheet.gauge().isPresent() ? sheet.gauge().getAsInt() + " ga (" + decimal + ")" : decimal;
    }

    /**
     * Metal, gauge and thickness.
     *
     * @param sheet the sheet
     * @param format how lengths are printed
     * @return such as {@code galvanized 20 ga (.0396 in)} or {@code stainless 304, 1.20 mm}
     */
    public static String name(Sheet sheet, ShopFormat format) {
        return sheet.metal().word() + (sheet.gauge().isPresent() ? " " : ", ") + thickness(sheet, format);
    }
}

package org.capwright.price;

import java.util.Locale;
import org.capwright.part.Sheet;
import org.capwright.stock.BarGroup;
import org.capwright.stock.StockSheet;

/** How sheets and bars are named in a price: always with the decimal thickness, for a gauge number is none. */
public final class Names {
    private Names() {
    }

    /**
     * A sheet of the stock.
     *
     * @param stock the sheet
     * @return such as {@code galvanized 18 ga (1.31 mm), 3048 x 1219 mm}
     */
    public static String of(StockSheet stock) {
        return of(stock.sheet()) + String.format(Locale.ROOT, ", %.0f x %.0f mm", stock.lengthMm(), stock.widthMm()) + (stock.remnant() ? ", remnant" : "");
    }

    /**
     * Metal and thickness.
     *
     * @param sheet which
     * @return such as {@code galvanized 18 ga (1.31 mm)}
     */
    public static String of(Sheet sheet) {
        String thickness = String.format(Locale.ROOT, "%.2f mm", sheet.thicknessMm());
        return sheet.metal().word() + " " + (sheet.gauge().isPresent() ? sheet.gauge().getAsInt() + " ga (" + thickness + ")" : thickness);
    }

    /**
     * A bar.
     *
     * @param bar which
     * @return such as {@code stainless 304 round bar, diameter 12.7 mm}
     */
    public static String bar(BarGroup bar) {
        return bar.metal().word() + " round bar, diameter " + number(bar.diameterMm()) + " mm";
    }

    /** A number without trailing zeros. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}

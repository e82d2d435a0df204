package org.capwright.price;

import java.util.Locale;
import org.capwright.geom.Bounds;
import org.capwright.part.Sheet;
import org.capwright.stock.BarGroup;
import org.capwright.stock.StockBar;
import org.capwright.stock.StockSheet;
import org.capwright.stock.TapeSize;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/**
 * How sheets and bars are named in a price: always with the decimal thickness, for a gauge number is none.
 *
 * @param format how lengths are printed
 */
public record Names(ShopFormat format) {
    /**
     * A sheet of the stock.
     *
     * @param stock the sheet
     * @return such as {@code galvanized 18 ga (.0516 in), 120 in x 48 in}
     */
    public String of(StockSheet stock) {
        return of(stock.sheet()) + ", " + length(stock.lengthMm()) + " x " + length(stock.widthMm())
                + (stock.remnant() ? ", remnant" : "");
    }

    /**
     * Metal and thickness.
     *
     * @param sheet which
     * @return such as {@code galvanized 18 ga (.0516 in)}
     */
    public String of(Sheet sheet) {
        String thickness = format.thickness(Length.ofMm(sheet.thicknessMm()));
        return sheet.metal().word() + " " + (sheet.gauge().isPresent() ? sheet.gauge().getAsInt() + " ga (" + thickness + ")"
                : thickness);
    }

    /**
     * A bar.
     *
     * @param bar which
     * @return such as {@code stainless 304 round bar, diameter 1/2 in}
     */
    public String bar(BarGroup bar) {
        return bar.metal().word() + " round bar, diameter " + length(bar.diameterMm());
    }

    /**
     * A bar of the stock.
     *
     * @param bar which
     * @return such as {@code stainless 304 round bar, diameter 1/2 in, 144 in long}
     */
    public String of(StockBar bar) {
        return bar.metal().word() + " round bar, diameter " + length(bar.diameterMm()) + ", " + length(bar.lengthMm()) + " long";
    }

    /**
     * A rest of a sheet.
     *
     * @param rest the rest
     * @return such as {@code 96 in x 29 7/8 in}, rounded down
     */
    public String of(Bounds rest) {
        return TapeSize.down(rest.width(), format) + " x " + TapeSize.down(rest.height(), format);
    }

    /** A length. */
    String length(double mm) {
        return format.length(Length.ofMm(mm));
    }

    /** A number without trailing zeros. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}

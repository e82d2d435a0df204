package org.capwright.store;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.capwright.stock.HardwarePrice;
import org.capwright.stock.SheetPrice;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockBar;
import org.capwright.stock.StockSheet;
import org.capwright.units.Length;
import org.capwright.units.UnitSystem;

/** A stock as the tree of its file. */
final class StockTree {
    private static final MathContext DIGITS = new MathContext(9);

    private final ShopStock stock;

    private StockTree(ShopStock stock) {
        this.stock = stock;
    }

    static Map<String, Object> of(ShopStock stock) {
        return new StockTree(stock).tree();
    }

    static String word(UnitSystem system) {
        return system == UnitSystem.INCH ? "in" : "mm";
    }

    private Map<String, Object> tree() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("capwrightStock", StockFiles.NEWEST_VERSION);
        tree.put("note", stock.note());
        tree.put("units", word(stock.units()));
        tree.put("currency", stock.currency());
        Map<String, Object> layout = new LinkedHashMap<>();
        layout.put("spacing", length(stock.rules().spacingMm()));
        layout.put("margin", length(stock.rules().marginMm()));
        layout.put("leastRemnant", length(stock.rules().leastRemnantMm()));
        layout.put("keepGrain", stock.keepGrain() ? "yes" : "no");
        layout.put("remnantsFirst", stock.remnantsFirst() ? "yes" : "no");
        tree.put("layout", layout);
        tree.put("saw", Map.of("kerf", length(stock.kerfMm())));
        tree.put("sheets", stock.sheets().stream().filter(sheet -> !sheet.remnant()).map(this::sheet).toList());
        tree.put("remnants", stock.sheets().stream().filter(StockSheet::remnant).map(this::sheet).toList());
        tree.put("bars", stock.bars().stream().map(this::bar).toList());
        tree.put("hardware", stock.hardware().stream().map(this::hardware).toList());
        return tree;
    }

    private Map<String, Object> sheet(StockSheet sheet) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("metal", sheet.sheet().metal().word());
        if (sheet.sheet().gauge().isPresent()) {
            tree.put("gauge", sheet.sheet().gauge().getAsInt());
        } else {
            tree.put("thickness", length(sheet.sheet().thicknessMm()));
        }
        tree.put("length", length(sheet.lengthMm()));
        tree.put("width", length(sheet.widthMm()));
        sheet.price().ifPresent(price -> tree.put(price.per() == SheetPrice.Per.SHEET ? "perSheet" : "perKg",
                number(price.amount())));
        sheet.count().ifPresent(count -> tree.put("count", count));
        return tree;
    }

    private Map<String, Object> bar(StockBar bar) {
        Map<String, Object> tree = new LinkedHashMap<>(Map.of("metal", bar.metal().word()));
        tree.put("diameter", length(bar.diameterMm()));
        tree.put("length", length(bar.lengthMm()));
        price(tree, bar.price());
        return tree;
    }

    private Map<String, Object> hardware(HardwarePrice price) {
        Map<String, Object> tree = new LinkedHashMap<>(Map.of("kind", price.kind().word()));
        if (price.sizeMm() > 0) {
            tree.put("size", length(price.sizeMm()));
        }
        price(tree, price.price());
        return tree;
    }

    private static void price(Map<String, Object> tree, OptionalDouble price) {
        if (price.isPresent()) {
            tree.put("price", number(price.getAsDouble()));
        }
    }

    private String length(double mm) {
        boolean inch = stock.units() == UnitSystem.INCH;
        return number(inch ? mm / Length.MM_PER_INCH : mm).toPlainString() + (inch ? " in" : " mm");
    }

    /** Nine digits: a millionth of the largest sheet. */
    static BigDecimal number(double value) {
        BigDecimal rounded = new BigDecimal(value, DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}

package org.capwright.desk.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.capwright.desk.session.ShopFile;
import org.capwright.desk.session.Undoable;
import org.capwright.desk.shop.ShopTable.Column;
import org.capwright.metal.Metal;
import org.capwright.stock.HardwareKind;
import org.capwright.stock.ShopStock;

/** The shop's stock, to be edited: sheets, remnants, bars, hardware, and how it lays out its sheets. */
final class StockEditor extends BorderPane {
    private static final List<String> YES_NO = List.of("yes", "no");
    private static final List<String> METALS = Arrays.stream(Metal.values()).map(Metal::word).toList();
    private static final List<String> KINDS = Arrays.stream(HardwareKind.values()).map(HardwareKind::word).toList();
    private static final Map<String, String> SHEET = Map.of("metal", Metal.GALVANIZED.word(), "gauge", "20", "length", "96 in",
            "width", "48 in");

    StockEditor(ShopFile<ShopStock> file) {
        TabPane tabs = new TabPane();
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        tabs.getTabs().setAll(new Tab("Sheets", new ShopTable(file, "sheets", sheet(), SHEET)),
                new Tab("Remnants", new ShopTable(file, "remnants", sheet(), SHEET)),
                new Tab("Bars", new ShopTable(file, "bars", List.of(metal(), Column.text("diameter", "diameter", 90),
                Column.text("length", "length", 90),
                        Column.text("price", "price", 80)), Map.of("metal", Metal.STAINLESS_304.word(), "diameter", "1/2 in",
                        "length", "144 in"))),
                new Tab("Hardware", new ShopTable(file, "hardware",
                List.of(new Column("kind", "kind", 110, KINDS), Column.text("size", "size", 90),
                        Column.text("price", "price", 80)), Map.of("kind", HardwareKind.RIVET.word(), "size", "3/16 in"))),
                new Tab("Layout", layout(file)));
        // undo and redo in here are the file's own
        getProperties().put(Undoable.class, file);
        setTop(new ShopFileBar(file));
        setCenter(tabs);
    }

    private static Column metal() {
        return new Column("metal", "metal", 115, METALS);
    }

    private static List<Column> sheet() {
        return List.of(metal(), Column.text("gauge", "gauge", 55), Column.text("thickness", "thickness", 80),
                Column.text("length", "length", 70),
                Column.text("width", "width", 70), Column.text("perSheet", "per sheet", 80), Column.text("perKg", "per kg", 70),
                Column.text("count", "count", 55));
    }

    private static ScrollPane layout(ShopFile<ShopStock> file) {
        VBox box = new VBox(8, new ShopField(file, "note", "note", 40), new ShopField(file, "currency", "currency", 5),
                new ShopField(file, "units", "units", 5, List.of("in", "mm")),
                new ShopField(file, "layout.spacing", "spacing of pieces", 8),
                new ShopField(file, "layout.margin", "margin at the sheet's edge", 8),
                new ShopField(file, "layout.leastRemnant", "least side of a usable remnant", 8),
                new ShopField(file, "layout.keepGrain", "keep the grain", 5, YES_NO),
                new ShopField(file, "layout.remnantsFirst", "use up remnants first", 5, YES_NO),
                new ShopField(file, "saw.kerf", "saw's kerf", 8));
        box.getStyleClass().add("readings");
        return new ScrollPane(box);
    }
}

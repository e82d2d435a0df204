package org.capwright.desk.shop;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.capwright.desk.session.ShopFile;
import org.capwright.desk.session.Undoable;
import org.capwright.price.Operation;
import org.capwright.price.RateCard;

/** The shop's rates, to be edited: labour, shares, and minutes of each operation. A rate that is left out is not known. */
final class RateEditor extends BorderPane {
    RateEditor(ShopFile<RateCard> file) {
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(6);
        grid.addRow(0, new Label("operation"), new Label("minutes each"), new Label("of one"), new Label("minutes to set up"));
        for (Operation operation : Operation.values()) {
            String at = "operations." + operation.key() + ".";
            grid.addRow(operation.ordinal() + 1, new Label(operation.words()), new ShopField(file, at + "minutesEach", "", 5),
                    new Label(operation.unit()),
                    new ShopField(file, at + "setUpMinutes", "", 5));
        }
        VBox box = new VBox(8, new ShopField(file, "note", "note", 40),
                new ShopField(file, "remnantCreditPercent", "remnants go back to stock at, %", 5),
                new ShopField(file, "tax.name", "name of the tax", 12), grid);
        box.getStyleClass().add("readings");
        // undo and redo in here are the file's own
        getProperties().put(Undoable.class, file);
        setTop(new ShopFileBar(file));
        setCenter(new ScrollPane(box));
    }
}

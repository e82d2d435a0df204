package org.capwright.desk.view;

import java.io.File;
import java.io.IOException;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.PrinterPage;
import org.capwright.export.pdf.PrinterScale;
import org.capwright.store.DeskFolder;
import org.capwright.store.PrinterFile;
import org.capwright.store.StoreException;
import org.capwright.units.Length;
import org.capwright.units.QuantityParser;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/** Measures a printer: writes the page with the two bars, takes what they measure, keeps what the printer gets wrong. */
final class PrinterDialog {
    private static final int FRACTION = 64;

    private final Stage stage = new Stage();
    private final Paper paper;
    private final DeskFolder desk;
    private final Consumer<String> kept;
    private final ComboBox<UnitSystem> units = new ComboBox<>();
    private final TextField name = new TextField();
    private final TextField across = new TextField();
    private final TextField along = new TextField();
    private final Label state = new Label();

    private PrinterDialog(Stage owner, Paper paper, DeskFolder desk, Consumer<String> kept) {
        this.paper = paper;
        this.desk = desk;
        this.kept = kept;
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle("Measure a printer");
        units.getItems().setAll(UnitSystem.values());
        units.setValue(UnitSystem.INCH);
        units.valueProperty().addListener((o, was, is) -> prompts());
        name.setId("printer-name");
        across.setId("printer-across");
        along.setId("printer-along");
        state.setId("printer-state");
        state.setWrapText(true);
        state.setPrefWidth(420);
        state.setMinHeight(Region.USE_PREF_SIZE);
        prompts();
    }

    static void show(Stage owner, Paper paper, DeskFolder desk, Consumer<String> kept) {
        PrinterDialog dialog = new PrinterDialog(owner, paper, desk, kept);
        dialog.lay(owner);
        dialog.stage.show();
    }

    private void lay(Stage owner) {
        Button page = new Button("Write the page...");
        page.setOnAction(event -> page());
        Button keep = new Button("Keep");
        keep.setId("printer-keep");
        keep.setDefaultButton(true);
        keep.setOnAction(event -> keep());
        Button close = new Button("Close");
        close.setCancelButton(true);
        close.setOnAction(event -> stage.close());
        GridPane grid = new GridPane();
        grid.setHgap(10);
        grid.setVgap(8);
        grid.addRow(0, new Label("1  Print this page at 100 % on " + paper), page);
        grid.addRow(1, new Label("bars are round numbers of"), units);
        grid.addRow(2, new Label("2  What the bar across measures"), across);
        grid.addRow(3, new Label("    What the bar along measures"), along);
        grid.addRow(4, new Label("3  What to call the printer"), name);
        VBox all = new VBox(12, grid, new HBox(10, keep, close), state);
        all.setPadding(new Insets(16));
        Scene scene = new Scene(all);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        stage.setScene(scene);
    }

    private void prompts() {
        ShopFormat format = new ShopFormat(units.getValue(), FRACTION);
        across.setPromptText(format.length(PrinterPage.across(paper, units.getValue())));
        along.setPromptText(format.length(PrinterPage.along(paper, units.getValue())));
    }

    private void page() {
        FileChooser chooser = new FileChooser();
        chooser.setInitialFileName("printer-check.pdf");
        File file = chooser.showSaveDialog(stage);
        if (file != null) {
            try {
                PrinterPage.write(file.toPath(), paper, units.getValue());
                state.setText("Written: " + file);
            } catch (IOException e) {
                state.setText("Could not be written: " + e.getMessage());
            }
        }
    }

    private void keep() {
        if (!PrinterScale.isName(name.getText().strip())) {
            state.setText("A printer's name is 1 to 24 letters, digits, blanks, points, lines.");
            return;
        }
        try {
            PrinterScale scale = new PrinterScale(name.getText().strip(),
                    factor("across", PrinterPage.across(paper, units.getValue()), across),
                    factor("along", PrinterPage.along(paper, units.getValue()), along));
            desk.printers().put(new PrinterFile.Entry(paper, scale));
            kept.accept(scale.printer());
            stage.close();
        } catch (IllegalArgumentException | StoreException e) {
            state.setText(e.getMessage());
        }
    }

    /** A bar that is left out is taken as true. */
    private double factor(String bar, Length drawn, TextField field) {
        return field.getText().isBlank() ? 1 : PrinterScale.factor(bar, drawn,
                QuantityParser.length(field.getText(), units.getValue()));
    }
}

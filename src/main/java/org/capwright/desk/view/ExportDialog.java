package org.capwright.desk.view;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.util.StringConverter;
import org.capwright.check.Checks;
import org.capwright.check.Verdict;
import org.capwright.desk.session.Solved;
import org.capwright.desk.task.Background;
import org.capwright.desk.task.ExportTask;
import org.capwright.desk.task.PrintTask;
import org.capwright.export.CutFiles;
import org.capwright.export.CutFiles.Kind;
import org.capwright.export.dxf.DxfUnit;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.PrintSetup;
import org.capwright.export.pdf.PrinterScale;
import org.capwright.store.DeskFolder;
import org.capwright.store.PrinterFile;

/** Asks what, on which paper, for which printer and where to; writes in the background; or prints. */
final class ExportDialog {
    private static final StringConverter<PrinterScale> PRINTER_NAMES = new StringConverter<>() {
        @Override
        public String toString(PrinterScale scale) {
            return scale == null || scale.printer().isEmpty() ? "not measured" : scale.printer();
        }

        @Override
        public PrinterScale fromString(String text) {
            throw new UnsupportedOperationException(text);
        }
    };

    private final Stage stage = new Stage();
    private final Solved solved;
    private final DeskFolder desk;
    private final Map<Kind, CheckBox> kinds = new EnumMap<>(Kind.class);
    private final ComboBox<Paper> paper = new ComboBox<>();
    private final ComboBox<PrinterScale> printer = new ComboBox<>();
    private final CheckBox whole = new CheckBox("long parts at true size as a whole too");
    private final CheckBox anyway = new CheckBox("write although a check is foul: every page will say so");
    private final TextField folder = new TextField();
    private final Label state = new Label();
    private final ProgressIndicator busy = new ProgressIndicator();
    private final Button write = new Button("Write");
    private final Button stop = new Button("Cancel");
    private final Button print = new Button("Print templates...");
    private ExportTask running;

    private ExportDialog(Window owner, Solved solved, Path suggested, DeskFolder desk) {
        this.solved = solved;
        this.desk = desk;
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle("Templates and cut list");
        for (Kind kind : Kind.values()) {
            CheckBox box = new CheckBox(kind.words());
            box.setSelected(true);
            kinds.put(kind, box);
        }
        paper.getItems().setAll(Paper.values());
        paper.setValue(Paper.valueOf(desk.settings().getOrDefault("paper", Paper.LETTER.name())));
        printer.setConverter(PRINTER_NAMES);
        paper.valueProperty().addListener((o, was, is) -> {
            desk.keep("paper", is.name());
            printers("");
        });
        folder.setText(suggested.toString());
        folder.setPrefColumnCount(34);
        folder.setId("export-folder");
        state.setWrapText(true);
        state.setId("export-state");
        busy.setVisible(false);
        busy.setPrefSize(22, 22);
        printers(desk.settings().getOrDefault("printer", ""));
        buttons();
    }

    static void show(Window owner, Solved solved, Path suggested, DeskFolder desk) {
        ExportDialog dialog = new ExportDialog(owner, solved, suggested, desk);
        dialog.lay(owner);
        dialog.stage.show();
    }

    private void buttons() {
        write.setId("export-write");
        write.setDefaultButton(true);
        write.setOnAction(event -> write());
        stop.setCancelButton(true);
        stop.setOnAction(event -> cancel());
        print.setOnAction(event -> print());
        for (Button button : List.of(write, stop, print)) {
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
    }

    /** The printers that were measured with this paper. */
    private void printers(String chosen) {
        List<PrinterScale> all = desk.printers().all().stream().filter(entry -> entry.paper() == paper.getValue()).map(PrinterFile.Entry::scale)
                .collect(Collectors.toCollection(ArrayList::new));
        all.add(0, PrinterScale.NONE);
        printer.getItems().setAll(all);
        printer.setValue(all.stream().filter(scale -> scale.printer().equals(chosen)).findFirst().orElse(PrinterScale.NONE));
    }

    private void lay(Window owner) {
        Button choose = new Button("Choose...");
        choose.setMinWidth(Region.USE_PREF_SIZE);
        choose.setOnAction(event -> choose());
        Button measure = new Button("Measure a printer...");
        measure.setId("measure-printer");
        measure.setOnAction(event -> PrinterDialog.show(stage, paper.getValue(), desk, this::printers));
        measure.disableProperty().bind(paper.valueProperty().isEqualTo(Paper.ONE));
        GridPane grid = new GridPane();
        grid.setHgap(10);
        grid.setVgap(8);
        GridPane boxes = new GridPane();
        boxes.setHgap(18);
        boxes.setVgap(6);
        kinds.forEach((kind, box) -> boxes.add(box, kind.ordinal() / 4, kind.ordinal() % 4));
        grid.addRow(0, new Label("what"), boxes);
        grid.addRow(1, new Label(""), whole);
        grid.addRow(2, new Label("paper"), paper);
        HBox printerRow = new HBox(6, printer, measure);
        printerRow.setAlignment(Pos.CENTER_LEFT);
        grid.addRow(3, new Label("printer"), printerRow);
        grid.addRow(4, new Label("folder"), new HBox(6, folder, choose));
        if (Checks.worst(solved.checks()) == Verdict.FOUL) {
            grid.addRow(5, new Label(""), anyway);
            write.disableProperty().bind(anyway.selectedProperty().not());
            print.disableProperty().bind(anyway.selectedProperty().not());
        }
        Label scale = new Label("Print at 100 %, never \"fit to page\", and measure the scale bars before cutting.");
        scale.getStyleClass().add("quiet");
        HBox actions = new HBox(10, write, stop, print, busy);
        actions.setAlignment(Pos.CENTER_LEFT);
        VBox all = new VBox(12, grid, scale, actions, state);
        all.setPadding(new Insets(16));
        Scene scene = new Scene(all);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        stage.setScene(scene);
    }

    private void choose() {
        File chosen = new DirectoryChooser().showDialog(stage);
        if (chosen != null) {
            folder.setText(chosen.getPath());
        }
    }

    private PrintSetup setup() {
        return new PrintSetup(paper.getValue(), printer.getValue());
    }

    private void write() {
        desk.keep("printer", printer.getValue().printer());
        CutFiles.Choice choice = new CutFiles.Choice(setup(), whole.isSelected(), DxfUnit.of(solved.format().system()),
                kinds.entrySet().stream().filter(one -> one.getValue().isSelected()).map(Map.Entry::getKey).collect(Collectors.toSet()));
        running = new ExportTask(solved, Path.of(folder.getText()), choice);
        busy.setVisible(true);
        state.textProperty().bind(running.messageProperty());
        Background.run(running, files -> {
            said(files.size() + " files written.");
            FolderOpener.open(Path.of(folder.getText()));
        }, problem -> said(problem.getMessage()));
    }

    private void print() {
        busy.setVisible(true);
        Background.run(new PrintTask(solved, setup()), done -> said(done ? "Sent to the printer at 100 %. Measure the scale bars."
                : "Not printed."),
                problem -> said("Could not print: " + problem.getMessage()));
    }

    private void said(String text) {
        state.textProperty().unbind();
        state.setText(text);
        busy.setVisible(false);
        stop.setText("Close");
        running = null;
    }

    private void cancel() {
        if (running != null) {
            running.cancel();
            said("Cancelled; nothing was written.");
        } else {
            stage.close();
        }
    }
}

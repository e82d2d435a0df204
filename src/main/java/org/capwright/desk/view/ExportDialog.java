package org.capwright.desk.view;

import java.awt.Desktop;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.capwright.check.Checks;
import org.capwright.check.Verdict;
import org.capwright.desk.session.Solved;
import org.capwright.desk.task.Background;
import org.capwright.desk.task.ExportTask;
import org.capwright.desk.task.PrintTask;
import org.capwright.export.pdf.Paper;

/** Asks for paper and folder, and writes in the background; or prints. */
final class ExportDialog {
    private final Stage stage = new Stage();
    private final Solved solved;
    private final ComboBox<Paper> paper = new ComboBox<>();
    private final CheckBox whole = new CheckBox("long parts at true size as a whole too");
    private final CheckBox anyway = new CheckBox("write although a check is foul: every page will say so");
    private final TextField folder = new TextField();
    private final Label state = new Label();
    private final ProgressIndicator busy = new ProgressIndicator();
    private final Button write = new Button("Write");
    private final Button stop = new Button("Cancel");
    private ExportTask running;

    private ExportDialog(Window owner, Solved solved, Path suggested) {
        this.solved = solved;
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle("Templates and cut list");
        paper.getItems().setAll(Paper.values());
        paper.setValue(Paper.LETTER);
        folder.setText(suggested.toString());
        folder.setPrefColumnCount(34);
        folder.setId("export-folder");
        write.setId("export-write");
        write.setDefaultButton(true);
        write.setOnAction(event -> write());
        stop.setCancelButton(true);
        stop.setOnAction(event -> cancel());
        busy.setVisible(false);
        busy.setPrefSize(22, 22);
        state.setWrapText(true);
        state.setId("export-state");
    }

    static void show(Window owner, Solved solved, Path suggested) {
        ExportDialog dialog = new ExportDialog(owner, solved, suggested);
        dialog.lay(owner);
        dialog.stage.show();
    }

    private void lay(Window owner) {
        Button choose = new Button("Choose...");
        choose.setOnAction(event -> choose());
        Button print = new Button("Print templates...");
        print.setOnAction(event -> print());
        GridPane grid = new GridPane();
        grid.setHgap(10);
        grid.setVgap(8);
        grid.addRow(0, new Label("paper"), paper);
        grid.addRow(1, new Label(""), whole);
        grid.addRow(2, new Label("folder"), new HBox(6, folder, choose));
        boolean foul = Checks.worst(solved.checks()) == Verdict.FOUL;
        if (foul) {
            grid.addRow(3, new Label(""), anyway);
            write.disableProperty().bind(anyway.selectedProperty().not());
        }
        Label scale = new Label("Print at 100 %, never \"fit to page\", and measure the scale bars before cutting.");
        scale.getStyleClass().add("quiet");
        VBox all = new VBox(12, grid, scale, new HBox(10, write, stop, print, busy), state);
        all.setPadding(new Insets(16));
        Scene scene = new Scene(all);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        stage.setScene(scene);
    }

    private void choose() {
        DirectoryChooser chooser = new DirectoryChooser();
        File chosen = chooser.showDialog(stage);
        if (chosen != null) {
            folder.setText(chosen.getPath());
        }
    }

    private void write() {
        running = new ExportTask(solved, Path.of(folder.getText()), paper.getValue(), whole.isSelected());
        busy.setVisible(true);
        state.textProperty().bind(running.messageProperty());
        Background.run(running, files -> {
            said(files.size() + " files written.");
            open(Path.of(folder.getText()));
        }, problem -> said(problem.getMessage()));
    }

    private void print() {
        busy.setVisible(true);
        Background.run(new PrintTask(solved, paper.getValue()), done -> said(done ? "Sent to the printer at 100 %. Measure the scale bars." : "Not printed."),
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

    /** Shows the folder where the machine can. */
    private void open(Path path) {
        if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
            return;
        }
        Thread thread = new Thread(() -> {
            try {
                Desktop.getDesktop().open(path.toFile());
            } catch (IOException e) {
                // the files are there all the same, and the dialog says where
                return;
            }
        }, "capwright-open");
        thread.setDaemon(true);
        thread.start();
    }
}

package org.capwright.desk.view;

import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.capwright.desk.session.Session;
import org.capwright.desk.sketch.Palette;
import org.capwright.job.JobInputs;

/** The head: the job and its stamp, files, undo and redo, inches or millimetres, light or dark, templates. */
final class HeadBar extends HBox {
    private final Session session;
    private final Label name = new Label();
    private final Label stamp = new Label();
    private final Button undo = new Button("Undo");
    private final Button redo = new Button("Redo");
    private final ToggleButton metric = new ToggleButton("in | mm");

    HeadBar(Session session, FileDesk files, ObjectProperty<Palette> palette, Runnable templates, Runnable help) {
        this.session = session;
        name.getStyleClass().add("job-name");
        name.setId("job-name");
        stamp.getStyleClass().add("quiet");
        undo.setId("undo");
        redo.setId("redo");
        undo.setOnAction(event -> session.undo());
        redo.setOnAction(event -> session.redo());
        metric.setId("units");
        metric.setAccessibleText("Inches or millimetres");
        metric.setOnAction(event -> session.type(Map.of(JobInputs.UNITS.path(), metric.isSelected() ? "mm" : "in")));
        ToggleButton dark = new ToggleButton("light | dark");
        dark.setId("dark");
        dark.setSelected(palette.get() == Palette.DARK);
        dark.setOnAction(event -> palette.set(dark.isSelected() ? Palette.DARK : Palette.LIGHT));
        Button export = new Button("Templates...");
        export.setId("templates");
        export.setOnAction(event -> templates.run());
        Button helpButton = new Button("Help");
        helpButton.setId("help");
        helpButton.setOnAction(event -> help.run());
        for (Region part : List.of(undo, redo, metric, dark, export, helpButton)) {
            part.setMinWidth(Region.USE_PREF_SIZE);
        }
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        setSpacing(10);
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("head");
        getChildren().addAll(name, stamp, gap, fileMenu(files), undo, redo, metric, dark, helpButton, export);
        session.textProperty().addListener((o, was, is) -> show());
        session.unsavedProperty().addListener((o, was, is) -> show());
        session.solvedProperty().addListener((o, was, is) -> show());
        show();
    }

    private static MenuButton fileMenu(FileDesk files) {
        MenuButton menu = new MenuButton("File");
        menu.setId("file");
        menu.setOnShowing(event -> {
            menu.getItems().setAll(item("New", files::fresh), item("Open...", files::open), item("Save", files::save),
                    item("Save as...", files::saveAs));
            files.recent().forEach(path -> menu.getItems().add(item(path.getFileName() + "   in " + path.getParent(),
                    () -> files.open(path))));
        });
        menu.getItems().setAll(item("New", files::fresh));
        return menu;
    }

    private static MenuItem item(String text, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> action.run());
        return item;
    }

    private void show() {
        String typed = session.textProperty().get().at(JobInputs.NAME.path()).filter(text -> !text.isBlank())
                .orElse(JobInputs.NAME.fallback().orElse(""));
        name.setText(typed + (session.unsavedProperty().get() ? " *" : ""));
        stamp.setText(session.solvedProperty().get() == null ? "" : "stamp " + session.solvedProperty().get().stamp());
        undo.setDisable(!session.canUndo());
        redo.setDisable(!session.canRedo());
        metric.setSelected(session.textProperty().get().at(JobInputs.UNITS.path()).filter("mm"::equals).isPresent());
    }
}

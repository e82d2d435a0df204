package org.capwright.desk.view;

import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.capwright.export.Cautions;
import org.capwright.job.Group;
import org.capwright.job.Input;
import org.capwright.job.Inputs;

/** The help sheet: keys, every input with its range, the cautions. */
final class HelpSheet {
    private static final String[][] KEYS = {
        {"Ctrl+N, Ctrl+O, Ctrl+S, Ctrl+Shift+S", "new, open, save, save as"}, {"Ctrl+Z, Ctrl+Y", "undo, redo"},
        {"Ctrl+E, Ctrl+P", "write or print the templates and the cut list"}, {"Ctrl+1 to 4", "the views"},
        {"Space", "play the swing"}, {"Left, Right", "opening by 1 deg"}, {"Up, Down in a field", "step by a shop's size"},
        {"Escape", "back to the form"}, {"F1", "this sheet"}};

    private HelpSheet() {
    }

    static void show(Window owner) {
        VBox sheet = new VBox(4);
        sheet.setPadding(new Insets(18));
        heading(sheet, "Keys");
        for (String[] key : KEYS) {
            line(sheet, key[0] + ":  " + key[1]);
        }
        for (Group group : Inputs.GROUPS) {
            heading(sheet, group.label());
            for (Input<?> input : group.inputs()) {
                line(sheet, input.label() + ":  " + input.help() + "  (" + input.allowed() + ")");
            }
        }
        heading(sheet, "Cautions");
        Cautions.ALL.forEach(caution -> line(sheet, caution));
        ScrollPane scroll = new ScrollPane(sheet);
        scroll.setFitToWidth(true);
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.setTitle("Help");
        stage.setScene(new Scene(scroll, 680, 620));
        stage.getScene().getStylesheets().setAll(owner.getScene().getStylesheets());
        stage.show();
    }

    private static void heading(VBox sheet, String text) {
        Label label = new Label(text);
        label.getStyleClass().add("job-name");
        label.setPadding(new Insets(10, 0, 2, 0));
        sheet.getChildren().add(label);
    }

    private static void line(VBox sheet, String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        sheet.getChildren().add(label);
    }
}

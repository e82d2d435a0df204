package org.capwright.desk.shop;

import java.io.File;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.capwright.desk.session.ShopFile;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.store.StoreException;
import org.capwright.store.UnreadableJobException;

/** Where a shop's file is kept, whether it is still the sample, what is wrong with it; undo and redo; taking another file. */
final class ShopFileBar extends VBox {
    private final ShopFile<?> file;
    private final Label where = new Label();
    private final Label wrong = new Label();

    ShopFileBar(ShopFile<?> file) {
        this.file = file;
        Button undo = button("Undo", file::undo);
        Button redo = button("Redo", file::redo);
        Button take = button("Take from a file...", this::take);
        where.setWrapText(true);
        where.getStyleClass().add("quiet");
        wrong.setWrapText(true);
        wrong.getStyleClass().add("refusal");
        HBox bar = new HBox(8, undo, redo, take);
        bar.setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("view-bar");
        setSpacing(4);
        getChildren().addAll(bar, where, wrong);
        file.problemsProperty().addListener((o, was, is) -> show());
        file.sampleProperty().addListener((o, was, is) -> show());
        show();
    }

    private static Button button(String text, Runnable action) {
        Button button = new Button(text);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    private void take() {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("JSON", "*.json"));
        File chosen = chooser.showOpenDialog(getScene().getWindow());
        if (chosen == null) {
            return;
        }
        try {
            file.take(chosen.toPath());
        } catch (RefusedJobException e) {
            say(e.problems().stream().limit(5).map(Problem::message).collect(Collectors.joining("\n")));
        } catch (StoreException | UnreadableJobException e) {
            say(e.getMessage());
        }
    }

    private void show() {
        where.setText(file.sampleProperty().get() ? "This is the sample; its figures are invented. What you change is kept in "
                + file.file() + "."
                : "Kept in " + file.file() + " as you type.");
        say(file.problemsProperty().get().stream().limit(3).map(Problem::message).collect(Collectors.joining("\n")));
    }

    private void say(String text) {
        wrong.setText(text);
        wrong.setManaged(!text.isEmpty());
    }
}

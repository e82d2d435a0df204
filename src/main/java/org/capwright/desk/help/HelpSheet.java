package org.capwright.desk.help;

import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.transformation.FilteredList;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.PointerSketch;
import org.capwright.desk.sketch.Sketch;

/** The help sheet: keys, cautions, checks, every input with its range; a field to search in it; small drawings beside the words. */
public final class HelpSheet {
    private static final double DRAWING_WIDTH = 190;
    private static final double DRAWING_HEIGHT = 104;

    private final Solved solved;
    private final Palette palette;
    private final ListView<HelpEntry> list = new ListView<>();

    private HelpSheet(Solved solved, Palette palette) {
        this.solved = solved;
        this.palette = palette;
    }

    /**
     * Shows it.
     *
     * @param owner the window it belongs to
     * @param session what is open; its cap is in the drawings
     * @param palette the colours
     */
    public static void show(Window owner, Session session, Palette palette) {
        HelpSheet sheet = new HelpSheet(session.solvedProperty().get(), palette);
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.setTitle("Help");
        Scene scene = new Scene(sheet.pane(), 720, 640);
        scene.getStylesheets().setAll(owner.getScene().getStylesheets());
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                stage.close();
            }
        });
        stage.setScene(scene);
        stage.show();
    }

    private BorderPane pane() {
        List<HelpEntry> all = HelpEntry.all(Optional.ofNullable(solved));
        FilteredList<HelpEntry> found = new FilteredList<>(FXCollections.observableArrayList(all));
        TextField search = new TextField();
        search.setPromptText("search");
        search.setId("help-search");
        search.textProperty().addListener((o, was, is) -> found.setPredicate(entry -> is.isBlank() || entry.matches(is)));
        list.setItems(found);
        list.setId("help-entries");
        list.setCellFactory(view -> new Cell());
        HBox bar = new HBox(search);
        HBox.setHgrow(search, Priority.ALWAYS);
        bar.getStyleClass().add("view-bar");
        BorderPane pane = new BorderPane(list);
        pane.setTop(bar);
        return pane;
    }

    /** Words at the left, the drawing at the right, the heading above the first entry under it. */
    private final class Cell extends ListCell<HelpEntry> {
        @Override
        protected void updateItem(HelpEntry entry, boolean empty) {
            super.updateItem(entry, empty);
            setText(null);
            setGraphic(empty || entry == null ? null : row(entry));
        }

        private VBox row(HelpEntry entry) {
            VBox words = new VBox(2);
            if (!entry.title().isEmpty()) {
                Label title = new Label(entry.title());
                title.getStyleClass().add("help-title");
                words.getChildren().add(wrapped(title));
            }
            words.getChildren().add(wrapped(new Label(entry.text())));
            HBox.setHgrow(words, Priority.ALWAYS);
            HBox line = new HBox(12, words);
            entry.pointer().ifPresent(pointer -> {
                Sketch sketch = Sketch.of(drawing -> PointerSketch.paint(drawing, solved.cap(), palette, pointer));
                sketch.setMinSize(DRAWING_WIDTH, DRAWING_HEIGHT);
                sketch.setMaxSize(DRAWING_WIDTH, DRAWING_HEIGHT);
                line.getChildren().add(sketch);
            });
            VBox row = new VBox(4);
            if (getIndex() == 0 || !getListView().getItems().get(getIndex() - 1).heading().equals(entry.heading())) {
                Label heading = new Label(entry.heading());
                heading.getStyleClass().add("job-name");
                row.getChildren().add(heading);
            }
            row.getChildren().add(line);
            row.getStyleClass().add("check-row");
            row.maxWidthProperty().bind(list.widthProperty().subtract(24));
            return row;
        }

        private static Label wrapped(Label label) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
            return label;
        }
    }
}

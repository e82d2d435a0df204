package org.capwright.desk.view;

import javafx.geometry.Insets;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.capwright.check.Influence;
import org.capwright.check.Influences;
import org.capwright.check.Measure;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Latest;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;

/** What buys what: the inputs that move the chosen figure, largest first. Choosing one goes to its field. */
final class BuysPane extends VBox {
    private static final double EDGES = 46;
    private static final double CHANGE_WIDTH = 96;

    private final Session session;
    private final Latest latest;
    private final ComboBox<Measure> measure = new ComboBox<>();
    private final Label now = new Label();
    private final ListView<Influence> list = new ListView<>();

    BuysPane(Session session, Attention attention, Latest latest) {
        this.latest = latest;
        this.session = session;
        Label title = new Label("WHAT BUYS WHAT");
        title.getStyleClass().add("pane-title");
        measure.getItems().setAll(Measure.values());
        measure.setValue(Measure.LIFT_PRESSURE);
        measure.setMaxWidth(Double.MAX_VALUE);
        measure.setId("measure");
        measure.setAccessibleText("Figure to trade for");
        measure.setConverter(new StringConverter<>() {
            @Override
            public String toString(Measure value) {
                return value == null ? "" : value.words();
            }

            @Override
            public Measure fromString(String text) {
                return Measure.LIFT_PRESSURE;
            }
        });
        measure.valueProperty().addListener((o, was, is) -> show());
        list.setAccessibleText("Inputs that move the figure");
        list.setCellFactory(view -> new Cell());
        list.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> {
            if (is != null) {
                attention.inputPathProperty().set(is.input().path());
            }
        });
        now.getStyleClass().addAll("quiet", "small");
        now.setPadding(new Insets(3, 10, 3, 10));
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(title, measure, now, list);
        session.solvedProperty().addListener((o, was, is) -> show());
        show();
    }

    private void show() {
        Solved solved = session.solvedProperty().get();
        if (solved == null) {
            list.getItems().clear();
            return;
        }
        Measure figure = measure.getValue();
        now.setText("now " + figure.quantity().words(figure.of(solved.cap()), solved.format())
                + "; one step of each input changes it by");
        latest.ask(overtaken -> Influences.of(solved.cap(), figure), list.getItems()::setAll, e -> {
            throw e;
        });
    }

    /** One input; its nodes stay while influences come and go. */
    private final class Cell extends ListCell<Influence> {
        private final Label change = new Label();
        private final Label words = new Label();
        private final HBox row = new HBox(6, change, words);

        Cell() {
            change.setMinWidth(CHANGE_WIDTH);
            words.setWrapText(true);
            words.setMinHeight(Region.USE_PREF_SIZE);
            row.getStyleClass().add("check-row");
        }

        @Override
        protected void updateItem(Influence influence, boolean empty) {
            super.updateItem(influence, empty);
            if (empty || influence == null) {
                setGraphic(null);
                return;
            }
            change.setText((influence.change() > 0 ? "+" : "") + measure.getValue().quantity().words(influence.change(),
                    session.solvedProperty().get().format()));
            words.setText(label(influence) + " " + influence.from() + " to " + influence.to());
            // a list cell asks for its height before it knows its width
            words.setPrefWidth(Math.max(60, list.getWidth() - CHANGE_WIDTH - EDGES));
            row.setMaxWidth(list.getWidth() - 22);
            if (getGraphic() != row) {
                setGraphic(row);
            }
        }
    }

    /** Its group and label, such as {@code leaves gauge}. */
    private static String label(Influence influence) {
        String path = influence.input().path();
        return path.substring(0, path.indexOf('.')) + ", " + influence.input().label() + ":";
    }
}

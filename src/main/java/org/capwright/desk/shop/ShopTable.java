package org.capwright.desk.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javafx.scene.control.Button;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.capwright.desk.session.ShopFile;

/** A list of a shop's file as rows of fields, to be added to and taken from. */
final class ShopTable extends BorderPane {
    private final ShopFile<?> file;
    private final String list;
    private final List<Column> columns;
    private final ListView<Integer> rows = new ListView<>();

    /**
     * A column.
     *
     * @param name of the field
     * @param label in front of it
     * @param width in letters
     * @param words to choose from; none for free text
     */
    record Column(String name, String label, int width, List<String> words) {
        static Column text(String name, String label, int width) {
            return new Column(name, label, width, List.of());
        }
    }

    ShopTable(ShopFile<?> file, String list, List<Column> columns, Map<String, String> first) {
        this.file = file;
        this.list = list;
        this.columns = columns;
        Button add = new Button("Add a row");
        add.setOnAction(event -> {
            file.add(list, first);
            rows.scrollTo(rows.getItems().size() - 1);
        });
        HBox bar = new HBox(8, add);
        bar.getStyleClass().add("view-bar");
        rows.setId("shop-" + list);
        rows.setCellFactory(view -> cell());
        setCenter(rows);
        setBottom(bar);
        file.textProperty().addListener((o, was, is) -> show());
        show();
    }

    private void show() {
        int size = file.textProperty().get().listSize(list);
        if (rows.getItems().size() != size) {
            rows.getItems().setAll(IntStream.range(0, size).boxed().toList());
        }
    }

    private ListCell<Integer> cell() {
        return new ListCell<>() {
            @Override
            protected void updateItem(Integer index, boolean empty) {
                super.updateItem(index, empty);
                setGraphic(empty || index == null ? null : row(index));
            }
        };
    }

    private HBox row(int index) {
        List<Region> fields = new ArrayList<>();
        for (Column column : columns) {
            fields.add(new ShopField(file, list + "[" + index + "]." + column.name(), column.label(), column.width(), column.words()));
        }
        Button remove = new Button("Take out");
        remove.setMinWidth(Region.USE_PREF_SIZE);
        remove.setOnAction(event -> file.remove(list, index));
        HBox row = new HBox(8);
        row.getChildren().addAll(fields);
        row.getChildren().add(remove);
        row.getStyleClass().add("check-row");
        return row;
    }
}

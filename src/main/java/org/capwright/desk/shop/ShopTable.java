package org.capwright.desk.shop;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import org.capwright.desk.session.ShopFile;

/** A list of a shop's file as a table, to be typed in, added to and taken from. */
final class ShopTable extends BorderPane {
    private final ShopFile<?> file;
    private final String list;
    private final TableView<Integer> rows = new TableView<>();

    /**
     * A column.
     *
     * @param name of the field
     * @param label at its head
     * @param width in pixels at first
     * @param words to choose from; none for free text
     */
    record Column(String name, String label, double width, List<String> words) {
        static Column text(String name, String label, double width) {
            return new Column(name, label, width, List.of());
        }
    }

    ShopTable(ShopFile<?> file, String list, List<Column> columns, Map<String, String> first) {
        this.file = file;
        this.list = list;
        Button add = new Button("Add a row");
        add.setOnAction(event -> {
            file.add(list, first);
            rows.getSelectionModel().clearAndSelect(rows.getItems().size() - 1);
            rows.scrollTo(rows.getItems().size() - 1);
        });
        Button remove = new Button("Take the row out");
        remove.disableProperty().bind(rows.getSelectionModel().selectedItemProperty().isNull());
        remove.setOnAction(event -> file.remove(list, rows.getSelectionModel().getSelectedIndex()));
        HBox bar = new HBox(8, add, remove);
        bar.getStyleClass().add("view-bar");
        rows.setEditable(true);
        rows.getSelectionModel().setCellSelectionEnabled(true);
        rows.setId("shop-" + list);
        columns.forEach(column -> rows.getColumns().add(column(column)));
        setCenter(rows);
        setBottom(bar);
        file.textProperty().addListener((o, was, is) -> show());
        file.problemsProperty().addListener((o, was, is) -> rows.refresh());
        show();
    }

    private TableColumn<Integer, String> column(Column column) {
        TableColumn<Integer, String> shown = new TableColumn<>(column.label());
        shown.setPrefWidth(column.width());
        shown.setSortable(false);
        shown.setReorderable(false);
        shown.setCellValueFactory(row -> new ReadOnlyStringWrapper(file.textProperty().get().at(path(row.getValue(),
                column)).orElse("")));
        shown.setCellFactory(view -> new ShopCell(column.words(), index -> refused(path(index, column))));
        shown.setOnEditCommit(edit -> file.type(path(edit.getRowValue(), column), edit.getNewValue()));
        return shown;
    }

    private String path(int index, Column column) {
        return list + "[" + index + "]." + column.name();
    }

    private boolean refused(String path) {
        return file.problemsProperty().get().stream().anyMatch(problem -> problem.path().equals(path));
    }

    private void show() {
        int size = file.textProperty().get().listSize(list);
        if (rows.getItems().size() != size) {
            rows.getItems().setAll(IntStream.range(0, size).boxed().toList());
        }
        rows.refresh();
    }
}

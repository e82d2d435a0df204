package org.capwright.desk.shop;

import java.util.List;
import java.util.function.IntPredicate;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TableCell;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;

/** A cell that is typed in after a click; Enter or leaving it commits, Escape does not. Refused text is marked and stays. */
final class ShopCell extends TableCell<Integer, String> {
    private final List<String> words;
    private final IntPredicate refused;
    private TextField field;

    ShopCell(List<String> words, IntPredicate refused) {
        this.words = words;
        this.refused = refused;
        setOnMouseClicked(event -> {
            if (event.getButton() == MouseButton.PRIMARY && !isEmpty() && !isEditing()) {
                getTableView().edit(getIndex(), getTableColumn());
            }
        });
    }

    @Override
    public void startEdit() {
        super.startEdit();
        if (!isEditing()) {
            return;
        }
        setText(null);
        if (words.isEmpty()) {
            type();
        } else {
            choose();
        }
    }

    private void type() {
        field = new TextField(getItem());
        field.setOnAction(event -> commitEdit(field.getText()));
        field.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                cancelEdit();
                event.consume();
            }
        });
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is && isEditing()) {
                commitEdit(field.getText());
            }
        });
        setGraphic(field);
        field.requestFocus();
        field.selectAll();
    }

    private void choose() {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().setAll(words);
        box.setValue(getItem());
        box.setMaxWidth(Double.MAX_VALUE);
        box.setOnAction(event -> commitEdit(box.getValue()));
        setGraphic(box);
        box.requestFocus();
        box.show();
    }

    @Override
    public void cancelEdit() {
        super.cancelEdit();
        setGraphic(null);
        setText(getItem());
    }

    @Override
    protected void updateItem(String item, boolean empty) {
        super.updateItem(item, empty);
        setGraphic(null);
        setText(empty ? null : item);
        getStyleClass().remove("refused-cell");
        if (!empty && refused.test(getIndex())) {
            getStyleClass().add("refused-cell");
        }
    }
}

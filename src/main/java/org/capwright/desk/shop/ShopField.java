package org.capwright.desk.shop;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.capwright.desk.session.ShopFile;

/** One field of a shop's file: typed at Enter or on leaving; refused text stays with its reason below. */
final class ShopField extends VBox {
    private final ShopFile<?> file;
    private final String path;
    private final Control editor;
    private final Label refusal = new Label();

    ShopField(ShopFile<?> file, String path, String label, int columns) {
        this(file, path, label, columns, List.of());
    }

    ShopField(ShopFile<?> file, String path, String label, int columns, List<String> words) {
        this.file = file;
        this.path = path;
        this.editor = words.isEmpty() ? text(columns) : choice(words);
        Label name = new Label(label);
        name.setMinWidth(Region.USE_PREF_SIZE);
        name.setLabelFor(editor);
        editor.setId("shop-" + path.replace('.', '-').replace('[', '-').replace("]", ""));
        editor.setAccessibleText(label);
        refusal.getStyleClass().add("refusal");
        refusal.setWrapText(true);
        HBox line = new HBox(6, name, editor);
        line.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(line, refusal);
        file.textProperty().addListener((o, was, is) -> show());
        file.problemsProperty().addListener((o, was, is) -> show());
        show();
    }

    private TextField text(int columns) {
        TextField field = new TextField();
        field.setPrefColumnCount(columns);
        field.setOnAction(event -> type(field.getText()));
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                type(field.getText());
            }
        });
        return field;
    }

    private ComboBox<String> choice(List<String> words) {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().setAll(words);
        box.valueProperty().addListener((o, was, is) -> {
            if (is != null) {
                type(is);
            }
        });
        return box;
    }

    private void type(String text) {
        if (!text.strip().equals(typed())) {
            file.type(path, text);
        }
    }

    private String typed() {
        return file.textProperty().get().at(path).orElse("");
    }

    @SuppressWarnings("unchecked") // every choice holds words
    private void show() {
        if (editor instanceof TextField field) {
            field.setText(typed());
        } else {
            ((ComboBox<String>) editor).setValue(typed());
        }
        String reason = file.problemsProperty().get().stream().filter(problem -> problem.path().equals(path)).findFirst()
                .map(problem -> problem.reason() + ". " + problem.remedy() + ".").orElse("");
        refusal.setText(reason);
        refusal.setManaged(!reason.isEmpty());
        getStyleClass().remove("refused");
        if (!reason.isEmpty()) {
            getStyleClass().add("refused");
        }
    }
}

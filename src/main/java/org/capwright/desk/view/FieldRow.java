package org.capwright.desk.view;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.capwright.check.ShopSize;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.job.Input;
import org.capwright.job.Problem;
import org.capwright.part.AutoValues;
import org.capwright.units.Angle;
import org.capwright.units.Length;

/**
 * One input: label, what is typed, what auto came to, and why it is refused. Invalid text stays in its field. Up and down step
 * by a shop's size.
 */
final class FieldRow extends VBox {
    private static final double LABEL_WIDTH = 128;

    private final Input<?> input;
    private final Session session;
    private final Label hint = new Label();
    private final Label refusal = new Label();
    private final Control editor;

    FieldRow(Input<?> input, Session session, Attention attention) {
        this.input = input;
        this.session = session;
        this.editor = input.kind().words().isEmpty() ? textField() : choice();
        Label label = new Label(input.label());
        label.setMinWidth(LABEL_WIDTH);
        label.setPrefWidth(LABEL_WIDTH);
        label.setLabelFor(editor);
        HBox line = new HBox(6, label, editor);
        line.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(editor, Priority.ALWAYS);
        editor.setMaxWidth(Double.MAX_VALUE);
        editor.setId("field-" + input.path().replace('.', '-').replace('[', '-').replace("]", ""));
        editor.setAccessibleText(input.label());
        editor.setAccessibleHelp(input.help());
        editor.setTooltip(new Tooltip(input.help() + "\n" + input.allowed()));
        hint.getStyleClass().addAll("quiet", "small");
        refusal.getStyleClass().add("refusal");
        refusal.setWrapText(true);
        refusal.setMinHeight(Region.USE_PREF_SIZE);
        setSpacing(1);
        getChildren().addAll(line, hint, refusal);
        editor.focusedProperty().addListener((o, was, is) -> {
            if (is) {
                attention.inputPathProperty().set(input.path());
            } else {
                session.seal();
            }
        });
        session.textProperty().addListener((o, was, is) -> show());
        session.solvedProperty().addListener((o, was, is) -> show());
        show();
    }

    /** Takes the focus, if it has not got it. */
    void begin() {
        if (!editor.isFocused()) {
            editor.requestFocus();
        }
    }

    Input<?> input() {
        return input;
    }

    private TextField textField() {
        TextField field = new TextField();
        field.textProperty().addListener((o, was, is) -> {
            if (!is.strip().equals(typed())) {
                session.type(input, is);
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN) {
                step(event.getCode() == KeyCode.UP ? 1 : -1);
                event.consume();
            }
        });
        return field;
    }

    private void step(int steps) {
        Solved solved = session.solvedProperty().get();
        if (solved != null) {
            ShopSize.stepped(solved.cap(), input, steps).ifPresent(text -> session.type(input, text));
        }
    }

    private ComboBox<String> choice() {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().setAll(input.kind().words());
        box.valueProperty().addListener((o, was, is) -> {
            if (is != null && !is.equals(typedOrDefault())) {
                session.type(input, is);
            }
        });
        return box;
    }

    private String typed() {
        return session.textProperty().get().at(input.path()).orElse("");
    }

    private String typedOrDefault() {
        String typed = typed();
        return typed.isEmpty() ? input.fallback().orElse("") : typed;
    }

    private void show() {
        if (editor instanceof TextField field) {
            showText(field);
        } else if (editor instanceof ComboBox<?> box && !typedOrDefault().equals(box.getValue())) {
            showChoice(box);
        }
        String words = hintWords();
        hint.setText(words);
        present(hint, !words.isEmpty());
        List<Problem> problems = session.problemsProperty().get().stream().filter(problem -> problem.path().equals(input.path())).toList();
        refusal.setText(problems.isEmpty() ? "" : problems.get(0).reason() + ". " + problems.get(0).remedy() + ".");
        present(refusal, !problems.isEmpty());
        getStyleClass().remove("refused");
        if (!problems.isEmpty()) {
            getStyleClass().add("refused");
        }
    }

    private void showText(TextField field) {
        if (!field.getText().strip().equals(typed())) {
            field.setText(typed());
        }
        field.setPromptText(input.fallback().filter(text -> !text.isEmpty()).orElse(input.kind().example()));
    }

    @SuppressWarnings("unchecked") // every choice holds words
    private void showChoice(ComboBox<?> box) {
        ((ComboBox<String>) box).setValue(typedOrDefault());
    }

    /** What auto came to; for a gauge the thickness. */
    private String hintWords() {
        Solved solved = session.solvedProperty().get();
        boolean auto = input.mayBeAuto() && (typed().isEmpty() || typed().equals(Input.AUTO));
        if (solved == null || !auto) {
            return "";
        }
        Optional<?> value = AutoValues.of(solved.cap(), input);
        return value.map(v -> "auto: " + words(v, solved)).orElse("");
    }

    private String words(Object value, Solved solved) {
        if (value instanceof Length length) {
            return input.name().equals("thickness") || input.name().equals("insideRadius") ? solved.format().thickness(length)
                    : solved.format().length(length);
        }
        return value instanceof Angle angle ? solved.format().angle(angle) : String.valueOf(value);
    }

    private static void present(Label label, boolean there) {
        label.setVisible(there);
        label.setManaged(there);
    }
}

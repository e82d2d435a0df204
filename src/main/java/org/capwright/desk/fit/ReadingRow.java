package org.capwright.desk.fit;

import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.capwright.desk.session.FitDesk;
import org.capwright.fitup.Residual;
import org.capwright.fitup.SheetLine;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** One reading: what to measure, what was measured, what it is off the fit by. Enter and Down go on, Up goes back. */
final class ReadingRow extends VBox {
    private static final double FIELD_PX = 128;

    private final FitDesk desk;
    private final TextField field = new TextField();
    private final Label note = new Label();
    private final Label refusal = new Label();
    private SheetLine line;

    ReadingRow(FitDesk desk, SheetLine first) {
        this.desk = desk;
        this.line = first;
        Label words = new Label(first.words());
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.setLabelFor(field);
        field.getStyleClass().add("reading");
        field.setPrefWidth(FIELD_PX);
        field.setAccessibleText(first.section() + ", " + first.words());
        field.textProperty().addListener((o, was, is) -> {
            if (!is.strip().equals(line.typed())) {
                desk.type(line, is);
            }
        });
        note.getStyleClass().addAll("quiet", "small");
        FlowPane entry = new FlowPane(8, 2, field, note);
        entry.setRowValignment(VPos.CENTER);
        refusal.getStyleClass().add("refusal");
        refusal.setWrapText(true);
        refusal.setMinHeight(Region.USE_PREF_SIZE);
        getStyleClass().add("reading-row");
        setSpacing(2);
        getChildren().addAll(words, entry, refusal);
    }

    SheetLine line() {
        return line;
    }

    TextField field() {
        return field;
    }

    /** What a key means to the walk from reading to reading: +1 on, -1 back, 0 nothing. */
    static int step(KeyEvent event) {
        return switch (event.getCode()) {
            case ENTER -> event.isShiftDown() ? -1 : 1;
            case DOWN -> 1;
            case UP -> -1;
            default -> 0;
        };
    }

    void show(SheetLine now, ShopFormat format, Optional<Residual> residual) {
        line = now;
        field.setId("reading-" + now.path().replace('.', '-').replace('[', '-').replace("]", ""));
        if (!field.getText().strip().equals(now.typed()) && desk.refused(now.path()).isEmpty()) {
            field.setText(now.typed());
        }
        String drawn = "drawn " + format.length(Length.ofMm(now.drawnMm()));
        note.setText(residual.map(one -> "off the fit " + format.length(Length.ofMm(one.mm()))
                + (one.suspect() ? "\ndisagrees with the rest" : "")
                + "\n" + drawn).orElse(drawn));
        String refused = desk.refused(now.path()).orElse("");
        refusal.setText(refused);
        refusal.setVisible(!refused.isEmpty());
        refusal.setManaged(!refused.isEmpty());
        getStyleClass().removeAll("refused", "suspect");
        if (!refused.isEmpty()) {
            getStyleClass().add("refused");
        } else if (residual.filter(Residual::suspect).isPresent()) {
            getStyleClass().add("suspect");
        }
    }
}

package org.capwright.desk.view;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.capwright.check.Check;
import org.capwright.check.Remedies;
import org.capwright.check.Remedy;
import org.capwright.check.Verdict;
import org.capwright.desk.sketch.Marks;
import org.capwright.stock.StockFit;
import org.capwright.units.ShopFormat;

/**
 * A check: what, found, limit; what is not clear shows where its limit comes from and how to mend it, and the chosen one explains
 * itself. Its nodes stay while checks come and go: styling new ones is what takes time.
 */
final class CheckCell extends ListCell<Check> {
    private static final double VERDICT_PX = 58;
    private static final double EDGES_PX = 22;
    private static final double GAPS_PX = 34;
    private static final double LEAST_PX = 70;
    private static final double LETTER_PX = 7.4;
    private static final int MOST_REMEDIES = 2;

    private final Source source;
    private final Label verdict = new Label();
    private final Label words = new Label();
    private final Label value = new Label();
    private final Label explanation = quiet();
    private final Label limit = quiet();
    private final VBox remedies = new VBox(2);
    private final VBox row;

    /**
     * What the cell asks for.
     *
     * @param format how numbers are printed now
     * @param chosen whether a check is chosen
     * @param remedies remedies of a check, empty while they are looked for
     * @param apply applies a remedy
     */
    record Source(Function<Check, ShopFormat> format, Predicate<Check> chosen, Function<Check, Optional<List<Remedy>>> remedies,
            Consumer<Remedy> apply) {
    }

    CheckCell(Source source) {
        this.source = source;
        verdict.setMinWidth(VERDICT_PX);
        words.setWrapText(true);
        value.setMinWidth(Region.USE_PREF_SIZE);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        row = new VBox(2, new HBox(6, verdict, words, gap, value), explanation, limit, remedies);
        row.getStyleClass().add("check-row");
    }

    @Override
    protected void updateItem(Check check, boolean empty) {
        super.updateItem(check, empty);
        setText(null);
        if (empty || check == null) {
            setGraphic(null);
            setAccessibleText(null);
            return;
        }
        show(check, source.format().apply(check));
        if (getGraphic() != row) {
            setGraphic(row);
        }
    }

    private void show(Check check, ShopFormat format) {
        row.setMaxWidth(getListView().getWidth() - EDGES_PX);
        verdict.setText(Marks.sign(check.verdict()) + " " + check.verdict().word());
        if (!verdict.getStyleClass().contains(Marks.style(check.verdict()))) {
            verdict.getStyleClass().setAll("label", Marks.style(check.verdict()));
        }
        words.setText(check.words());
        value.setText(check.quantity().words(check.value(), format) + (check.estimate() ? " est." : ""));
        // a list cell asks for its height before it knows its width
        words.setPrefWidth(Math.max(LEAST_PX, getListView().getWidth() - EDGES_PX - GAPS_PX - VERDICT_PX - value.getText().length() * LETTER_PX));
        words.setMinHeight(Region.USE_PREF_SIZE);
        boolean chosen = source.chosen().test(check);
        boolean clear = check.verdict() == Verdict.CLEAR;
        say(explanation, chosen ? check.explanation() : "");
        say(limit, chosen || !clear ? (check.limit().least() ? "at least " : "at most ")
                + check.quantity().words(check.limit().value(), format) + ": " + check.limit().source() : "");
        if (!clear || !remedies.getChildren().isEmpty()) {
            remedies.getChildren().clear();
        }
        if (!clear) {
            mend(check);
        }
        setAccessibleText(check.verdict().word() + ", " + check.line(format));
    }

    private void mend(Check check) {
        Optional<List<Remedy>> found = source.remedies().apply(check);
        if (StockFit.made(check)) {
            note(StockFit.REMEDY);
        } else if (found.isEmpty()) {
            note("looking for a remedy");
        } else if (found.get().isEmpty()) {
            note(Remedies.sentence(found.get()));
        } else {
            found.get().stream().limit(MOST_REMEDIES).forEach(this::offer);
        }
    }

    private void note(String text) {
        Label label = quiet();
        label.setText(text);
        remedies.getChildren().add(label);
    }

    private void offer(Remedy remedy) {
        Button apply = new Button("Apply");
        apply.setMinWidth(Region.USE_PREF_SIZE);
        apply.getStyleClass().add("apply");
        apply.setAccessibleText("Apply: " + remedy.words());
        apply.setOnAction(event -> source.apply().accept(remedy));
        Label label = quiet();
        label.setText(remedy.words() + (remedy.spoilsNothing() ? "" : " (another check gets worse)"));
        remedies.getChildren().add(new HBox(6, apply, label));
    }

    private static void say(Label label, String text) {
        label.setText(text);
        label.setVisible(!text.isEmpty());
        label.setManaged(!text.isEmpty());
    }

    private static Label quiet() {
        Label label = new Label();
        label.setWrapText(true);
        label.getStyleClass().addAll("quiet", "small");
        return label;
    }
}

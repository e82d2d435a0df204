package org.capwright.desk.view;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.capwright.check.Check;
import org.capwright.check.Remedies;
import org.capwright.check.Remedy;
import org.capwright.check.Verdict;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Latest;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.sketch.Marks;
import org.capwright.stock.StockFit;

/** The checks, fouls first, each with margin, limit, source and a remedy that a button applies. */
final class CheckPane extends VBox {
    private final Session session;
    private final Attention attention;
    private final Latest latest;
    private final Map<String, List<Remedy>> found = new HashMap<>();
    private final Label title = new Label();
    private final ObservableList<Check> checks = FXCollections.observableArrayList();
    private final ListView<Check> list = new ListView<>(checks);

    CheckPane(Session session, Attention attention, Latest latest) {
        this.latest = latest;
        this.session = session;
        this.attention = attention;
        title.getStyleClass().add("pane-title");
        title.setId("check-title");
        list.setId("checks");
        list.setAccessibleText("Checks, fouls first");
        list.setCellFactory(view -> new Cell());
        list.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> {
            if (is != null && is != attention.checkProperty().get()) {
                attention.choose(is);
            }
        });
        attention.checkProperty().addListener((o, was, is) -> {
            if (is != null) {
                list.getSelectionModel().select(is);
            }
            list.refresh();
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(title, list);
        session.solvedProperty().addListener((o, was, is) -> show());
        session.problemsProperty().addListener((o, was, is) -> show());
        show();
    }

    private void show() {
        Solved solved = session.solvedProperty().get();
        Check chosen = attention.checkProperty().get();
        List<Check> now = solved == null ? List.of() : solved.checks();
        if (!checks.equals(now)) {
            found.clear();
            checks.setAll(now);
            seek(solved);
            attention.checkProperty().set(chosen == null ? null
                    : now.stream().filter(check -> check.id().equals(chosen.id())).findFirst().orElse(null));
        }
        title.setText(summary(now));
    }

    /** Remedies are found by trying, off the screen's thread; each shows as soon as it is there. */
    private void seek(Solved solved) {
        List<Check> wanted = checks.stream().filter(check -> check.verdict() != Verdict.CLEAR && !StockFit.made(check)).toList();
        if (solved == null || wanted.isEmpty()) {
            latest.drop();
            return;
        }
        latest.<Void>ask(overtaken -> {
            for (Check check : wanted) {
                if (overtaken.getAsBoolean()) {
                    return null;
                }
                List<Remedy> remedies = Remedies.of(solved.cap(), solved.checks(), check);
                latest.tell(overtaken, () -> {
                    found.put(check.id(), remedies);
                    list.refresh();
                });
            }
            return null;
        }, nothing -> { }, e -> {
            throw e;
        });
    }

    private String summary(List<Check> now) {
        int problems = session.problemsProperty().get().size();
        String refused = problems == 0 ? "" : "   " + problems + " refused";
        return "CHECKS   " + count(now, Verdict.FOUL) + " foul  " + count(now, Verdict.TIGHT) + " tight  " + count(now, Verdict.CLEAR)
                + " clear" + refused;
    }

    private static long count(List<Check> checks, Verdict verdict) {
        return checks.stream().filter(check -> check.verdict() == verdict).count();
    }

    /** A check: what, found, limit; what is not clear shows where its limit comes from and how to mend it. */
    private final class Cell extends ListCell<Check> {
        @Override
        protected void updateItem(Check check, boolean empty) {
            super.updateItem(check, empty);
            setText(null);
            setGraphic(empty || check == null ? null : row(check));
            setAccessibleText(empty || check == null ? null : check.verdict().word() + ", " + check.line(session.solvedProperty().get().format()));
        }

        private VBox row(Check check) {
            Solved solved = session.solvedProperty().get();
            Label verdict = new Label(Marks.sign(check.verdict()) + " " + check.verdict().word());
            verdict.getStyleClass().add(Marks.style(check.verdict()));
            verdict.setMinWidth(58);
            Label words = new Label(check.words());
            words.setWrapText(true);
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            Label value = new Label(check.quantity().words(check.value(), solved.format()) + (check.estimate() ? " est." : ""));
            value.setMinWidth(Region.USE_PREF_SIZE);
            VBox row = new VBox(2, new HBox(6, verdict, words, gap, value));
            row.getStyleClass().add("check-row");
            row.setMaxWidth(list.getWidth() - 22);
            boolean chosen = check.equals(attention.checkProperty().get());
            if (chosen) {
                row.getChildren().add(quiet(check.explanation()));
            }
            if (check.verdict() != Verdict.CLEAR || chosen) {
                row.getChildren().add(quiet((check.limit().least() ? "at least " : "at most ")
                        + check.quantity().words(check.limit().value(), solved.format()) + ": " + check.limit().source()));
            }
            if (check.verdict() != Verdict.CLEAR) {
                remedies(row, check);
            }
            return row;
        }

        private void remedies(VBox row, Check check) {
            if (StockFit.made(check)) {
                row.getChildren().add(quiet(StockFit.REMEDY));
                return;
            }
            List<Remedy> remedies = found.get(check.id());
            if (remedies == null) {
                row.getChildren().add(quiet("looking for a remedy"));
                return;
            }
            if (remedies.isEmpty()) {
                row.getChildren().add(quiet(Remedies.sentence(remedies)));
            }
            for (Remedy remedy : remedies.subList(0, Math.min(2, remedies.size()))) {
                Button apply = new Button("Apply");
                apply.setMinWidth(Region.USE_PREF_SIZE);
                apply.getStyleClass().add("apply");
                apply.setAccessibleText("Apply: " + remedy.words());
                apply.setOnAction(event -> session.type(remedy.typed()));
                Label words = quiet(remedy.words() + (remedy.spoilsNothing() ? "" : " (another check gets worse)"));
                row.getChildren().add(new HBox(6, apply, words));
            }
        }

        private static Label quiet(String text) {
            Label label = new Label(text);
            label.setWrapText(true);
            label.getStyleClass().addAll("quiet", "small");
            return label;
        }
    }
}

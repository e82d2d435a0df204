package org.capwright.desk.view;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.capwright.check.Check;
import org.capwright.check.Remedies;
import org.capwright.check.Remedy;
import org.capwright.check.Verdict;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Latest;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
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
        CheckCell.Source source = new CheckCell.Source(check -> session.solvedProperty().get().format(),
                check -> check.equals(attention.checkProperty().get()),
                check -> Optional.ofNullable(found.get(check.id())), remedy -> session.type(remedy.typed()));
        list.setCellFactory(view -> new CheckCell(source));
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
        return "CHECKS   " + count(now, Verdict.FOUL) + " foul  " + count(now, Verdict.TIGHT) + " tight  "
                + count(now, Verdict.CLEAR)
                + " clear" + refused;
    }

    private static long count(List<Check> checks, Verdict verdict) {
        return checks.stream().filter(check -> check.verdict() == verdict).count();
    }
}

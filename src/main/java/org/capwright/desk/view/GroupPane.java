package org.capwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.capwright.check.Check;
import org.capwright.check.Remedies;
import org.capwright.check.Verdict;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.sketch.Marks;
import org.capwright.job.Group;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.JobInputs;

/** A group of inputs that folds; folded it shows its state in a line, and a mark where a check concerns it. */
final class GroupPane extends VBox {
    private static final int SUMMARY_INPUTS = 3;

    private final Group group;
    private final int letter;
    private final Session session;
    private final Attention attention;
    private final Button head = new Button();
    private final VBox body = new VBox(5);
    private final List<FieldRow> rows = new ArrayList<>();

    GroupPane(Group group, int letter, Session session, Attention attention, boolean open) {
        this.group = group;
        this.letter = letter;
        this.session = session;
        this.attention = attention;
        body.getStyleClass().add("group-body");
        head.getStyleClass().add("group-head");
        head.setMaxWidth(Double.MAX_VALUE);
        head.setMnemonicParsing(true);
        head.setOnAction(event -> fold(body.isVisible()));
        getChildren().addAll(head, body);
        session.solvedProperty().addListener((o, was, is) -> show());
        session.problemsProperty().addListener((o, was, is) -> show());
        attention.inputPathProperty().addListener((o, was, is) -> {
            if (group.inputs().stream().anyMatch(input -> input.path().equals(is))) {
                fold(false);
                rows.stream().filter(row -> row.input().path().equals(is)).forEach(FieldRow::begin);
            }
        });
        fold(!open);
    }

    /** Puts the focus on its first field; false where it is folded. */
    boolean begin() {
        if (!body.isVisible() || rows.isEmpty()) {
            return false;
        }
        rows.get(0).begin();
        return true;
    }

    /** Fields are made when the group is opened for the first time: most groups of most jobs never are. */
    private void fill() {
        for (Input<?> input : group.inputs()) {
            if (!input.path().contains("[]")) {
                FieldRow row = new FieldRow(input, session, attention);
                rows.add(row);
                body.getChildren().add(row);
            }
        }
        if (group.inputs().stream().anyMatch(input -> input.path().startsWith(HoodInputs.BEADS + "["))) {
            body.getChildren().add(new BeadList(session, attention));
        }
    }

    void fold(boolean folded) {
        if (!folded && body.getChildren().isEmpty()) {
            fill();
        }
        body.setVisible(!folded);
        body.setManaged(!folded);
        show();
    }

    private void show() {
        String state = body.isVisible() ? "" : "   " + summary();
        head.setText((body.isVisible() ? "\u25be " : "\u25b8 ") + label() + (mark() + state).replace("_", "__"));
        head.setAccessibleText(group.label() + (body.isVisible() ? ", open" : ", folded"));
    }

    /** Its label with the letter for Alt marked as buttons want it. */
    private String label() {
        return letter < 0 ? group.label() : group.label().substring(0, letter) + "_" + group.label().substring(letter);
    }

    private String mark() {
        boolean refused = session.problemsProperty().get().stream().anyMatch(problem -> problem.path().startsWith(group.key()
                + "."));
        Solved solved = session.solvedProperty().get();
        if (refused) {
            return "  " + Marks.sign(Verdict.FOUL);
        }
        Optional<Verdict> worst = solved == null ? Optional.empty() : solved.checks().stream()
                .filter(check -> check.verdict() != Verdict.CLEAR && concerns(check)).map(Check::verdict).findFirst();
        return worst.map(verdict -> "  " + Marks.sign(verdict)).orElse("");
    }

    private boolean concerns(Check check) {
        return Remedies.inputs(check).stream().anyMatch(group.inputs()::contains);
    }

    /** The first things typed, such as {@code galvanized, 20, 1/2 in}. */
    private String summary() {
        return group.inputs().stream().filter(input -> input != JobInputs.VERSION).map(input -> session.textProperty().get().at(input.path())).flatMap(Optional::stream)
                .filter(text -> !text.isBlank()).limit(SUMMARY_INPUTS).collect(Collectors.joining(", "));
    }
}

package org.capwright.desk.view;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Session;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.JobText;

/** The hood's beads: as many rows as there are, one more at a button, back to the rule at another. */
final class BeadList extends VBox {
    private static final List<Input<?>> ONE = List.of(HoodInputs.BEAD_FROM_TOP, HoodInputs.BEAD_WIDTH, HoodInputs.BEAD_DEPTH,
            HoodInputs.BEAD_SIDE);

    private final Session session;
    private final Attention attention;
    private final VBox rows = new VBox(6);
    private int shown = -1;

    BeadList(Session session, Attention attention) {
        this.session = session;
        this.attention = attention;
        Button add = new Button("Add a bead");
        add.setOnAction(event -> add());
        Button auto = new Button("Beads by rule");
        auto.setOnAction(event -> session.replace(byRule(session.textProperty().get())));
        setSpacing(6);
        getChildren().addAll(new Label("Beads"), rows, new HBox(6, add, auto));
        session.textProperty().addListener((o, was, is) -> show());
        show();
    }

    private void show() {
        int size = session.textProperty().get().listSize(HoodInputs.BEADS);
        if (size == shown) {
            return;
        }
        shown = size;
        rows.getChildren().clear();
        if (size == 0) {
            Label rule = new Label("auto: two outward beads, an inch in from each edge");
            rule.getStyleClass().addAll("quiet", "small");
            rows.getChildren().add(rule);
        }
        for (int i = 0; i < size; i++) {
            int index = i;
            VBox bead = new VBox(3, new Label("bead " + (i + 1)));
            ONE.forEach(input -> bead.getChildren().add(new FieldRow(input.at(index), session, attention)));
            Button remove = new Button("Take this bead out");
            remove.setOnAction(event -> session.replace(session.textProperty().get().withoutElement(HoodInputs.BEADS, index)));
            bead.getChildren().add(remove);
            rows.getChildren().add(bead);
        }
    }

    private void add() {
        int size = session.textProperty().get().listSize(HoodInputs.BEADS);
        session.replace(session.textProperty().get().without(HoodInputs.BEADS).with(HoodInputs.BEAD_FROM_TOP.at(size).path(),
                "1 in"));
    }

    /** Beads by rule again: none typed, and no word that says "none". */
    private static JobText byRule(JobText text) {
        JobText now = text.without(HoodInputs.BEADS);
        while (now.listSize(HoodInputs.BEADS) > 0) {
            now = now.withoutElement(HoodInputs.BEADS, 0);
        }
        return now;
    }
}

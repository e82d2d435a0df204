package org.capwright.desk.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        auto.setOnAction(event -> session.replace(without(session.textProperty().get(), -1)));
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
            remove.setOnAction(event -> session.replace(without(session.textProperty().get(), index)));
            bead.getChildren().add(remove);
            rows.getChildren().add(bead);
        }
    }

    private void add() {
        int size = session.textProperty().get().listSize(HoodInputs.BEADS);
        session.replace(without(session.textProperty().get(), Integer.MAX_VALUE).with(HoodInputs.BEAD_FROM_TOP.at(size).path(), "1 in"));
    }

    /** The text without one bead (the later ones move up), without all for -1, with all for a large index. */
    private static JobText without(JobText text, int index) {
        Map<String, String> kept = new LinkedHashMap<>();
        List<String> beads = new ArrayList<>();
        text.texts().forEach((path, typed) -> {
            if (path.startsWith(HoodInputs.BEADS + "[")) {
                beads.add(path);
            } else if (!path.equals(HoodInputs.BEADS)) {
                kept.put(path, typed);
            }
        });
        for (String path : beads) {
            int open = path.indexOf('[');
            int close = path.indexOf(']');
            int at = Integer.parseInt(path.substring(open + 1, close));
            if (index >= 0 && at != index) {
                kept.put(path.substring(0, open + 1) + (at > index ? at - 1 : at) + path.substring(close), text.at(path).orElseThrow());
            }
        }
        return JobText.of(kept);
    }
}

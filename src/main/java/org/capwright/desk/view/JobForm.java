package org.capwright.desk.view;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.capwright.desk.session.Attention;
import org.capwright.desk.session.Session;
import org.capwright.job.Group;
import org.capwright.job.Inputs;

/** The form, made from the input declarations, in the order of the work. */
final class JobForm extends VBox {
    private static final double WIDTH = 330;

    JobForm(Session session, Attention attention) {
        Label title = new Label("JOB");
        title.getStyleClass().add("pane-title");
        VBox groups = new VBox();
        Set<Character> taken = new HashSet<>();
        for (Group group : Inputs.GROUPS) {
            groups.getChildren().add(new GroupPane(group, letter(group, taken), session, attention, group.key().equals("stack")));
        }
        ScrollPane scroll = new ScrollPane(groups);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getStyleClass().add("side");
        setPrefWidth(WIDTH);
        setMinWidth(WIDTH - 60);
        getChildren().addAll(title, scroll);
    }

    /** The first letter of its label that no group before it has, for Alt. */
    private static int letter(Group group, Set<Character> taken) {
        String label = group.label().toLowerCase(Locale.ROOT);
        for (int i = 0; i < label.length(); i++) {
            if (Character.isLetter(label.charAt(i)) && taken.add(label.charAt(i))) {
                return i;
            }
        }
        return -1;
    }
}

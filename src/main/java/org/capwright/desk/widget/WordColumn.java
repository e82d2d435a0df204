package org.capwright.desk.widget;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A column of titles, wrapped lines and whatever else, that scrolls up and down only. */
public final class WordColumn extends ScrollPane {
    private final VBox box;

    /**
     * An empty column.
     *
     * @param gapPx between its rows
     */
    public WordColumn(double gapPx) {
        box = new VBox(gapPx);
        box.getStyleClass().add("readings");
        setContent(box);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
    }

    /** Takes everything out. */
    public void clear() {
        box.getChildren().clear();
    }

    /**
     * Adds a title.
     *
     * @param text what it says
     */
    public void title(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("pane-title");
        add(label);
    }

    /**
     * Adds a line that wraps.
     *
     * @param text what it says
     * @return the line, to be styled
     */
    public Label line(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        add(label);
        return label;
    }

    /**
     * Adds anything.
     *
     * @param node what
     */
    public void add(Node node) {
        box.getChildren().add(node);
    }

    /**
     * Scrolls so that a row and something below it are in sight.
     *
     * @param row one of the rows
     * @param beforePx room to leave above it
     * @param afterPx room to leave below it
     */
    public void reveal(Node row, double beforePx, double afterPx) {
        double seen = getViewportBounds().getHeight();
        double room = box.getHeight() - seen;
        if (room <= 0) {
            return;
        }
        double top = getVvalue() * room;
        double from = row.getBoundsInParent().getMinY() - beforePx;
        double to = row.getBoundsInParent().getMaxY() + afterPx;
        if (from < top) {
            setVvalue(Math.max(0, from) / room);
        } else if (to > top + seen) {
            setVvalue(Math.min(1, (to - seen) / room));
        }
    }
}

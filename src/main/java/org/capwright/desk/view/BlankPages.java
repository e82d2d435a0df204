package org.capwright.desk.view;

import javafx.beans.property.ObjectProperty;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import org.capwright.desk.session.Latest;
import org.capwright.desk.session.Session;
import org.capwright.desk.sketch.Palette;

/** The blanks, flat, or page by page as their templates will print. */
final class BlankPages extends BorderPane {
    private final PagesView pages;
    private final BlanksView blanks;
    private boolean watched;

    BlankPages(Session session, Latest latest, ObjectProperty<Palette> palette) {
        pages = new PagesView(session, latest);
        blanks = new BlanksView(session, palette);
        ToggleButton flat = new ToggleButton("Blanks");
        ToggleButton printed = new ToggleButton("Template pages");
        printed.setId("template-pages");
        ToggleGroup group = new ToggleGroup();
        group.getToggles().setAll(flat, printed);
        flat.setSelected(true);
        group.selectedToggleProperty().addListener((o, was, is) -> {
            if (is == null) {
                was.setSelected(true);
            } else {
                setCenter(is == printed ? pages : blanks);
                pages.setShown(watched && is == printed);
            }
        });
        HBox bar = new HBox(6, flat, printed);
        bar.getStyleClass().add("view-bar");
        setTop(bar);
        setCenter(blanks);
    }

    /** Whether it is looked at. */
    void setWatched(boolean now) {
        watched = now;
        blanks.setShown(now);
        pages.setShown(now && getCenter() == pages);
    }
}

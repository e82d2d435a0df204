package org.capwright.desk.view;

import java.util.function.BooleanSupplier;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import org.capwright.desk.session.Latest;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.task.TemplatePages;
import org.capwright.export.pdf.Paper;

/** The true-size templates page by page, as they will print. A page is drawn when it is looked at. */
final class PagesView extends BorderPane {
    private static final double MOST_PX = 1100;

    private final Session session;
    private final Latest latest;
    private final ComboBox<Paper> paper = new ComboBox<>();
    private final ImageView page = new ImageView();
    private final Label where = new Label();
    private int index;
    private boolean shown;
    // the worker's own
    private TemplatePages pages;
    private Solved pagesOf;
    private Paper pagesOn;

    /** A page, and where it stands. */
    private record Seen(Image image, int index, int count) {
    }

    PagesView(Session session, Latest latest) {
        this.session = session;
        this.latest = latest;
        paper.getItems().setAll(Paper.values());
        paper.setValue(Paper.LETTER);
        paper.setAccessibleText("Paper");
        paper.valueProperty().addListener((o, was, is) -> go(0));
        Button back = new Button("Page back");
        back.setOnAction(event -> go(-1));
        Button on = new Button("Page on");
        on.setId("page-on");
        on.setOnAction(event -> go(1));
        where.setId("page-where");
        HBox controls = new HBox(10, new Label("paper"), paper, back, where, on);
        controls.setAlignment(Pos.CENTER_LEFT);
        controls.getStyleClass().add("view-bar");
        StackPane desk = new StackPane(page);
        desk.getStyleClass().add("readings");
        ScrollPane scroll = new ScrollPane(desk);
        scroll.setFitToWidth(true);
        page.setPreserveRatio(true);
        page.setSmooth(true);
        page.fitWidthProperty().bind(Bindings.min(MOST_PX, scroll.widthProperty().subtract(48)));
        setCenter(scroll);
        setBottom(controls);
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.PAGE_DOWN || event.getCode() == KeyCode.PAGE_UP) {
                go(event.getCode() == KeyCode.PAGE_DOWN ? 1 : -1);
                event.consume();
            }
        });
        session.solvedProperty().addListener((o, was, is) -> go(0));
    }

    /** Whether it is looked at; nothing is drawn while it is not. */
    void setShown(boolean now) {
        shown = now;
        go(0);
    }

    private void go(int by) {
        Solved solved = session.solvedProperty().get();
        if (!shown || solved == null) {
            return;
        }
        Paper on = paper.getValue();
        int wanted = index + by;
        if (by == 0) {
            where.setText("drawing");
        }
        latest.ask(overtaken -> draw(solved, on, wanted, overtaken), this::show,
                problem -> where.setText("The pages could not be drawn: " + problem.getMessage()));
    }

    private Seen draw(Solved solved, Paper on, int wanted, BooleanSupplier overtaken) {
        if (pages == null || pagesOf != solved || pagesOn != on) {
            if (pages != null) {
                pages.close();
            }
            pages = TemplatePages.of(solved, on);
            pagesOf = solved;
            pagesOn = on;
        }
        int at = wanted < 0 ? pages.count() - 1 : wanted >= pages.count() ? 0 : wanted;
        return new Seen(overtaken.getAsBoolean() ? null : pages.image(at), at, pages.count());
    }

    private void show(Seen seen) {
        index = seen.index();
        page.setImage(seen.image());
        where.setText("page " + (seen.index() + 1) + " of " + seen.count());
    }
}

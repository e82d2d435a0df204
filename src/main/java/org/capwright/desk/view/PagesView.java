package org.capwright.desk.view;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.desk.task.Background;
import org.capwright.desk.task.PageTask;
import org.capwright.export.pdf.Paper;

/** The true-size templates page by page, as they will print. Drawn anew when the view is shown and the cap has changed. */
final class PagesView extends BorderPane {
    private static final double MOST_PX = 1100;

    private final Session session;
    private final ComboBox<Paper> paper = new ComboBox<>();
    private final ImageView page = new ImageView();
    private final Label where = new Label();
    private final ProgressBar progress = new ProgressBar();
    private List<Image> images = List.of();
    private Solved drawn;
    private Paper drawnOn;
    private PageTask running;
    private int index;

    PagesView(Session session) {
        this.session = session;
        paper.getItems().setAll(Paper.values());
        paper.setValue(Paper.LETTER);
        paper.setAccessibleText("Paper");
        paper.valueProperty().addListener((o, was, is) -> refresh());
        Button back = new Button("Page back");
        back.setOnAction(event -> go(-1));
        Button on = new Button("Page on");
        on.setOnAction(event -> go(1));
        progress.setVisible(false);
        HBox controls = new HBox(10, new Label("paper"), paper, back, where, on, progress);
        controls.setAlignment(Pos.CENTER_LEFT);
        controls.setPadding(new Insets(6, 10, 6, 10));
        StackPane paperPane = new StackPane(page);
        paperPane.setPadding(new Insets(12));
        ScrollPane scroll = new ScrollPane(paperPane);
        scroll.setFitToWidth(true);
        page.setPreserveRatio(true);
        page.setSmooth(true);
        page.fitWidthProperty().bind(Bindings.min(MOST_PX, scroll.widthProperty().subtract(48)));
        setCenter(scroll);
        setBottom(controls);
    }

    /** Draws the pages if they are not those of the cap and paper now; an answer that comes too late is dropped. */
    void refresh() {
        Solved solved = session.solvedProperty().get();
        if (solved == null || solved == drawn && paper.getValue() == drawnOn) {
            return;
        }
        drawn = solved;
        drawnOn = paper.getValue();
        if (running != null) {
            running.cancel();
        }
        PageTask task = new PageTask(solved, paper.getValue(), false);
        running = task;
        progress.progressProperty().bind(task.progressProperty());
        progress.setVisible(true);
        Background.run(task, result -> {
            if (task == running) {
                images = result;
                index = Math.min(index, images.size() - 1);
                progress.setVisible(false);
                go(0);
            }
        }, problem -> {
            progress.setVisible(false);
            where.setText("The pages could not be drawn: " + problem.getMessage());
        });
    }

    private void go(int by) {
        if (images.isEmpty()) {
            return;
        }
        index = Math.floorMod(index + by, images.size());
        page.setImage(images.get(index));
        where.setText("page " + (index + 1) + " of " + images.size());
    }
}

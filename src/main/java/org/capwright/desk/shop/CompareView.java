package org.capwright.desk.shop;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.capwright.check.Measure;
import org.capwright.desk.session.PriceDesk;
import org.capwright.desk.session.Session;
import org.capwright.export.Money;
import org.capwright.price.Alternative;
import org.capwright.price.Compared;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Other ways to make the job, side by side; a button types one into the job. */
final class CompareView extends BorderPane {
    private static final int COLUMNS = 8;
    private static final double REASON_PX = 520;

    private final Session session;
    private final PriceDesk desk;
    private final GridPane grid = new GridPane();
    private final Label state = new Label();

    CompareView(Session session, PriceDesk desk) {
        this.session = session;
        this.desk = desk;
        Button compare = new Button("Compare");
        compare.setId("compare");
        compare.setOnAction(event -> desk.compare());
        compare.disableProperty().bind(desk.comparingProperty());
        HBox bar = new HBox(10, compare, state);
        bar.getStyleClass().add("view-bar");
        grid.setHgap(9);
        grid.setVgap(6);
        grid.getStyleClass().add("readings");
        setTop(bar);
        setCenter(new ScrollPane(grid));
        desk.alternativesProperty().addListener((o, was, is) -> show());
        desk.comparingProperty().addListener((o, was, is) -> show());
        show();
    }

    private void show() {
        grid.getChildren().clear();
        state.setText(desk.comparingProperty().get() ? "Solving and nesting each way"
                : desk.alternativesProperty().get().isEmpty()
                ? "Gauge, metal, number of leaves, annulus: one thing changed at a time, one cap each." : "");
        if (desk.alternativesProperty().get().isEmpty()) {
            return;
        }
        String[] heads = {"", "price", "mass", "sheets", "lift, est.", "height", "fouls", ""};
        for (int i = 0; i < heads.length; i++) {
            Label head = new Label(heads[i]);
            head.getStyleClass().add("quiet");
            grid.add(head, i, 0);
        }
        int row = 1;
        for (Compared one : desk.alternativesProperty().get()) {
            grid.add(new Label(one.variant().name()), 0, row);
            int at = row;
            one.alternative().ifPresent(way -> figures(way, at));
            if (!one.reason().isEmpty()) {
                reason(one, row + (one.alternative().isPresent() ? 1 : 0));
            }
            row += one.alternative().isPresent() && !one.reason().isEmpty() ? 2 : 1;
        }
    }

    private void figures(Alternative way, int row) {
        ShopFormat format = session.solvedProperty().get().format();
        Label fouls = new Label(way.fouls() == 0 ? "none" : Integer.toString(way.fouls()));
        if (way.fouls() > 0) {
            fouls.getStyleClass().add("verdict-foul");
        }
        Button type = new Button("Use");
        type.setMinWidth(Region.USE_PREF_SIZE);
        type.setVisible(!way.variant().typed().isEmpty());
        type.setAccessibleText("Use it: " + way.variant().name());
        type.setOnAction(event -> session.type(way.variant().typed()));
        Node[] cells = {new Label(new Money(way.price().currency()).of(way.price().total())),
                new Label(format.mass(way.massKg())),
            new Label(Integer.toString(way.price().plan().sheetCount())),
            new Label(Measure.LIFT_PRESSURE.quantity().words(way.liftPressurePa(), format)),
            new Label(format.length(Length.ofMm(way.heightMm()))), fouls, type};
        for (int i = 0; i < cells.length; i++) {
            grid.add(cells[i], i + 1, row);
        }
    }

    /** Why it can't be, or has no price. */
    private void reason(Compared one, int row) {
        Label reason = new Label(one.reason());
        reason.getStyleClass().add("quiet");
        reason.setWrapText(true);
        reason.setMaxWidth(REASON_PX);
        reason.setMinHeight(Region.USE_PREF_SIZE);
        grid.add(reason, 1, row, COLUMNS - 1, 1);
    }
}

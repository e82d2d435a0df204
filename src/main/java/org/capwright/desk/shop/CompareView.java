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
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Other ways to make the job, side by side; a button types one into the job. */
final class CompareView extends BorderPane {
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
        grid.setHgap(16);
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
        state.setText(desk.comparingProperty().get() ? "Solving and nesting each way" : desk.alternativesProperty().get().isEmpty()
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
        for (Alternative one : desk.alternativesProperty().get()) {
            grid.addRow(row++, cells(one));
        }
    }

    private Node[] cells(Alternative one) {
        ShopFormat format = session.solvedProperty().get().format();
        Button type = new Button("Make it so");
        type.setMinWidth(Region.USE_PREF_SIZE);
        type.setVisible(!one.variant().typed().isEmpty());
        type.setAccessibleText("Make it so: " + one.variant().name());
        type.setOnAction(event -> session.type(one.variant().typed()));
        Label fouls = new Label(one.fouls() == 0 ? "none" : Integer.toString(one.fouls()));
        if (one.fouls() > 0) {
            fouls.getStyleClass().add("verdict-foul");
        }
        return new Node[] {new Label(one.variant().name()), new Label(new Money(one.price().currency()).of(one.price().total())),
            new Label(format.mass(one.massKg())), new Label(Integer.toString(one.price().plan().sheetCount())),
            new Label(Measure.LIFT_PRESSURE.quantity().words(one.liftPressurePa(), format)), new Label(format.length(Length.ofMm(one.heightMm()))), fouls, type};
    }
}

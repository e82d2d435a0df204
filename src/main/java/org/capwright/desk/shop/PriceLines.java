package org.capwright.desk.shop;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.capwright.export.Money;
import org.capwright.price.Line;
import org.capwright.price.Price;

/** A price line by line: material, hardware, labour, what is added, the sum. */
final class PriceLines extends ScrollPane {
    private final GridPane grid = new GridPane();
    private int row;

    PriceLines() {
        grid.getStyleClass().add("readings");
        grid.setHgap(14);
        grid.setVgap(3);
        ColumnConstraints name = new ColumnConstraints();
        name.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(name, right(), left(), right(), right());
        setContent(grid);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setId("price-lines");
    }

    private static ColumnConstraints right() {
        ColumnConstraints column = left();
        column.setHalignment(HPos.RIGHT);
        return column;
    }

    private static ColumnConstraints left() {
        ColumnConstraints column = new ColumnConstraints();
        column.setMinWidth(Region.USE_PREF_SIZE);
        return column;
    }

    void show(Price price) {
        Money money = new Money(price.currency());
        grid.getChildren().clear();
        row = 0;
        section("MATERIAL", price.material(), price.materialTotal(), money);
        section("HARDWARE", price.hardware(), price.hardwareTotal(), money);
        section("LABOUR", price.labour(), price.labourTotal(), money);
        title("ADDED", "");
        for (Line line : List.of(price.overhead(), price.margin(), price.tax())) {
            line(line, money);
        }
        Label sum = bold(money.of(price.total()));
        sum.setId("price-total");
        grid.addRow(row++, bold(price.caps() == 1 ? "Price of 1 cap" : "Price of " + price.caps() + " caps"), new Label(),
                new Label(), new Label(), sum);
    }

    private void section(String name, List<Line> lines, OptionalDouble sum, Money money) {
        title(name, money.plain(sum));
        lines.forEach(line -> line(line, money));
    }

    private void title(String name, String sum) {
        Label label = new Label(name);
        label.getStyleClass().add("pane-title");
        Label amount = new Label(sum);
        amount.getStyleClass().add("pane-title");
        grid.addRow(row++, label, new Label(), new Label(), new Label(), amount);
    }

    private void line(Line line, Money money) {
        Label name = new Label(line.name() + (line.note().isEmpty() ? "" : "  (" + line.note() + ")"));
        name.setWrapText(true);
        name.setMinHeight(Region.USE_PREF_SIZE);
        Label amount = new Label(money.plain(line.amount()));
        if (line.missing()) {
            amount.getStyleClass().add("verdict-tight");
        }
        grid.addRow(row++, name, new Label(quantity(line.quantity())), new Label(line.unit()),
                new Label(line.each().isPresent() ? money.plain(line.each()) : ""), amount);
    }

    private static String quantity(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.2f", value);
    }

    private static Label bold(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("job-name");
        return label;
    }
}

package org.capwright.desk.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.StockDesk;
import org.capwright.desk.session.StockDesk.Nested;
import org.capwright.desk.sketch.BarSketch;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.Sketch;
import org.capwright.desk.widget.WordColumn;
import org.capwright.price.Names;
import org.capwright.stock.BarGroup;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.bar.CutBar;
import org.capwright.stock.nest.Demand;
import org.capwright.stock.nest.Nest;
import org.capwright.stock.nest.Placement;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** All sheets and bars under one another, all sheets to the same scale. */
final class LayoutList extends BorderPane {
    private static final double EDGE_PX = 44;
    private static final double BAR_PX = 22;

    private final Session session;
    private final StockDesk desk;
    private final ObjectProperty<Palette> palette;
    private final StringProperty chosen = new SimpleStringProperty("");
    private final WordColumn column = new WordColumn(6);
    private final Label under = new Label();
    private final List<SheetPane> panes = new ArrayList<>();
    private Nested shown;
    private double shownWidth;

    LayoutList(Session session, StockDesk desk, ObjectProperty<Palette> palette) {
        this.session = session;
        this.desk = desk;
        this.palette = palette;
        column.setId("sheets");
        under.getStyleClass().add("foot");
        under.setMaxWidth(Double.MAX_VALUE);
        under.setId("under-pointer");
        setCenter(column);
        setBottom(under);
        desk.nestedProperty().addListener((o, was, is) -> show());
        column.widthProperty().addListener((o, was, is) -> show());
        palette.addListener((o, was, is) -> repaint());
        chosen.addListener((o, was, is) -> panes.forEach(SheetPane::repaint));
        pointed(Optional.empty());
    }

    private void repaint() {
        shown = null;
        show();
    }

    private void show() {
        Nested nested = desk.nestedProperty().get();
        if (nested == null || session.solvedProperty().get() == null || nested == shown && column.getWidth() == shownWidth) {
            return;
        }
        shown = nested;
        shownWidth = column.getWidth();
        column.clear();
        panes.clear();
        double longest = nested.groups().stream().flatMap(group -> group.nest().sheets().stream()).mapToDouble(layout -> layout.size().lengthMm()).max().orElse(1);
        double pxPerMm = Math.max(60, column.getWidth() - EDGE_PX) / longest;
        ShopFormat format = session.solvedProperty().get().format();
        nested.groups().forEach(group -> group(group, pxPerMm, format));
        nested.plan().ifPresent(plan -> plan.bars().forEach(bar -> bars(bar, format)));
    }

    private void group(SheetGroup group, double pxPerMm, ShopFormat format) {
        Nest nest = group.nest();
        column.title(new Names(format).of(group.sheet()));
        column.line(nest.words() + (nest.settled() ? "" : "; the time was up before the search was"));
        for (Demand lost : nest.unplaced()) {
            column.line("No sheet for " + lost.quantity() + " " + lost.piece().name() + ".").getStyleClass().add("verdict-foul");
        }
        for (SheetLayout layout : nest.sheets()) {
            String remnant = layout.remnant().map(rest -> ", remnant " + length(rest.width(), format) + " x "
                    + length(rest.height(), format)).orElse("");
            column.line(String.format(Locale.ROOT, "%s x %s%s: use %.0f %%%s%s", length(layout.size().lengthMm(), format),
                    length(layout.size().widthMm(), format),
                    group.stockOf(layout).remnant() ? " remnant" : "", 100 * layout.usedMm2() / layout.size().areaMm2(), remnant,
                    layout.cuts().isEmpty() ? "" : ", a shear can cut it in " + layout.cuts().size() + " cuts"));
            SheetPane pane = new SheetPane(layout, pxPerMm, palette, chosen, this::pointed);
            panes.add(pane);
            column.add(pane);
        }
    }

    private void bars(BarGroup group, ShopFormat format) {
        column.title(new Names(format).bar(group));
        if (group.plan().proved()) {
            column.line("No plan costs less.");
        }
        for (CutBar bar : group.plan().bars()) {
            column.line(length(bar.size().lengthMm(), format) + "; rest " + length(bar.restMm(group.kerfMm()), format));
            Sketch sketch = Sketch.of(drawing -> BarSketch.paint(drawing, palette.get(), bar, group.kerfMm(), format));
            sketch.getStyleClass().clear();
            sketch.setMinHeight(BAR_PX);
            sketch.setPrefHeight(BAR_PX);
            column.add(sketch);
        }
        group.plan().tooLongMm().forEach(mm -> column.line("No bar for " + length(mm, format)
                + ".").getStyleClass().add("verdict-foul"));
    }

    private void pointed(Optional<Placement> placement) {
        chosen.set(placement.map(one -> one.piece().name()).orElse(""));
        under.setText(placement.map(this::words).orElse("Point at a piece to see what it is."));
    }

    private String words(Placement placement) {
        ShopFormat format = session.solvedProperty().get().format();
        double width = placement.piece().outline().bounds().width();
        double height = placement.piece().outline().bounds().height();
        return placement.piece().name() + ", " + length(width, format) + " x " + length(height, format) + ", holes "
                + placement.holes().size() + ", "
                + placement.piece().job();
    }

    private static String length(double mm, ShopFormat format) {
        return format.length(Length.ofMm(mm));
    }
}

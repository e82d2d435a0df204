package org.capwright.desk.shop;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.layout.StackPane;
import org.capwright.desk.sketch.Palette;
import org.capwright.desk.sketch.SheetSketch;
import org.capwright.desk.sketch.Sketch;
import org.capwright.stock.nest.Placement;
import org.capwright.stock.nest.SheetLayout;

/** One sheet; tells which piece lies under the pointer. */
final class SheetPane extends StackPane {
    private final SheetLayout layout;
    private final double pxPerMm;
    private final ObjectProperty<Palette> palette;
    private final StringProperty chosen;
    private final Sketch sketch = new Sketch(this::paint);

    SheetPane(SheetLayout layout, double pxPerMm, ObjectProperty<Palette> palette, StringProperty chosen,
            Consumer<Optional<Placement>> under) {
        this.layout = layout;
        this.pxPerMm = pxPerMm;
        this.palette = palette;
        this.chosen = chosen;
        double width = layout.size().lengthMm() * pxPerMm + 2;
        double height = layout.size().widthMm() * pxPerMm + 2;
        sketch.setMinSize(width, height);
        sketch.setMaxSize(width, height);
        sketch.getStyleClass().clear();
        sketch.setAccessibleText("A sheet with " + layout.placements().size() + " pieces");
        sketch.setOnMouseMoved(event -> under.accept(SheetSketch.at(sketch, layout, event.getX(), event.getY())));
        sketch.setOnMouseExited(event -> under.accept(Optional.empty()));
        getChildren().add(sketch);
        setMaxWidth(width);
    }

    void repaint() {
        sketch.repaint();
    }

    private void paint() {
        SheetSketch.paint(sketch, palette.get(), layout, pxPerMm, chosen.get());
    }
}

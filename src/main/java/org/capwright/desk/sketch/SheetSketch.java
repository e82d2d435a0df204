package org.capwright.desk.sketch;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.Polygon;
import javafx.scene.text.TextAlignment;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.stock.nest.Placement;
import org.capwright.stock.nest.SheetLayout;

/** A sheet to scale, with what is cut from it; pieces carry their names where there is room, the remnant is hatched. */
public final class SheetSketch {
    private static final double FLAT_PX = 0.4;
    private static final double LETTER_PX = 6.6;
    private static final double HATCH_PX = 12;

    private final Sketch sketch;
    private final Palette palette;

    private SheetSketch(Sketch sketch, Palette palette) {
        this.sketch = sketch;
        this.palette = palette;
    }

    /**
     * Draws a sheet.
     *
     * @param sketch where
     * @param palette its colours
     * @param layout the sheet
     * @param pxPerMm the scale
     * @param chosen name of the pieces that stand out, empty for none
     */
    public static void paint(Sketch sketch, Palette palette, SheetLayout layout, double pxPerMm, String chosen) {
        SheetSketch picture = new SheetSketch(sketch, palette);
        sketch.look(pxPerMm, new Vec2(1, layout.size().widthMm() * pxPerMm + 1), palette.desk());
        sketch.polygon(SlabMesh.box(0, 0, layout.size().lengthMm(), layout.size().widthMm()), palette.paper(), palette.ink(),
                1.4);
        layout.remnant().ifPresent(picture::remnant);
        // a small piece may lie in a hole of a larger one
        layout.placements().stream().sorted(Comparator.comparingDouble((Placement one) -> -one.outline().bounds().width() * one.outline().bounds().height()))
                .forEach(placement -> picture.piece(placement, placement.piece().name().equals(chosen)));
        layout.placements().forEach(picture::name);
    }

    /**
     * The piece under the pointer.
     *
     * @param sketch where the sheet is drawn
     * @param layout the sheet
     * @param px from the left
     * @param py from the top
     * @return the piece, if there is one
     */
    public static Optional<Placement> at(Sketch sketch, SheetLayout layout, double px, double py) {
        Vec2 point = sketch.plane(px, py);
        return layout.placements().stream().filter(placement -> polygon(placement.outline().points(FLAT_PX / sketch.scale())).contains(point.x(), point.y()))
                .min(Comparator.comparingDouble(placement -> placement.piece().areaMm2()));
    }

    private static Polygon polygon(List<Vec2> points) {
        return new Polygon(points.stream().flatMapToDouble(point -> DoubleStream.of(point.x(), point.y())).toArray());
    }

    private void piece(Placement placement, boolean chosen) {
        sketch.polygon(points(placement.outline()), (chosen ? palette.accent() : palette.leaf()).deriveColor(0, 1, 1, 0.5),
                palette.ink(), chosen ? 2 : 1);
        for (Path hole : placement.holes()) {
            sketch.polygon(points(hole), palette.paper(), palette.ink(), 0.8);
        }
    }

    private List<Vec2> points(Path path) {
        return path.points(FLAT_PX / sketch.scale());
    }

    private void name(Placement placement) {
        Bounds box = placement.outline().bounds();
        boolean upright = box.height() > box.width();
        double along = Math.max(box.width(), box.height()) * sketch.scale();
        double across = Math.min(box.width(), box.height()) * sketch.scale();
        String name = placement.piece().name();
        if (name.length() * LETTER_PX > along || across < 13) {
            return;
        }
        GraphicsContext g = sketch.graphics();
        g.save();
        g.translate(sketch.x(box.center().x()), sketch.y(box.center().y()));
        g.rotate(upright ? -90 : 0);
        g.setTextAlign(TextAlignment.CENTER);
        g.setFill(palette.ink());
        g.fillText(name, 0, 4);
        g.restore();
    }

    private void remnant(Bounds rest) {
        GraphicsContext g = sketch.graphics();
        Color line = palette.line();
        g.save();
        g.beginPath();
        g.rect(sketch.x(rest.minX()), sketch.y(rest.maxY()), rest.width() * sketch.scale(), rest.height() * sketch.scale());
        g.clip();
        g.setStroke(line);
        g.setLineWidth(1);
        double left = sketch.x(rest.minX());
        double top = sketch.y(rest.maxY());
        double width = rest.width() * sketch.scale();
        double height = rest.height() * sketch.scale();
        for (double x = left - height; x < left + width; x += HATCH_PX) {
            g.strokeLine(x, top + height, x + height, top);
        }
        g.restore();
        if (width > 70 && height > 16) {
            g.setFill(palette.quiet());
            g.setTextAlign(TextAlignment.CENTER);
            g.fillText("remnant", left + width / 2, top + height / 2 + 4);
        }
    }
}

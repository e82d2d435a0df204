package org.capwright.stock.nest;

import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;

/** Draws a layout at true size: pieces and holes to be cut, the sheet and its remnant to be looked at, each piece with its name. */
public final class LayoutDrawing {
    private static final double LETTER_SHARE = 0.25;
    private static final double LETTER_MOST_MM = 18;
    private static final double LETTER_WIDTH = 0.75;

    private LayoutDrawing() {
    }

    /**
     * Draws a layout.
     *
     * @param layout the sheet
     * @param name what to call it
     * @return the drawing; origin in the sheet's lower left corner
     */
    public static Drawing of(SheetLayout layout, String name) {
        Drawing.Builder drawing = new Drawing.Builder(name);
        drawing.mark(box(new Bounds(0, 0, layout.size().lengthMm(), layout.size().widthMm())));
        layout.remnant().ifPresent(rest -> drawing.mark(box(rest)));
        for (Placement placement : layout.placements()) {
            drawing.cut(placement.outline());
            placement.holes().forEach(drawing::cut);
            label(drawing, placement);
        }
        return drawing.build();
    }

    /** The name in the middle, along the longer side and small enough to stay inside most pieces. */
    private static void label(Drawing.Builder drawing, Placement placement) {
        Bounds bounds = placement.outline().bounds();
        boolean upright = bounds.height() > bounds.width();
        double along = Math.max(bounds.width(), bounds.height());
        double across = Math.min(bounds.width(), bounds.height());
        String name = placement.piece().name();
        double height = Math.min(Math.min(LETTER_MOST_MM, LETTER_SHARE * across), along / (LETTER_WIDTH * (name.length() + 2)));
        Vec2 middle = bounds.center().plus(upright ? new Vec2(height / 2, 0) : new Vec2(0, -height / 2));
        drawing.label(new Label(middle, name, height, upright ? Math.PI / 2 : 0, Label.Anchor.MIDDLE));
    }

    private static Path box(Bounds box) {
        return Path.polyline(List.of(new Vec2(box.minX(), box.minY()), new Vec2(box.maxX(), box.minY()),
                new Vec2(box.maxX(), box.maxY()), new Vec2(box.minX(), box.maxY())), true);
    }
}

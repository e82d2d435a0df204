package org.capwright.desk.sketch;

import javafx.scene.canvas.GraphicsContext;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;

/** A small drawing that points at a part, a span or a place of the cap. */
public final class PointerSketch {
    private static final double LEAST_MM = 45;
    private static final double ARROW_PX = 6;

    private final Sketch sketch;
    private final Cap cap;
    private final Palette palette;
    private final Pointer pointer;

    private PointerSketch(Sketch sketch, Cap cap, Palette palette, Pointer pointer) {
        this.sketch = sketch;
        this.cap = cap;
        this.palette = palette;
        this.pointer = pointer;
    }

    /**
     * Draws it.
     *
     * @param sketch where
     * @param cap the cap
     * @param palette its colours
     * @param pointer what to point at
     */
    public static void paint(Sketch sketch, Cap cap, Palette palette, Pointer pointer) {
        PointerSketch picture = new PointerSketch(sketch, cap, palette, pointer);
        sketch.look(picture.seen(), 4, palette.paper());
        if (pointer.view() == Pointer.View.SECTION) {
            SectionSketch.parts(sketch, cap, palette, pointer.openRad(), pointer.part());
        } else {
            PlanSketch.parts(sketch, cap, palette, pointer.openRad(), pointer.part());
        }
        if (pointer.points()) {
            picture.point();
        }
    }

    private Bounds seen() {
        Bounds all = all();
        if (!pointer.points() || pointer.aroundMm() == 0) {
            return all;
        }
        Vec2 middle = pointer.from().plus(pointer.to()).times(0.5);
        double half = Math.min(all.width(), Math.max(LEAST_MM, pointer.aroundMm())) / 2;
        return half * 2 > all.width() * 0.7 ? all : new Bounds(middle.x() - half, middle.y() - half / 2, middle.x() + half,
                middle.y() + half / 2);
    }

    private Bounds all() {
        double wide = cap.hood().largestRadiusMm();
        if (pointer.view() == Pointer.View.PLAN) {
            double reach = Math.max(wide, cap.widthMm() / 2);
            return new Bounds(-reach, -reach, reach, reach);
        }
        return new Bounds(-wide, -cap.hood().belowRimMm() * 1.1, wide, cap.hood().aboveRimMm());
    }

    private void point() {
        GraphicsContext g = sketch.graphics();
        g.setStroke(palette.trouble());
        g.setFill(palette.trouble());
        g.setLineWidth(2);
        double x1 = sketch.x(pointer.from().x());
        double y1 = sketch.y(pointer.from().y());
        double x2 = sketch.x(pointer.to().x());
        double y2 = sketch.y(pointer.to().y());
        if (Math.hypot(x2 - x1, y2 - y1) < 2) {
            g.strokeOval(x1 - 9, y1 - 9, 18, 18);
            return;
        }
        g.strokeLine(x1, y1, x2, y2);
        double direction = Math.atan2(y2 - y1, x2 - x1);
        arrow(x1, y1, direction);
        arrow(x2, y2, direction + Math.PI);
    }

    private void arrow(double x, double y, double direction) {
        double[] xs = {x, x + ARROW_PX * Math.cos(direction + 0.4), x + ARROW_PX * Math.cos(direction - 0.4)};
        double[] ys = {y, y + ARROW_PX * Math.sin(direction + 0.4), y + ARROW_PX * Math.sin(direction - 0.4)};
        sketch.graphics().fillPolygon(xs, ys, 3);
    }
}

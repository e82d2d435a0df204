package org.capwright.export.pdf;

import java.io.IOException;
import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.drawing.Layer;
import org.capwright.drawing.Stroke;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.layout.LineKind;

/** Draws a drawing's lines and, at true size, its writing. */
final class DrawingPainter {
    private DrawingPainter() {
    }

    static void lines(Canvas canvas, Drawing drawing, Placement placement) throws IOException {
        for (Stroke stroke : drawing.strokes()) {
            pen(canvas, stroke.layer());
            canvas.path(stroke.path(), placement);
        }
    }

    /** Writes labels inside a window of the page, off the lines and off each other. */
    static void writing(Canvas canvas, List<Label> labels, Placement placement, Bounds window) throws IOException {
        LabelPlacer placer = new LabelPlacer(canvas, window);
        for (Label label : labels) {
            double back = canvas.width(label.heightMm(), label.text()) * share(label.anchor());
            placer.write(placement.apply(label.at()).minus(Vec2.polar(back, label.turnRad())), label.heightMm(), label.turnRad(),
                    label.text());
        }
    }

    private static double share(Label.Anchor anchor) {
        return switch (anchor) {
            case START -> 0;
            case MIDDLE -> 0.5;
            case END -> 1;
        };
    }

    private static void pen(Canvas canvas, Layer layer) throws IOException {
        switch (layer) {
            case CUT -> canvas.pen(0.25, 0);
            case BEND -> canvas.pen(0.18, 0, 6, 2, 0.5f, 2);
            case MARK, TEXT -> canvas.pen(0.13, 0.25f);
        }
    }

    /** The pen of a kind of line in views. */
    static void pen(Canvas canvas, LineKind kind) throws IOException {
        switch (kind) {
            case OUTLINE -> canvas.pen(DrawingStyle.WIDE_MM, 0);
            case NARROW -> canvas.pen(DrawingStyle.NARROW_MM, 0);
            case HIDDEN -> canvas.pen(DrawingStyle.NARROW_MM, 0, 2, 1);
            case CENTER -> canvas.pen(DrawingStyle.NARROW_MM, 0, 6, 1.2f, 0.3f, 1.2f);
            case PHANTOM -> canvas.pen(DrawingStyle.NARROW_MM, 0, 5, 1.2f, 0.3f, 1.2f, 0.3f, 1.2f);
        }
    }
}

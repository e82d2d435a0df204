package org.capwright.export.pdf;

import java.io.IOException;
import java.util.List;
import org.capwright.geom.Bounds;

/**
 * A line of work with a box to tick.
 *
 * @param text what to do
 * @param keepsWithNext whether a page must not end after it
 */
record TickBlock(String text, boolean keepsWithNext) implements Block {
    private static final double TEXT_MM = 2.4;
    private static final double LINE_MM = 4.2;
    private static final double BOX_MM = 3;
    private static final double INDENT_MM = 6;
    private static final double ABOVE_MM = 1.2;

    @Override
    public double heightMm(Typeface typeface, double widthMm) throws IOException {
        return ABOVE_MM + lines(typeface, widthMm).size() * LINE_MM;
    }

    @Override
    public void paint(Canvas canvas, Typeface typeface, double x, double top, double widthMm) throws IOException {
        double y = top - ABOVE_MM - TEXT_MM;
        canvas.pen(DrawingStyle.NARROW_MM, 0);
        canvas.box(new Bounds(x, y - 0.3, x + BOX_MM, y - 0.3 + BOX_MM));
        for (String line : lines(typeface, widthMm)) {
            canvas.text(x + INDENT_MM, y, TEXT_MM, line);
            y -= LINE_MM;
        }
    }

    private List<String> lines(Typeface typeface, double widthMm) {
        return LineBreaks.of(typeface, TEXT_MM, text, widthMm - INDENT_MM);
    }
}

package org.capwright.export.pdf;

import java.io.IOException;
import java.util.List;
import org.capwright.geom.Bounds;

/**
 * Cautions on a grey ground, so that they are not read over. They stay with what they warn of.
 *
 * @param cautions what can hurt, each begins a line
 */
record CautionBlock(List<String> cautions) implements Block {
    private static final double TEXT_MM = 2.4;
    private static final double LINE_MM = 4.2;
    private static final double ABOVE_MM = 1.2;
    private static final double INSET_MM = 1.4;
    private static final float GREY = 0.88f;

    @Override
    public double heightMm(Typeface typeface, double widthMm) {
        return ABOVE_MM + lines(typeface, widthMm).size() * LINE_MM + INSET_MM / 2;
    }

    @Override
    public void paint(Canvas canvas, Typeface typeface, double x, double top, double widthMm) throws IOException {
        List<String> lines = lines(typeface, widthMm);
        double high = top - ABOVE_MM;
        canvas.fill(new Bounds(x, high - lines.size() * LINE_MM, x + widthMm, high), GREY);
        double y = high - (LINE_MM + TEXT_MM) / 2;
        for (String line : lines) {
            canvas.text(x + INSET_MM, y, TEXT_MM, line);
            y -= LINE_MM;
        }
    }

    @Override
    public boolean keepsWithNext() {
        return true;
    }

    private List<String> lines(Typeface typeface, double widthMm) {
        return cautions.stream().flatMap(text -> LineBreaks.of(typeface, TEXT_MM, "Caution: " + text, widthMm - 2 * INSET_MM)
                .stream()).toList();
    }
}

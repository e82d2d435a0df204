package org.capwright.desk.sketch;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import org.capwright.fitup.tolerance.Histogram;
import org.capwright.fitup.tolerance.MarginSpread;
import org.capwright.geom.Bounds;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** How many builds have which margin; what fails lies left of the line at nothing, and is drawn solid. */
public final class HistogramSketch {
    private static final double SIDE = 16;
    private static final double BELOW = 22;
    private static final double ABOVE = 22;

    private final Sketch sketch;
    private final Palette palette;
    private final double lowMm;
    private final double highMm;

    private HistogramSketch(Sketch sketch, Palette palette, double lowMm, double highMm) {
        this.sketch = sketch;
        this.palette = palette;
        this.lowMm = lowMm;
        this.highMm = highMm;
    }

    /**
     * Draws a histogram.
     *
     * @param sketch where
     * @param palette its colours
     * @param spread the margin
     * @param format how numbers are printed
     */
    public static void paint(Sketch sketch, Palette palette, MarginSpread spread, ShopFormat format) {
        Histogram histogram = spread.histogram();
        double end = histogram.fromMm() + histogram.stepMm() * histogram.counts().size();
        double edge = Math.max(0.2, (end - histogram.fromMm()) * 0.04);
        HistogramSketch picture = new HistogramSketch(sketch, palette, Math.min(0, histogram.fromMm()) - edge, Math.max(0, end)
                + edge);
        sketch.look(new Bounds(0, 0, 1, 1), 0, palette.paper());
        picture.bars(histogram);
        picture.lines(spread, format);
    }

    private double x(double mm) {
        return SIDE + (sketch.getWidth() - 2 * SIDE) * (mm - lowMm) / (highMm - lowMm);
    }

    private void bars(Histogram histogram) {
        GraphicsContext g = sketch.graphics();
        double most = histogram.counts().stream().mapToInt(Integer::intValue).max().orElse(1);
        double step = Math.max(histogram.stepMm(), (highMm - lowMm) / 80);
        for (int i = 0; i < histogram.counts().size(); i++) {
            double from = histogram.fromMm() + i * histogram.stepMm();
            double height = (sketch.getHeight() - BELOW - ABOVE) * histogram.counts().get(i) / most;
            boolean fails = from + step / 2 < 0;
            g.setFill(fails ? palette.trouble() : palette.leaf());
            g.fillRect(x(from), sketch.getHeight() - BELOW - height, Math.max(1, x(from + step) - x(from) - 1), height);
        }
        g.setStroke(palette.ink());
        g.setLineWidth(1);
        g.strokeLine(SIDE, sketch.getHeight() - BELOW, sketch.getWidth() - SIDE, sketch.getHeight() - BELOW);
    }

    private void lines(MarginSpread spread, ShopFormat format) {
        GraphicsContext g = sketch.graphics();
        g.setFill(palette.ink());
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText(spread.words() + ": margin beyond its limit", SIDE, 14);
        tick(0, "limit", 2);
        tick(spread.p01().mm(), "1 in 100 below " + format.length(Length.ofMm(spread.p01().mm())), 1);
        if (x(spread.p50().mm()) - x(spread.p01().mm()) > 150) {
            tick(spread.p50().mm(), "half below " + format.length(Length.ofMm(spread.p50().mm())), 1);
        }
    }

    private void tick(double mm, String words, double width) {
        GraphicsContext g = sketch.graphics();
        g.setStroke(palette.ink());
        g.setLineWidth(width);
        g.strokeLine(x(mm), ABOVE, x(mm), sketch.getHeight() - BELOW + 4);
        boolean right = x(mm) > sketch.getWidth() * 0.75;
        g.setTextAlign(right ? TextAlignment.RIGHT : TextAlignment.LEFT);
        if (mm != 0) {
            g.fillText(words, x(mm) + (right ? -3 : 3), sketch.getHeight() - 6);
        } else {
            g.fillText(words, x(mm) + 3, ABOVE + 10);
        }
    }
}

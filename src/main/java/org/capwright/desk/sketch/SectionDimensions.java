package org.capwright.desk.sketch;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.capwright.desk.session.Solved;
import org.capwright.job.GutterInputs;
import org.capwright.job.HoodInputs;
import org.capwright.job.StackInputs;
import org.capwright.job.StopInputs;
import org.capwright.part.Cap;
import org.capwright.part.StopBar;
import org.capwright.units.Length;

/** Dimensions outside the section; that of the input with the focus stands out. Each belongs to an input. */
public final class SectionDimensions {
    private static final double ROW_PX = 17;
    private static final double AWAY_PX = 4;
    private static final double LETTER_PX = 6.4;

    private final Sketch sketch;
    private final Solved solved;
    private final Palette palette;
    private final String inputPath;

    SectionDimensions(Sketch sketch, Solved solved, Palette palette, String inputPath) {
        this.sketch = sketch;
        this.solved = solved;
        this.palette = palette;
        this.inputPath = inputPath;
    }

    /**
     * A dimension on the sketch.
     *
     * @param path its input
     * @param upright whether it runs up and down
     * @param fromMm where it begins
     * @param toMm where it ends
     * @param row which row outside the outline, from 0; -1 for above
     */
    public record Dimension(String path, boolean upright, double fromMm, double toMm, int row) {
    }

    /**
     * The dimensions of a cap.
     *
     * @param cap the cap
     * @return those that are drawn
     */
    public static List<Dimension> of(Cap cap) {
        double stack = cap.job().get(StackInputs.OUTSIDE_DIAMETER).mm() / 2;
        List<Dimension> all = new ArrayList<>();
        all.add(new Dimension(StackInputs.OUTSIDE_DIAMETER.path(), false, -stack, stack, 0));
        all.add(new Dimension(HoodInputs.ANNULUS.path(), false, cap.sleeve().outsideRadiusMm(), cap.hood().insideRadiusMm(), 0));
        all.add(new Dimension(GutterInputs.INSIDE_WIDTH.path(), false, -cap.gutters().get(0).insideWidthMm() / 2,
                cap.gutters().get(0).insideWidthMm() / 2, 1));
        all.add(new Dimension(StopInputs.WIDTH.path(), false, -cap.stops().get(0).halfWidthMm(), cap.stops().get(0).halfWidthMm(),
                -1));
        all.add(new Dimension(HoodInputs.ABOVE_RIM.path(), true, 0, cap.hood().aboveRimMm(), 0));
        all.add(new Dimension(HoodInputs.BELOW_RIM.path(), true, -cap.hood().belowRimMm(), 0, 0));
        all.add(new Dimension(GutterInputs.DEPTH.path(), true, -cap.gutters().get(0).depthMm(), 0, 1));
        return all;
    }

    void paint() {
        GraphicsContext g = sketch.graphics();
        for (Dimension dimension : of(solved.cap())) {
            boolean chosen = dimension.path().equals(inputPath);
            Color color = chosen ? palette.accent() : palette.quiet();
            g.setStroke(color);
            g.setFill(color);
            g.setLineWidth(chosen ? 2 : 1);
            if (dimension.upright()) {
                upright(g, dimension);
            } else {
                lying(g, dimension);
            }
        }
    }

    private void lying(GraphicsContext g, Dimension d) {
        double y = lyingY(sketch, d);
        double from = sketch.x(d.fromMm());
        double to = sketch.x(d.toMm());
        StopBar bar = solved.cap().stops().get(0);
        double outline = d.row() < 0 ? sketch.y(bar.cornerZMm() + bar.depthMm()) - AWAY_PX
                : sketch.y(-solved.cap().hood().belowRimMm()) + AWAY_PX;
        extension(from, outline, from, y);
        extension(to, outline, to, y);
        g.strokeLine(from, y, to, y);
        g.strokeLine(from, y - 4, from, y + 4);
        g.strokeLine(to, y - 4, to, y + 4);
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(words(d), (from + to) / 2, y - 4);
    }

    /** A thin line from the outline to the dimension. */
    private void extension(double x1, double y1, double x2, double y2) {
        GraphicsContext g = sketch.graphics();
        g.save();
        g.setStroke(palette.line());
        g.setLineWidth(0.8);
        g.strokeLine(x1, y1, x2, y2);
        g.restore();
    }

    private void upright(GraphicsContext g, Dimension d) {
        double x = uprightX(sketch, d);
        double from = sketch.y(d.fromMm());
        double to = sketch.y(d.toMm());
        double outline = sketch.x(-solved.cap().hood().largestRadiusMm()) - AWAY_PX;
        extension(outline, from, x, from);
        extension(outline, to, x, to);
        g.strokeLine(x, from, x, to);
        g.strokeLine(x - 4, from, x + 4, from);
        g.strokeLine(x - 4, to, x + 4, to);
        boolean room = Math.abs(from - to) > words(d).length() * LETTER_PX;
        g.save();
        // a dimension that is shorter than its writing has it below its upper end
        g.translate(x - 4, room ? (from + to) / 2 : to);
        g.rotate(-90);
        g.setTextAlign(room ? TextAlignment.CENTER : TextAlignment.RIGHT);
        g.fillText(words(d), 0, 0);
        g.restore();
    }

    /**
     * Where a lying dimension lies.
     *
     * @param sketch where it is drawn
     * @param d the dimension
     * @return pixels from the top
     */
    public static double lyingY(Sketch sketch, Dimension d) {
        return d.row() < 0 ? Math.max(ROW_PX + 4, sketch.y(sketch.seen().maxY()) - AWAY_PX - ROW_PX / 2)
                : Math.min(sketch.getHeight() - 6 - (1 - d.row()) * ROW_PX, sketch.y(sketch.seen().minY()) + AWAY_PX
                + (d.row() + 1.5) * ROW_PX);
    }

    /**
     * Where an upright dimension stands.
     *
     * @param sketch where it is drawn
     * @param d the dimension
     * @return pixels from the left
     */
    public static double uprightX(Sketch sketch, Dimension d) {
        return Math.max(16 + d.row() * ROW_PX, sketch.x(sketch.seen().minX()) - AWAY_PX - (2 - d.row()) * ROW_PX);
    }

    private String words(Dimension d) {
        return solved.format().length(Length.ofMm(d.toMm() - d.fromMm()));
    }
}

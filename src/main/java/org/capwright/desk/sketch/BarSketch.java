package org.capwright.desk.sketch;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import org.capwright.geom.Vec2;
import org.capwright.stock.bar.CutBar;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** A bar and the pieces that are cut from it, each with its length. */
public final class BarSketch {
    private static final double HEIGHT_PX = 18;
    private static final double LETTER_PX = 6.6;

    private BarSketch() {
    }

    /**
     * Draws a bar.
     *
     * @param sketch where
     * @param palette its colours
     * @param bar the bar
     * @param kerfMm what a cut takes
     * @param format how lengths are printed
     */
    public static void paint(Sketch sketch, Palette palette, CutBar bar, double kerfMm, ShopFormat format) {
        double pxPerMm = (sketch.getWidth() - 2) / bar.size().lengthMm();
        sketch.look(Math.max(1e-6, pxPerMm), new Vec2(1, HEIGHT_PX + 1), palette.desk());
        double high = HEIGHT_PX / pxPerMm;
        sketch.polygon(SlabMesh.box(0, 0, bar.size().lengthMm(), high), palette.paper(), palette.ink(), 1.2);
        double from = 0;
        GraphicsContext g = sketch.graphics();
        for (double piece : bar.piecesMm()) {
            sketch.polygon(SlabMesh.box(from, 0, from + piece, high), palette.leaf().deriveColor(0, 1, 1, 0.55), palette.ink(),
                    1);
            String words = format.length(Length.ofMm(piece));
            if (words.length() * LETTER_PX < piece * pxPerMm) {
                g.setFill(palette.ink());
                g.setTextAlign(TextAlignment.CENTER);
                g.fillText(words, sketch.x(from + piece / 2), HEIGHT_PX - 4);
            }
            from += piece + kerfMm;
        }
    }
}

package org.capwright.desk.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.desk.session.Solved;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.PlacedBead;
import org.capwright.part.StopBar;
import org.capwright.swing.Motion;
import org.capwright.swing.Turn;
import org.capwright.units.ShopFormat;

/** The section across the rods, to scale, leaves at an opening. Both halves are drawn. */
public final class SectionSketch {
    private static final double EDGE_PX = 46;
    private static final double CAPTION_X_PX = 8;
    private static final double CAPTION_Y_PX = 15;

    private final Sketch sketch;
    private final Cap cap;
    private final Palette palette;
    private final Turn open;
    private final String part;

    private SectionSketch(Sketch sketch, Cap cap, Palette palette, double openRad, String part) {
        this.part = part;
        this.sketch = sketch;
        this.cap = cap;
        this.palette = palette;
        this.open = Turn.of(openRad);
    }

    /**
     * Draws what stands still: the fixed parts and the dimensions.
     *
     * @param sketch where
     * @param solved the cap
     * @param palette its colours
     * @param inputPath path of the input whose dimension stands out, may be empty
     */
    public static void still(Sketch sketch, Solved solved, Palette palette, String inputPath) {
        SectionSketch section = new SectionSketch(sketch, solved.cap(), palette, 0, "");
        double wide = section.cap.hood().largestRadiusMm();
        sketch.look(new Bounds(-wide, -section.lowest(), wide, section.cap.hood().aboveRimMm()), EDGE_PX, palette.paper());
        section.fixed();
        new SectionDimensions(sketch, solved, palette, inputPath).paint();
    }

    /**
     * Draws what moves: leaves and rods, and the place of a check.
     *
     * @param sketch where
     * @param solved the cap
     * @param palette its colours
     * @param openRad opening of the leaves, radians
     * @param chosen the check whose place is marked, null for none
     */
    public static void moving(Sketch sketch, Solved solved, Palette palette, double openRad, Check chosen) {
        SectionSketch section = new SectionSketch(sketch, solved.cap(), palette, openRad, "");
        section.leavesAndRods();
        section.place(chosen, solved.format());
    }

    /**
     * Draws the parts alone, on a sketch that already looks at them.
     *
     * @param sketch where
     * @param cap the cap
     * @param palette its colours
     * @param openRad opening of the leaves, radians
     * @param part the part that stands out, by its group in a job such as {@code hood}; empty for none
     */
    public static void parts(Sketch sketch, Cap cap, Palette palette, double openRad, String part) {
        new SectionSketch(sketch, cap, palette, openRad, part).parts();
    }

    private Color colour(String name, Color usual) {
        return part.equals(name) ? palette.accent() : usual;
    }

    private void parts() {
        fixed();
        leavesAndRods();
    }

    private void leavesAndRods() {
        cap.leaves().forEach(this::leaf);
        cap.rods().forEach(this::rod);
    }

    private double lowest() {
        return Math.max(cap.hood().belowRimMm(), Math.min(cap.sleeve().heightMm(), cap.hood().belowRimMm() * 1.4));
    }

    private void fixed() {
        double foot = -lowest();
        wall("sleeve", cap.sleeve().insideRadiusMm(), cap.sleeve().outsideRadiusMm(), foot, 0);
        wall("hood", cap.hood().insideRadiusMm(), cap.hood().outsideRadiusMm(), -cap.hood().belowRimMm(),
                cap.hood().aboveRimMm());
        cap.hood().flat().beads().forEach(this::bead);
        standoff();
        for (Gutter gutter : cap.gutters()) {
            mirrored(gutter.jointMm(), middle -> channel("gutter", middle, gutter.outsideWidthMm() / 2, 0,
                    -gutter.outsideDepthMm(), gutter.sheet().thicknessMm()));
        }
        for (StopBar bar : cap.stops()) {
            mirrored(bar.jointMm(), middle -> channel("stop", middle, bar.halfWidthMm(), bar.cornerZMm(), bar.cornerZMm()
                    + bar.depthMm(),
                    bar.sheet().thicknessMm()));
        }
    }

    private void wall(String name, double inside, double outside, double foot, double top) {
        for (int side : new int[] {1, -1}) {
            fill(name, box(side * inside, foot, side * outside, top));
        }
    }

    private void bead(PlacedBead bead) {
        double z = bead.aboveFootMm() - cap.hood().belowRimMm();
        double half = bead.bead().widthMm() / 2;
        double from = bead.inward() ? cap.hood().insideRadiusMm() : cap.hood().outsideRadiusMm();
        double to = bead.inward() ? from - bead.bead().depthMm() : from + bead.bead().depthMm();
        for (int side : new int[] {1, -1}) {
            fill("hood", List.of(new Vec2(side * from, z - half), new Vec2(side * to, z), new Vec2(side * from, z + half)));
        }
    }

    private void standoff() {
        double top = cap.standoff().topZMm();
        GraphicsContext g = sketch.graphics();
        g.setLineDashes(4, 3);
        for (int side : new int[] {1, -1}) {
            sketch.polygon(box(side * cap.sleeve().outsideRadiusMm(), top - cap.standoff().heightMm(),
                    side * cap.hood().insideRadiusMm(), top), part.equals("standoffs") ? palette.accent() : null, palette.quiet(),
                    1);
        }
        g.setLineDashes();
    }

    /** A channel: its floor at one height, its walls reaching to the other. */
    private void channel(String name, double middle, double half, double openZ, double floorZ, double thickness) {
        double in = Math.signum(openZ - floorZ) * thickness;
        fill(name, List.of(new Vec2(middle - half, openZ), new Vec2(middle - half, floorZ), new Vec2(middle + half, floorZ),
                new Vec2(middle + half, openZ), new Vec2(middle + half - thickness, openZ),
                new Vec2(middle + half - thickness, floorZ + in),
                new Vec2(middle - half + thickness, floorZ + in), new Vec2(middle - half + thickness, openZ)));
    }

    private interface Placing {
        void at(double middle);
    }

    private static void mirrored(double joint, Placing placing) {
        placing.at(joint);
        if (joint > 0) {
            placing.at(-joint);
        }
    }

    private static List<Vec2> box(double x1, double y1, double x2, double y2) {
        return List.of(new Vec2(x1, y1), new Vec2(x2, y1), new Vec2(x2, y2), new Vec2(x1, y2));
    }

    private void fill(String name, List<Vec2> shape) {
        sketch.polygon(shape, colour(name, palette.fill()), palette.ink(), 1);
    }

    private void leaf(Leaf leaf) {
        double top = -leaf.rodRadiusMm();
        double t = leaf.sheet().thicknessMm();
        double heel = leaf.slab().hingeEdgeMm() - leaf.rodAxisMm();
        double free = leaf.reachMm();
        double hingeLip = top - leaf.lipDownMm(leaf.hingeFlangeMm());
        double freeLip = top - leaf.lipDownMm(leaf.curveFlangeMm());
        double hingeOut = heel - leaf.lipOutMm(leaf.hingeFlangeMm());
        double freeOut = free + leaf.lipOutMm(leaf.curveFlangeMm());
        double[][] outline = {{heel, top}, {free, top}, {freeOut, freeLip}, {freeOut - t, freeLip}, {free - t, top - t},
                {heel + t, top - t},
            {hingeOut + t, hingeLip}, {hingeOut, hingeLip}};
        Motion motion = Motion.of(leaf);
        for (int side : new int[] {1, -1}) {
            List<Vec2> points = new ArrayList<>();
            for (double[] p : outline) {
                points.add(new Vec2(side * motion.xMm(p[0], p[1], open), motion.zMm(p[0], p[1], open)));
            }
            sketch.polygon(points, colour("leaves", palette.leaf()), palette.ink(), 1.8);
        }
    }

    private void rod(PivotRod rod) {
        for (int side : new int[] {1, -1}) {
            sketch.circle(side * rod.axisMm(), rod.axisZMm(), rod.diameterMm() / 2, colour("rods", palette.paper()),
                    palette.ink(), 1.4);
        }
    }

    /** A ring where it is; what it is stands in the corner, clear of everything that moves. */
    private void place(Check chosen, ShopFormat format) {
        if (chosen == null || chosen.place().isEmpty()) {
            return;
        }
        Vec2 at = new Vec2(chosen.place().get().at().x(), chosen.place().get().at().z());
        Color color = chosen.verdict() == Verdict.FOUL ? palette.trouble() : palette.accent();
        GraphicsContext g = sketch.graphics();
        g.setStroke(color);
        g.setLineWidth(2);
        g.strokeOval(sketch.x(at.x()) - 9, sketch.y(at.y()) - 9, 18, 18);
        g.setFill(color);
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText(chosen.words() + " " + chosen.quantity().words(chosen.value(), format)
                + String.format(Locale.ROOT, ", open %.1f deg",
                Math.toDegrees(chosen.place().get().openRad())), CAPTION_X_PX, CAPTION_Y_PX);
    }
}

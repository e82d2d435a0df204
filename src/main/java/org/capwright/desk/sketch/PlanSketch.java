package org.capwright.desk.sketch;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.desk.session.Solved;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.StopBar;
import org.capwright.swing.Motion;
import org.capwright.swing.Turn;

/** The plan, from above, to scale, leaves at an opening. */
public final class PlanSketch {
    private static final int ARC_STEPS = 40;
    private static final double EDGE_PX = 16;

    private final Sketch sketch;
    private final Cap cap;
    private final Palette palette;
    private final Turn open;
    private final String part;

    private PlanSketch(Sketch sketch, Cap cap, Palette palette, double openRad, String part) {
        this.part = part;
        this.sketch = sketch;
        this.cap = cap;
        this.palette = palette;
        this.open = Turn.of(openRad);
    }

    /**
     * Draws what stands still: the fixed parts under the leaves.
     *
     * @param sketch where
     * @param solved the cap
     * @param palette its colours
     */
    public static void still(Sketch sketch, Solved solved, Palette palette) {
        PlanSketch plan = new PlanSketch(sketch, solved.cap(), palette, 0, "");
        double reach = Math.max(solved.cap().hood().largestRadiusMm(), solved.cap().widthMm() / 2);
        sketch.look(new Bounds(-reach, -reach, reach, reach), EDGE_PX, palette.paper());
        plan.fixed();
    }

    /**
     * Draws what moves, and what lies over it: leaves, rods, stop bars, and the place of a check.
     *
     * @param sketch where
     * @param solved the cap
     * @param palette its colours
     * @param openRad opening of the leaves, radians
     * @param chosen the check whose place is marked, null for none
     */
    public static void moving(Sketch sketch, Solved solved, Palette palette, double openRad, Check chosen) {
        PlanSketch plan = new PlanSketch(sketch, solved.cap(), palette, openRad, "");
        plan.overFixed();
        plan.place(chosen);
    }

    /**
     * Draws the parts alone, on a sketch that already looks at them.
     *
     * @param sketch where
     * @param cap the cap
     * @param palette its colours
     * @param openRad opening of the leaves, radians
     * @param part the part that stands out, by its group in a job such as {@code doublers}; empty for none
     */
    public static void parts(Sketch sketch, Cap cap, Palette palette, double openRad, String part) {
        new PlanSketch(sketch, cap, palette, openRad, part).parts();
    }

    private void parts() {
        fixed();
        overFixed();
    }

    private void overFixed() {
        cap.leaves().forEach(this::leaf);
        cap.rods().forEach(this::rod);
        bars();
    }

    private Color colour(String name, Color usual) {
        return part.equals(name) ? palette.accent() : usual;
    }

    private void fixed() {
        sketch.circle(0, 0, cap.hood().outsideRadiusMm(), null, palette.ink(), 1.4);
        sketch.circle(0, 0, cap.hood().insideRadiusMm(), null, palette.ink(), 0.8);
        sketch.circle(0, 0, cap.sleeve().outsideRadiusMm(), null, palette.quiet(), 1);
        sketch.circle(0, 0, cap.sleeve().insideRadiusMm(), null, palette.quiet(), 1);
        for (Gutter gutter : cap.gutters()) {
            strips(gutter.jointMm(), gutter.outsideWidthMm() / 2, gutter.endMm(0));
        }
        for (int i = 0; i < cap.standoff().count(); i++) {
            double azimuth = cap.standoff().azimuthRad(i);
            Vec2 in = Vec2.polar(cap.sleeve().outsideRadiusMm(), azimuth - cap.standoff().outerHalfRad());
            Vec2 out = Vec2.polar(cap.hood().insideRadiusMm(), azimuth - cap.standoff().outerHalfRad());
            sketch.graphics().setStroke(colour("standoffs", palette.ink()));
            sketch.graphics().setLineWidth(part.equals("standoffs") ? 4 : 2);
            sketch.line(in.x(), in.y(), out.x(), out.y());
        }
        for (Doubler plate : cap.doublers()) {
            for (int side : plate.number() == 1 ? new int[] {1} : new int[] {1, -1}) {
                for (int end : new int[] {1, -1}) {
                    double y = end * plate.faceYMm();
                    double far = y + end * plate.thicknessMm();
                    sketch.polygon(List.of(new Vec2(side * plate.fromMm(), y), new Vec2(side * plate.toMm(), y),
                            new Vec2(side * plate.toMm(), far), new Vec2(side * plate.fromMm(), far)),
                            colour("doublers", palette.fill()), palette.ink(), 1);
                }
            }
        }
    }

    private void strips(double joint, double half, double end) {
        for (int side : joint == 0 ? new int[] {1} : new int[] {1, -1}) {
            double middle = side * joint;
            sketch.polygon(List.of(new Vec2(middle - half, -end), new Vec2(middle + half, -end), new Vec2(middle + half, end),
                    new Vec2(middle - half, end)), palette.fill(), palette.quiet(), 0.8);
        }
    }

    private void bars() {
        GraphicsContext g = sketch.graphics();
        g.setLineDashes(6, 4);
        for (StopBar bar : cap.stops()) {
            for (int side : bar.jointMm() == 0 ? new int[] {1} : new int[] {1, -1}) {
                double near = side * (bar.jointMm() - bar.halfWidthMm());
                double far = side * (bar.jointMm() + bar.halfWidthMm());
                double end = bar.endMm(0);
                sketch.polygon(List.of(new Vec2(near, -end), new Vec2(far, -end), new Vec2(far, end), new Vec2(near, end)), null,
                        palette.quiet(), 1);
            }
        }
        g.setLineDashes();
    }

    /** The lip's outline, lifted and seen from above. */
    private void leaf(Leaf leaf) {
        Motion motion = Motion.of(leaf);
        double radius = leaf.slab().radiusMm();
        double from = leaf.slab().hingeAzimuthRad();
        double to = leaf.slab().freeAzimuthRad();
        for (int side : new int[] {1, -1}) {
            List<Vec2> outline = new ArrayList<>();
            for (int sign : new int[] {1, -1}) {
                for (int i = 0; i <= ARC_STEPS; i++) {
                    double share = (double) i / ARC_STEPS;
                    double azimuth = sign * (sign > 0 ? from + (to - from) * share : to + (from - to) * share);
                    double u = radius * Math.cos(azimuth) - leaf.rodAxisMm();
                    outline.add(new Vec2(side * motion.xMm(u, -leaf.rodRadiusMm(), open), radius * Math.sin(azimuth)));
                }
            }
            sketch.polygon(outline, palette.leaf().deriveColor(0, 1, 1, 0.6), palette.ink(), 1.6);
        }
    }

    private void rod(PivotRod rod) {
        double half = rod.diameterMm() / 2;
        double end = rod.lengthMm() / 2;
        for (int side : new int[] {1, -1}) {
            double x = side * rod.axisMm();
            sketch.polygon(List.of(new Vec2(x - half, -end), new Vec2(x + half, -end), new Vec2(x + half, end),
                    new Vec2(x - half, end)),
                    colour("rods", palette.paper()), palette.ink(), 1);
        }
    }

    private void place(Check chosen) {
        if (chosen == null || chosen.place().isEmpty()) {
            return;
        }
        GraphicsContext g = sketch.graphics();
        g.setStroke(chosen.verdict() == Verdict.FOUL ? palette.trouble() : palette.accent());
        g.setLineWidth(2);
        double x = sketch.x(chosen.place().get().at().x());
        double y = sketch.y(chosen.place().get().at().y());
        g.strokeOval(x - 9, y - 9, 18, 18);
    }
}

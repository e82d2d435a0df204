package org.capwright.desk.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.capwright.check.Verdict;
import org.capwright.desk.session.FitDesk.Fitted;
import org.capwright.fitup.FitVerdict;
import org.capwright.fitup.OvalFit;
import org.capwright.fitup.Reading;
import org.capwright.fitup.ReadingPlace;
import org.capwright.fitup.Residual;
import org.capwright.geom.Bounds;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;

/**
 * Where to measure, in the plan; what was measured, with its departures from the drawn circles enlarged; and the place that
 * decides.
 */
public final class FitSketch {
    private static final double EDGE_PX = 30;
    private static final int STEPS = 180;
    private static final int ARC_STEPS = 40;
    private static final double MOST_USUAL_TIMES = 10;
    /** Share of the radius that the largest departure may take up. */
    private static final double ROOM_SHARE = 0.12;

    private final Sketch sketch;
    private final Cap cap;
    private final Palette palette;
    private final double times;

    private FitSketch(Sketch sketch, Cap cap, Palette palette, double times) {
        this.sketch = sketch;
        this.cap = cap;
        this.palette = palette;
        this.times = times;
    }

    /**
     * Draws the plan.
     *
     * @param sketch where
     * @param cap the cap as drawn
     * @param fitted what was made; empty where nothing has been measured
     * @param palette its colours
     * @param times how many times departures are enlarged
     * @param places where the reading that has the focus is taken
     */
    public static void plan(Sketch sketch, Cap cap, Optional<Fitted> fitted, Palette palette, double times,
            List<ReadingPlace> places) {
        FitSketch picture = new FitSketch(sketch, cap, palette, times);
        double reach = cap.hood().outsideRadiusMm() * 1.06;
        sketch.look(new Bounds(-reach, -reach, reach, reach), EDGE_PX, palette.paper());
        picture.parts();
        picture.compass(reach);
        fitted.ifPresent(picture::made);
        places.stream().filter(place -> place.view() == ReadingPlace.View.PLAN).forEach(picture::span);
    }

    /**
     * Draws the section, for readings that only show there.
     *
     * @param sketch where
     * @param cap the cap as drawn
     * @param palette its colours
     * @param places where the reading that has the focus is taken
     */
    public static void section(Sketch sketch, Cap cap, Palette palette, List<ReadingPlace> places) {
        FitSketch picture = new FitSketch(sketch, cap, palette, 1);
        double wide = cap.hood().outsideRadiusMm();
        double low = -1.6 * cap.gutters().get(0).outsideDepthMm();
        double high = cap.leaves().stream().mapToDouble(Leaf::rodAxisZMm).max().orElse(0) * 2.5 + 10;
        sketch.look(new Bounds(-wide, low, wide, high), 10, palette.paper());
        SectionSketch.parts(sketch, cap, palette, 0, "");
        places.stream().filter(place -> place.view() == ReadingPlace.View.SECTION).forEach(picture::span);
    }

    /**
     * How many times departures can be enlarged and still be told from another part.
     *
     * @param cap the cap as drawn
     * @param fitted what was made
     * @return a whole number, at least 1
     */
    public static double usualTimes(Cap cap, Fitted fitted) {
        double drawn = cap.hood().insideRadiusMm();
        double most = 0;
        for (int i = 0; i < STEPS; i++) {
            most = Math.max(most, Math.abs(fitted.fitUp().work().hood().fromOriginMm(2 * Math.PI * i / STEPS) - drawn));
        }
        return Math.max(1, Math.min(MOST_USUAL_TIMES, Math.floor(ROOM_SHARE * drawn / Math.max(most, 1e-6))));
    }

    private void parts() {
        for (Leaf leaf : cap.leaves()) {
            for (int side : new int[] {1, -1}) {
                sketch.polygon(outline(leaf, side), palette.leaf().deriveColor(0, 1, 1, 0.35), palette.quiet(), 1);
            }
        }
        for (Gutter gutter : cap.gutters()) {
            for (int side : gutter.jointMm() == 0 ? new int[] {1} : new int[] {1, -1}) {
                double x = side * gutter.jointMm();
                double half = gutter.insideWidthMm() / 2;
                double end = gutter.endMm(0);
                dashed(List.of(new Vec2(x - half, -end), new Vec2(x + half, -end), new Vec2(x + half, end),
                        new Vec2(x - half, end)));
            }
        }
        for (PivotRod rod : cap.rods()) {
            for (int side : new int[] {1, -1}) {
                double x = side * rod.axisMm();
                double half = rod.diameterMm() / 2;
                sketch.polygon(SlabMesh.box(x - half, -rod.lengthMm() / 2, x + half, rod.lengthMm() / 2), palette.paper(),
                        palette.quiet(), 1);
            }
        }
        dashed(outline(Oval.circle(cap.hood().insideRadiusMm()), cap.hood().insideRadiusMm()));
        sketch.circle(0, 0, cap.sleeve().outsideRadiusMm(), null, palette.quiet(), 1);
        standoffs();
    }

    private void standoffs() {
        sketch.graphics().setStroke(palette.quiet());
        sketch.graphics().setLineWidth(2);
        for (int i = 0; i < cap.standoff().count(); i++) {
            double azimuth = cap.standoff().azimuthRad(i);
            Vec2 in = Vec2.polar(cap.sleeve().outsideRadiusMm(), azimuth);
            Vec2 out = Vec2.polar(cap.hood().insideRadiusMm(), azimuth);
            sketch.line(in.x(), in.y(), out.x(), out.y());
        }
    }

    private void dashed(List<Vec2> outline) {
        sketch.graphics().setLineDashes(5, 4);
        sketch.polygon(outline, null, palette.quiet(), 1);
        sketch.graphics().setLineDashes();
    }

    private static List<Vec2> outline(Leaf leaf, int side) {
        List<Vec2> points = new ArrayList<>();
        double from = leaf.slab().hingeAzimuthRad();
        double to = leaf.slab().freeAzimuthRad();
        for (int i = 0; i <= ARC_STEPS; i++) {
            points.add(Vec2.polar(leaf.slab().radiusMm(), from + (to - from) * i / ARC_STEPS));
        }
        for (int i = ARC_STEPS; i >= 0; i--) {
            points.add(Vec2.polar(leaf.slab().radiusMm(), -(from + (to - from) * i / ARC_STEPS)));
        }
        return points.stream().map(p -> new Vec2(side * p.x(), p.y())).toList();
    }

    /** Where azimuths count from, as the readings name them. */
    private void compass(double reach) {
        GraphicsContext g = sketch.graphics();
        g.setFill(palette.quiet());
        g.setTextAlign(TextAlignment.CENTER);
        String[] words = {"0 deg, +x", "90 deg, +y", "180 deg, -x", "270 deg, -y"};
        g.fillText(words[1], sketch.x(0), sketch.y(reach) - 6);
        g.fillText(words[3], sketch.x(0), sketch.y(-reach) + 16);
        upright(words[2], sketch.x(-reach) - 6, -90);
        upright(words[0], sketch.x(reach) + 6, 90);
    }

    private void upright(String text, double x, double degrees) {
        GraphicsContext g = sketch.graphics();
        g.save();
        g.translate(x, sketch.y(0));
        g.rotate(degrees);
        g.fillText(text, 0, 0);
        g.restore();
    }

    private void made(Fitted fitted) {
        fitted(fitted.fitUp().sleeve(), cap.sleeve().outsideRadiusMm());
        fitted(fitted.fitUp().hood(), cap.hood().insideRadiusMm());
        place(fitted.fitUp().deciding());
    }

    private void fitted(OvalFit fit, double drawnMm) {
        if (!fit.terms().radius()) {
            return;
        }
        sketch.polygon(outline(fit.outline(), drawnMm), null, palette.ink(), 2);
        for (Residual residual : fit.residuals()) {
            points(residual.reading(), fit.outline()).forEach(at -> dot(at.times(enlarged(at.norm(), drawnMm) / at.norm()),
                    residual.suspect()));
        }
    }

    /** Where the tape touched: both ends of a diameter (taken as through the outline's centre), one point of a radius or a gap. */
    private static List<Vec2> points(Reading reading, Oval outline) {
        return switch (reading.kind()) {
            case GIRTH -> List.of();
            case DIAMETER -> {
                Vec2 half = Vec2.polar(reading.valueMm() / 2, reading.azimuthRad());
                yield List.of(outline.centre().plus(half), outline.centre().minus(half));
            }
            case RADIUS, GAP -> List.of(Vec2.polar(reading.baseMm() + reading.valueMm(), reading.azimuthRad()));
        };
    }

    private void dot(Vec2 at, boolean suspect) {
        GraphicsContext g = sketch.graphics();
        double x = sketch.x(at.x());
        double y = sketch.y(at.y());
        if (suspect) {
            g.setStroke(palette.trouble());
            g.setLineWidth(2.5);
            g.strokeLine(x - 6, y - 6, x + 6, y + 6);
            g.strokeLine(x - 6, y + 6, x + 6, y - 6);
        } else {
            g.setFill(palette.ink());
            g.fillOval(x - 3.5, y - 3.5, 7, 7);
        }
    }

    private double enlarged(double radiusMm, double drawnMm) {
        return drawnMm + times * (radiusMm - drawnMm);
    }

    private List<Vec2> outline(Oval oval, double drawnMm) {
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            double azimuth = 2 * Math.PI * i / STEPS;
            points.add(Vec2.polar(enlarged(oval.fromOriginMm(azimuth), drawnMm), azimuth));
        }
        return points;
    }

    private void place(FitVerdict deciding) {
        deciding.check().place().ifPresent(place -> {
            GraphicsContext g = sketch.graphics();
            g.setStroke(deciding.verdict() == Verdict.FOUL ? palette.trouble() : deciding.verdict() == Verdict.TIGHT
                    ? palette.care() : palette.quiet());
            g.setLineWidth(3);
            double x = sketch.x(place.at().x());
            double y = sketch.y(place.at().y());
            g.strokeOval(x - 13, y - 13, 26, 26);
        });
    }

    private void span(ReadingPlace place) {
        GraphicsContext g = sketch.graphics();
        Color color = palette.accent();
        g.setStroke(color);
        g.setFill(color);
        g.setLineWidth(3);
        if (place.girth()) {
            sketch.circle(0, 0, place.from().distance(place.to()), null, color, 3);
            return;
        }
        sketch.line(place.from().x(), place.from().y(), place.to().x(), place.to().y());
        for (Vec2 end : List.of(place.from(), place.to())) {
            g.fillOval(sketch.x(end.x()) - 5, sketch.y(end.y()) - 5, 10, 10);
        }
    }
}

package org.capwright.layout;

import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.Standoff;
import org.capwright.part.StopBar;
import org.capwright.units.Angle;
import org.capwright.units.ShopFormat;

/** The cap from above: leaves closed, sleeve and gutters hidden under them, stop bars in phantom lines over them. */
final class PlanView {
    private final Cap cap;
    private final PartList parts;
    private final ShopFormat format;
    private final View.Builder view = new View.Builder("plan, seen from above",
            "0 deg to the right, angles run counterclockwise");

    private PlanView(Cap cap, PartList parts, ShopFormat format) {
        this.cap = cap;
        this.parts = parts;
        this.format = format;
    }

    static View of(Cap cap, PartList parts, ShopFormat format) {
        PlanView plan = new PlanView(cap, parts, format);
        plan.circles();
        cap.leaves().forEach(plan::leaf);
        cap.rods().forEach(plan::rod);
        cap.doublers().forEach(plan::doubler);
        cap.gutters().forEach(plan::gutter);
        cap.stops().forEach(plan::bar);
        plan.standoffs();
        plan.dimensions();
        return plan.view.build();
    }

    private void circles() {
        view.add(LineKind.OUTLINE, Path.circle(Vec2.ZERO, cap.hood().insideRadiusMm()));
        view.add(LineKind.OUTLINE, Path.circle(Vec2.ZERO, cap.hood().outsideRadiusMm()));
        view.add(LineKind.HIDDEN, Path.circle(Vec2.ZERO, cap.sleeve().insideRadiusMm()));
        view.add(LineKind.HIDDEN, Path.circle(Vec2.ZERO, cap.sleeve().outsideRadiusMm()));
        double over = 1.06 * cap.hood().outsideRadiusMm();
        view.add(LineKind.CENTER, Shapes.line(-over, 0, over, 0)).add(LineKind.CENTER, Shapes.line(0, -over, 0, over));
        at(cap.hood().outsideRadiusMm(), 0.35, parts.words("hood"));
        at(cap.sleeve().insideRadiusMm(), -0.45, parts.words("sleeve"));
        seam("hood", cap.hood().insideRadiusMm(), cap.hood().flat().seamAzimuthRad(), cap.hood().flat().pieces());
        seam("sleeve", cap.sleeve().insideRadiusMm(), cap.sleeve().flat().seamAzimuthRad(), cap.sleeve().flat().pieces());
    }

    private void seam(String part, double radiusMm, double azimuthRad, int pieces) {
        String every = pieces == 1 ? "" : ", then every " + format.angle(Angle.ofRad(2 * Math.PI / pieces));
        at(radiusMm, azimuthRad, part + " seam at " + format.angle(Angle.ofRad(azimuthRad)) + every);
    }

    private void at(double radiusMm, double azimuthRad, String words) {
        Vec2 p = Vec2.polar(radiusMm, azimuthRad);
        view.note(p.x(), p.y(), words);
    }

    private void leaf(Leaf leaf) {
        double edge = leaf.slab().hingeEdgeMm();
        double corner = leaf.hingeCorner().yMm();
        PathBuilder pen = PathBuilder.from(new Vec2(edge, -corner));
        if (leaf.slab().freeChord()) {
            double free = leaf.slab().freeEdgeMm();
            double y = leaf.freeCorner().orElseThrow().yMm();
            pen.arcTo(new Vec2(free, -y), Vec2.ZERO, true).lineTo(new Vec2(free, y));
        }
        view.both(LineKind.OUTLINE, pen.arcTo(new Vec2(edge, corner), Vec2.ZERO, true).close());
        view.note(leaf.rodAxisMm() + 0.6 * leaf.reachMm(), 0.3 * corner, parts.words("leaf " + leaf.number()));
    }

    private void rod(PivotRod rod) {
        double half = rod.diameterMm() / 2;
        double end = rod.lengthMm() / 2;
        double washer = end - cap.washer().thicknessMm();
        view.both(LineKind.OUTLINE, Shapes.rectangle(rod.axisMm() - half, -end, rod.axisMm() + half, end));
        for (double y : new double[] {washer, -end}) {
            view.both(LineKind.OUTLINE, Shapes.rectangle(rod.axisMm() - cap.washer().outsideMm() / 2, y, rod.axisMm()
                    + cap.washer().outsideMm() / 2,
                    y + cap.washer().thicknessMm()));
        }
        view.note(rod.axisMm(), -0.6 * end, parts.words("pivot rod " + rod.number()));
        if (rod.number() == 1) {
            view.note(rod.axisMm() + cap.washer().outsideMm() / 2, end - cap.washer().thicknessMm() / 2, parts.words("washer"));
        }
    }

    private void doubler(Doubler plate) {
        double face = plate.faceYMm();
        double outer = face + plate.thicknessMm();
        boolean middle = plate.number() == 1;
        for (int side : new int[] {1, -1}) {
            Path path = Shapes.rectangle(plate.fromMm(), side * face, plate.toMm(), side * outer);
            view.add(LineKind.OUTLINE, path);
            if (!middle) {
                view.add(LineKind.OUTLINE, Shapes.mirrored(path));
            }
            for (double bore : plate.boresMm()) {
                Path flange = Shapes.rectangle(bore - cap.bushing().flangeOutsideMm() / 2, side * outer, bore + cap.bushing()
                        .flangeOutsideMm() / 2,
                        side * (outer + cap.bushing().flangeMm()));
                view.add(LineKind.OUTLINE, flange);
                if (!middle) {
                    view.add(LineKind.OUTLINE, Shapes.mirrored(flange));
                }
            }
        }
        view.note(plate.toMm(), (face + outer) / 2, parts.words("doubler " + plate.number()));
        String bushing = cap.bushingsOf(plate.number());
        if (middle || !bushing.equals(cap.bushingsOf(1))) {
            double bore = plate.boresMm().get(plate.boresMm().size() - 1);
            view.note(bore + cap.bushing().flangeOutsideMm() / 2, outer + cap.bushing().flangeMm() / 2,
                    parts.words("bushing" + bushing));
        }
    }

    private void gutter(Gutter gutter) {
        double half = gutter.outsideWidthMm() / 2;
        double x = gutter.jointMm();
        Path outline = Path.polyline(List.of(new Vec2(x - half, -gutter.endMm(-half)), new Vec2(x + half, -gutter.endMm(half)),
                new Vec2(x + half, gutter.endMm(half)), new Vec2(x - half, gutter.endMm(-half))), true);
        view.add(LineKind.HIDDEN, outline);
        if (x > 0) {
            view.add(LineKind.HIDDEN, Shapes.mirrored(outline));
        }
        view.note(x + half, -0.8 * gutter.endMm(half), parts.words("gutter " + gutter.number()));
    }

    private void bar(StopBar bar) {
        for (int side : new int[] {-1, 1}) {
            double end = bar.endMm(side * bar.halfWidthMm());
            Path edge = Shapes.line(bar.jointMm() + side * bar.halfWidthMm(), -end, bar.jointMm() + side * bar.halfWidthMm(),
                    end);
            view.add(LineKind.PHANTOM, edge);
            if (bar.jointMm() > 0) {
                view.add(LineKind.PHANTOM, Shapes.mirrored(edge));
            }
        }
        view.note(bar.jointMm() + bar.halfWidthMm(), 0.75 * bar.endMm(bar.halfWidthMm()),
                parts.words("stop bar " + bar.number()));
    }

    private void standoffs() {
        Standoff standoff = cap.standoff();
        for (int i = 0; i < standoff.count(); i++) {
            view.add(LineKind.NARROW, StandoffDetail.bracket(standoff).rotated(standoff.azimuthRad(i) - standoff.outerHalfRad()));
        }
        at((standoff.sleeveOutsideMm() + standoff.hoodInsideMm()) / 2, standoff.azimuthRad(0), parts.words("standoff") + ": "
                + standoff.count()
                + ", first at " + format.angle(Angle.ofRad(standoff.firstRad())) + ", then every "
                + format.angle(Angle.ofRad(2 * Math.PI / standoff.count())));
    }

    private void dimensions() {
        view.diameter(cap.hood().outsideRadiusMm(), 0).diameter(cap.leaves().get(0).slab().radiusMm(), 0);
        for (PivotRod rod : cap.rods()) {
            view.below(-rod.axisMm(), rod.axisMm(), -rod.lengthMm() / 2);
        }
        view.left(-cap.rods().get(0).lengthMm() / 2, cap.rods().get(0).lengthMm() / 2, -cap.rods().get(0).axisMm());
        view.left(-cap.gutters().get(0).endMm(0), cap.gutters().get(0).endMm(0), -cap.gutters().get(0).outsideWidthMm() / 2);
        double face = cap.doublers().get(0).faceYMm();
        view.left(-face, face, cap.doublers().get(0).fromMm());
    }
}

package org.capwright.blank;

import java.util.List;
import java.util.Locale;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Layer;
import org.capwright.drawing.Station;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.capwright.part.CornerRelief;
import org.capwright.part.Leaf;

/** A leaf's blank, top face up, in the frame of the cap: outline with notched corners, bend lines, crimp marks, rod line, centre of gravity. */
final class LeafBlank {
    private final Leaf leaf;
    private final Writing writing;
    private final double bendRadiusMm;
    private final double hingeBendMm;
    private final Drawing.Builder drawing;

    private LeafBlank(Leaf leaf, Writing writing) {
        this.leaf = leaf;
        this.writing = writing;
        this.bendRadiusMm = leaf.curveBendRadiusMm();
        this.hingeBendMm = leaf.hingeBendLineMm();
        this.drawing = new Drawing.Builder("leaf " + leaf.number());
    }

    static Blank of(Leaf leaf, Writing writing) {
        return new LeafBlank(leaf, writing).blank();
    }

    private Blank blank() {
        drawing.cut(outline());
        bendLines();
        crimps();
        rodLine();
        centerOfGravity();
        dimensions();
        return new Blank("leaf-" + leaf.number(), "leaf " + leaf.number(), 2, leaf.sheet(), false, drawing.build(), "top face up",
                Grain.ALONG_X, List.of(), notes());
    }

    private List<String> notes() {
        return List.of("bend all flanges down", "relief holes " + writing.length(leaf.reliefHoleMm()),
                "shrink the curved lip " + writing.length(leaf.shrink().takeUpMm()) + " in all, " + leaf.crimps()
                        + " crimps, " + leaf.shrink().passes().size() + " passes");
    }

    private Path outline() {
        CornerRelief hinge = leaf.hingeRelief();
        double lip = leaf.blankHingeEdgeMm();
        double radius = leaf.shrink().blankRadiusMm();
        PathBuilder pen = PathBuilder.from(low(hinge.chordLip())).lineTo(low(hinge.chordEnd()))
                .arcTo(low(hinge.curveEnd()), low(hinge.center()), false).lineTo(low(hinge.curveLip()));
        if (leaf.freeRelief().isPresent()) {
            CornerRelief free = leaf.freeRelief().get();
            pen.arcTo(low(free.curveLip()), Vec2.ZERO, true).lineTo(low(free.curveEnd()))
                    .arcTo(low(free.chordEnd()), low(free.center()), false).lineTo(low(free.chordLip()))
                    .lineTo(free.chordLip()).lineTo(free.chordEnd()).arcTo(free.curveEnd(), free.center(), false)
                    .lineTo(free.curveLip());
        }
        return pen.arcTo(hinge.curveLip(), Vec2.ZERO, true).lineTo(hinge.curveEnd())
                .arcTo(hinge.chordEnd(), hinge.center(), false).lineTo(hinge.chordLip()).close();
    }

    private static Vec2 low(Vec2 p) {
        return new Vec2(p.x(), -p.y());
    }

    private void bendLines() {
        CornerRelief hinge = leaf.hingeRelief();
        drawing.bend(Path.line(low(hinge.center()), hinge.center()));
        Vec2 start = leaf.freeRelief().map(CornerRelief::center).orElse(null);
        if (start == null) {
            drawing.bend(PathBuilder.from(low(hinge.center())).arcTo(hinge.center(), Vec2.ZERO, true).open());
        } else {
            drawing.bend(PathBuilder.from(low(hinge.center())).arcTo(low(start), Vec2.ZERO, true).open());
            drawing.bend(PathBuilder.from(start).arcTo(hinge.center(), Vec2.ZERO, true).open());
            drawing.bend(Path.line(low(start), start));
        }
        bendLabels();
    }

    private void bendLabels() {
        double clear = 2 * Writing.CLEAR_MM;
        double side = leaf.hingeCorner().yMm() / 2;
        double besideRod = leaf.rodAxisMm() + leaf.rodRadiusMm() + clear + Writing.TEXT_MM;
        drawing.label(Writing.up(new Vec2(besideRod, side), "hinge edge: " + writing.bend(leaf.bend(), "down")));
        double free = leaf.slab().freeChord() ? leaf.slab().freeEdgeMm() : bendRadiusMm;
        String what = leaf.slab().freeChord() ? "free edge: " : "curve: ";
        drawing.label(Writing.up(new Vec2(free - 3 * clear, 0), what + writing.bend(leaf.bend(), "down")));
    }

    private void crimps() {
        int crimps = leaf.crimps();
        double from = leaf.slab().freeAzimuthRad();
        double half = leaf.slab().hingeAzimuthRad() - from;
        for (int i = 0; i < crimps; i++) {
            double share = (i + 0.5) / crimps * 2 - 1;
            double azimuth = Math.signum(share) * from + share * half;
            drawing.mark(Path.line(Vec2.polar(bendRadiusMm, azimuth), Vec2.polar(leaf.shrink().blankRadiusMm(), azimuth)));
        }
    }

    private void rodLine() {
        double end = Math.sqrt(bendRadiusMm * bendRadiusMm - leaf.rodAxisMm() * leaf.rodAxisMm());
        drawing.mark(Path.line(new Vec2(leaf.rodAxisMm(), -end), new Vec2(leaf.rodAxisMm(), end)));
        double beside = leaf.rodAxisMm() + leaf.rodRadiusMm() + 2 * Writing.CLEAR_MM + Writing.TEXT_MM;
        drawing.label(Writing.up(new Vec2(beside, -leaf.hingeCorner().yMm() / 2), "rod, fixed on this face, diameter "
                + writing.length(2 * leaf.rodRadiusMm())));
    }

    private void centerOfGravity() {
        Vec2 at = new Vec2(leaf.rodAxisMm() + leaf.balance().outboardMm(), 0);
        drawing.cross(at, 2 * Writing.CROSS_MM);
        double x = at.x() - 2 * Writing.CROSS_MM;
        drawing.label(Writing.from(new Vec2(x, 3 * Writing.CROSS_MM), "centre of gravity"));
        drawing.label(Writing.from(new Vec2(x, -4 * Writing.CROSS_MM),
                String.format(Locale.ROOT, "leaf %d, cut 2", leaf.number())));
        drawing.label(Writing.from(new Vec2(x, -4 * Writing.CROSS_MM - 5), "top face up"));
    }

    private void dimensions() {
        CornerRelief hinge = leaf.hingeRelief();
        drawing.station(Station.bottom(hingeBendMm, hinge.center().y(), "hinge bend"));
        drawing.station(Station.bottom(leaf.rodAxisMm(), hinge.center().y(), "rod axis"));
        drawing.station(Station.bottom(leaf.blankFreeEdgeMm(), 0, "free edge of the blank"));
        drawing.station(Station.left(0, leaf.rodAxisMm(), "middle"));
        for (int side : new int[] {-1, 1}) {
            drawing.station(Station.left(side * hinge.chordLip().y(), hinge.chordLip().x(), "end of hinge flange"));
        }
        double top = outline().bounds().maxY();
        drawing.station(Station.left(top, hinge.curveLip().x(), "upper edge"));
        leaf.freeRelief().ifPresent(free -> {
            drawing.station(Station.bottom(free.center().x(), -free.center().y(), "free edge bend"));
            drawing.station(Station.left(free.chordLip().y(), free.chordLip().x(), "end of free flange"));
            drawing.station(Station.left(-free.chordLip().y(), free.chordLip().x(), "end of free flange"));
        });
    }
}

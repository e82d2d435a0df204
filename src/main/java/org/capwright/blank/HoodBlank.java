package org.capwright.blank;

import java.util.ArrayList;
import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Station;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Hood;
import org.capwright.part.Standoff;
import org.capwright.units.Length;

/** The hood's blank: rivet holes, bushing holes in their true outline, doubler outlines, beads. */
final class HoodBlank {
    private static final double AROUND_MM = 10;

    private final Cap cap;
    private final Hood hood;
    private final Writing writing;
    private final CylinderPiece piece;
    private final Drawing.Builder drawing;
    private final List<Blank.Detail> details = new ArrayList<>();

    private HoodBlank(Cap cap, int index, Writing writing) {
        this.cap = cap;
        this.hood = cap.hood();
        this.writing = writing;
        this.piece = new CylinderPiece(hood.flat(), index, writing);
        this.drawing = new Drawing.Builder(piece.name("hood"));
    }

    static List<Blank> of(Cap cap, Writing writing) {
        List<Blank> blanks = new ArrayList<>();
        for (int i = 0; i < cap.hood().flat().pieces(); i++) {
            blanks.add(new HoodBlank(cap, i, writing).blank());
        }
        return blanks;
    }

    private Blank blank() {
        drawing.cut(piece.outline(List.of()));
        cap.doublers().forEach(this::plates);
        rivetHoles();
        piece.draw(drawing);
        return new Blank(piece.id("hood"), piece.name("hood"), 1, hood.sheet(), true, drawing.build(), "outside face up",
                Grain.ALONG_X, details, List.of("roll to inside diameter " + writing.length(2 * hood.insideRadiusMm()),
                        piece.seamNote()));
    }

    /** A plate at both ends of its rods, and the mirror images of those off the middle. */
    private void plates(Doubler plate) {
        for (BushingEnd end : BushingEnd.of(plate)) {
            double middleAzimuth = end.azimuthRad(plate.middleMm() / hood.outsideRadiusMm());
            for (double middle : piece.stations(middleAzimuth)) {
                plate(plate, end, middle);
            }
        }
    }

    private void plate(Doubler plate, BushingEnd end, double middleMm) {
        double z = cap.rods().get(plate.number() - 1).axisZMm();
        double axis = hood.flat().flatHeightMm(hood.belowRimMm() + z);
        double half = plate.heightMm() / 2;
        double from = middleMm + offset(plate, end, plate.fromMm());
        double to = middleMm + offset(plate, end, plate.toMm());
        Bounds outline = new Bounds(Math.min(from, to), axis - half, Math.max(from, to), axis + half);
        drawing.mark(Path.polyline(List.of(new Vec2(outline.minX(), outline.minY()), new Vec2(outline.maxX(), outline.minY()),
                new Vec2(outline.maxX(), outline.maxY()), new Vec2(outline.minX(), outline.maxY())), true));
        drawing.mark(Path.line(new Vec2(middleMm, outline.minY() - 5), new Vec2(middleMm, outline.maxY() + 5)));
        drawing.mark(Path.line(new Vec2(outline.minX(), axis), new Vec2(outline.maxX(), axis)));
        for (double bore : plate.boresMm()) {
            drawing.cut(hole(plate, end, bore, middleMm));
            double center = middleMm + offset(plate, end, bore);
            drawing.mark(Path.line(new Vec2(center, axis - plate.boreMm()), new Vec2(center, axis + plate.boreMm())));
        }
        drawing.station(Station.bottom(middleMm, outline.maxY(), "middle of " + end.name()));
        drawing.station(Station.left(axis, hood.flat().lengthMm(), "rod axes"));
        drawing.station(Station.left(outline.maxY(), outline.minX(), "top of doublers"));
        details.add(new Blank.Detail(end.name() + ", bushing holes", middleMm, outline.grown(AROUND_MM)));
    }

    private Path hole(Doubler plate, BushingEnd end, double axisMm, double middleMm) {
        double z = hood.belowRimMm() + cap.rods().get(plate.number() - 1).axisZMm();
        List<Vec2> points = BushingHole.outline(axisMm, plate.boreMm() / 2, hood.insideRadiusMm(),
                hood.outsideRadiusMm()).stream()
                .map(p -> new Vec2(middleMm + end.turn() * (p.x() - Math.asin(plate.middleMm() / hood.outsideRadiusMm()))
                        * hood.flat().neutralRadiusMm(), hood.flat().flatHeightMm(z + p.y()))).toList();
        return Path.polyline(points, true);
    }

    /** Station of a plane x from that of the plate's middle, at the hood's outside. */
    private double offset(Doubler plate, BushingEnd end, double xMm) {
        double angle = Math.asin(xMm / hood.outsideRadiusMm()) - Math.asin(plate.middleMm() / hood.outsideRadiusMm());
        return end.turn() * angle * hood.flat().neutralRadiusMm();
    }

    private void rivetHoles() {
        Standoff standoff = cap.standoff();
        double foot = hood.belowRimMm() + standoff.topZMm() - standoff.heightMm();
        double radius = standoff.rivets().holeMm() / 2;
        for (int i = 0; i < standoff.count(); i++) {
            for (double x : piece.stations(standoff.azimuthRad(i))) {
                rivetColumn(standoff, x, foot, radius);
            }
        }
        for (int i = 0; i < standoff.rivets().each(); i++) {
            drawing.station(Station.left(hood.flat().flatHeightMm(foot + standoff.rivetHeightMm(i)), hood.flat().lengthMm(),
                    "rivet holes"));
        }
    }

    private void rivetColumn(Standoff standoff, double x, double footMm, double radiusMm) {
        double top = 0;
        for (int i = 0; i < standoff.rivets().each(); i++) {
            Vec2 at = new Vec2(x, hood.flat().flatHeightMm(footMm + standoff.rivetHeightMm(i)));
            drawing.cut(Path.circle(at, radiusMm)).cross(at, Writing.CROSS_MM);
            top = at.y();
        }
        drawing.mark(Path.line(new Vec2(x, 0), new Vec2(x, top + AROUND_MM)));
        details.add(new Blank.Detail("rivet holes", x, new Bounds(x - 2 * AROUND_MM, 0, x + 2 * AROUND_MM, top + AROUND_MM)));
        drawing.station(Station.bottom(x, top, "rivet holes " + writing.format().thickness(Length.ofMm(2 * radiusMm))));
    }
}

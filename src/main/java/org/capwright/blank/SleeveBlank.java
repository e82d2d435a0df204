package org.capwright.blank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Station;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Sleeve;
import org.capwright.part.Standoff;

/** The sleeve's blank: notches for the gutter mouths, fastener holes, where the standoffs are welded, the stop bead. */
final class SleeveBlank {
    private static final double AROUND_MM = 12;

    private final Sleeve sleeve;
    private final Standoff standoff;
    private final Writing writing;
    private final CylinderPiece piece;
    private final Drawing.Builder drawing;
    private final List<Blank.Detail> details = new ArrayList<>();

    private SleeveBlank(Cap cap, int index, Writing writing) {
        this.sleeve = cap.sleeve();
        this.standoff = cap.standoff();
        this.writing = writing;
        this.piece = new CylinderPiece(sleeve.flat(), index, writing);
        this.drawing = new Drawing.Builder(piece.name("sleeve"));
    }

    static List<Blank> of(Cap cap, Writing writing) {
        List<Blank> blanks = new ArrayList<>();
        for (int i = 0; i < cap.sleeve().flat().pieces(); i++) {
            blanks.add(new SleeveBlank(cap, i, writing).blank());
        }
        return blanks;
    }

    private Blank blank() {
        List<CylinderPiece.Notch> notches = notches();
        drawing.cut(piece.outline(notches));
        notches.forEach(this::notchDimensions);
        fastenerHoles();
        standoffs();
        piece.draw(drawing);
        return new Blank(piece.id("sleeve"), piece.name("sleeve"), 1, sleeve.sheet(), true, drawing.build(), "outside face up",
                Grain.ALONG_X, details, List.of("roll to inside diameter " + writing.length(2 * sleeve.insideRadiusMm()),
                        piece.seamNote()));
    }

    private List<CylinderPiece.Notch> notches() {
        double length = sleeve.flat().lengthMm();
        List<CylinderPiece.Notch> notches = new ArrayList<>();
        for (Sleeve.Notch notch : sleeve.notches()) {
            double half = (notch.toRad() - notch.fromRad()) / 2 * sleeve.flat().neutralRadiusMm();
            double bottom = sleeve.flat().flatHeightMm(sleeve.heightMm() - notch.depthMm());
            double girth = sleeve.flat().girthMm();
            for (double middle : piece.stations((notch.fromRad() + notch.toRad()) / 2)) {
                addNotch(notches, new CylinderPiece.Notch(notch.gutter(), middle - half, middle + half, bottom), length);
                // a notch across the seam shows at the other end too
                addNotch(notches, new CylinderPiece.Notch(notch.gutter(), middle - girth - half, middle - girth + half,
                        bottom), length);
            }
        }
        notches.sort(Comparator.comparingDouble(CylinderPiece.Notch::fromMm));
        return notches;
    }

    private static void addNotch(List<CylinderPiece.Notch> notches, CylinderPiece.Notch notch, double lengthMm) {
        if (notch.toMm() > 0 && notch.fromMm() < lengthMm) {
            notches.add(notch);
        }
    }

    private void notchDimensions(CylinderPiece.Notch notch) {
        double top = sleeve.flat().widthMm();
        double middle = (notch.fromMm() + notch.toMm()) / 2;
        drawing.mark(Path.line(new Vec2(middle, notch.bottomMm() - AROUND_MM), new Vec2(middle, notch.bottomMm())));
        String gutter = "gutter " + notch.gutter();
        drawing.station(Station.bottom(notch.fromMm(), notch.bottomMm(), gutter + " notch, left side"));
        drawing.station(Station.bottom(notch.toMm(), notch.bottomMm(), gutter + " notch, right side"));
        drawing.station(Station.left(notch.bottomMm(), notch.fromMm(), "bottom of " + gutter + " notches"));
        details.add(new Blank.Detail(gutter + " notch", middle,
                new Bounds(notch.fromMm() - AROUND_MM, notch.bottomMm() - AROUND_MM, notch.toMm() + AROUND_MM, top)));
    }

    private void fastenerHoles() {
        Sleeve.FastenerHoles holes = sleeve.holes();
        double y = sleeve.flat().flatHeightMm(holes.aboveFootMm());
        for (int i = 0; i < holes.count(); i++) {
            for (double x : piece.stations(holes.firstRad() + 2 * Math.PI * i / holes.count())) {
                Vec2 at = new Vec2(x, y);
                drawing.cut(Path.circle(at, holes.diameterMm() / 2)).cross(at, Writing.CROSS_MM);
                drawing.mark(Path.line(new Vec2(x, 0), new Vec2(x, y + AROUND_MM)));
                details.add(new Blank.Detail("fastener hole", x, new Bounds(x - AROUND_MM, 0, x + AROUND_MM, y + AROUND_MM)));
                drawing.station(Station.bottom(x, y, "fastener hole " + writing.length(holes.diameterMm())));
            }
        }
        if (holes.count() > 0) {
            drawing.station(Station.left(y, sleeve.flat().lengthMm(), "fastener holes"));
        }
    }

    /** Where the inner flanges are welded: their outline. */
    private void standoffs() {
        double half = standoff.innerHalfRad() * sleeve.flat().neutralRadiusMm();
        double top = sleeve.flat().flatHeightMm(sleeve.heightMm() + standoff.topZMm());
        double foot = sleeve.flat().flatHeightMm(sleeve.heightMm() + standoff.topZMm() - standoff.heightMm());
        for (int i = 0; i < standoff.count(); i++) {
            for (double x : piece.stations(standoff.innerAzimuthRad(i))) {
                drawing.mark(Path.polyline(List.of(new Vec2(x - half, foot), new Vec2(x + half, foot), new Vec2(x + half, top),
                        new Vec2(x - half, top)), true));
                drawing.station(Station.bottom(x, top, "middle of a standoff"));
            }
        }
        drawing.station(Station.left(top, sleeve.flat().lengthMm(), "top of standoffs"));
    }
}

package org.capwright.blank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.capwright.metal.SeamKind;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Doubler;
import org.capwright.part.Hood;
import org.capwright.part.Sleeve;

/**
 * The station strips of a cap's cylinders: flat, round the outside, round the inside. On the flat sheet a station is
 * {@code s = (phi - phi_seam) R_n}; round the outside it is {@code s R_o / R_n}, round the inside {@code (L - s) R_i / R_n}.
 */
public final class StationStrips {
    private final CylinderPiece piece;
    private final List<StationStrip.Mark> marks = new ArrayList<>();

    private StationStrips(CylinderPiece piece) {
        this.piece = piece;
    }

    /**
     * The strips of a cap.
     *
     * @param cap the cap
     * @return three for each piece of sleeve and hood
     */
    public static List<StationStrip> of(Cap cap) {
        Writing writing = Writing.of(cap);
        List<StationStrip> strips = new ArrayList<>();
        for (int i = 0; i < cap.sleeve().flat().pieces(); i++) {
            StationStrips one = new StationStrips(new CylinderPiece(cap.sleeve().flat(), i, writing));
            one.sleeve(cap);
            strips.addAll(one.faces("sleeve", cap.sleeve().insideRadiusMm(), cap.sleeve().outsideRadiusMm()));
        }
        for (int i = 0; i < cap.hood().flat().pieces(); i++) {
            StationStrips one = new StationStrips(new CylinderPiece(cap.hood().flat(), i, writing));
            one.hood(cap);
            strips.addAll(one.faces("hood", cap.hood().insideRadiusMm(), cap.hood().outsideRadiusMm()));
        }
        return strips;
    }

    private void sleeve(Cap cap) {
        Sleeve sleeve = cap.sleeve();
        Sleeve.FastenerHoles holes = sleeve.holes();
        for (int i = 0; i < holes.count(); i++) {
            at(holes.firstRad() + 2 * Math.PI * i / holes.count(), "fastener hole " + (i + 1));
        }
        for (Sleeve.Notch notch : sleeve.notches()) {
            at(notch.fromRad(), "gutter " + notch.gutter() + " notch begins");
            at(notch.toRad(), "gutter " + notch.gutter() + " notch ends");
        }
        for (int i = 0; i < cap.standoff().count(); i++) {
            at(cap.standoff().innerAzimuthRad(i), "standoff " + (i + 1));
        }
        common();
    }

    private void hood(Cap cap) {
        Hood hood = cap.hood();
        for (int i = 0; i < cap.standoff().count(); i++) {
            at(cap.standoff().azimuthRad(i), "standoff " + (i + 1) + " rivets");
        }
        for (Doubler plate : cap.doublers()) {
            for (BushingEnd end : BushingEnd.of(plate)) {
                at(end.azimuthRad(plate.middleMm() / hood.outsideRadiusMm()), "doubler " + plate.number() + ", middle");
                if (plate.boresMm().size() > 1) {
                    plate.boresMm().forEach(bore -> at(end.azimuthRad(bore / hood.outsideRadiusMm()), "bushing, doubler "
                            + plate.number()));
                }
            }
        }
        common();
    }

    /** Quarter lines, seam, ends. */
    private void common() {
        for (int quarter = 0; quarter < 4; quarter++) {
            at(quarter * Math.PI / 2, String.format(Locale.ROOT, "quarter line %d deg", 90 * quarter));
        }
        CylinderFlat flat = piece.flat();
        String end = flat.beads().isEmpty() ? "end" : "end, beads end";
        add(0, end);
        add(flat.lengthMm(), end);
        double half = flat.seam().allowanceMm() / 2;
        add(half, "seam");
        add(flat.lengthMm() - half, "seam");
        if (flat.seam().kind() != SeamKind.BUTT) {
            String what = flat.seam().kind() == SeamKind.LAP ? "lap" : "lock fold";
            add(flat.seam().widthMm(), what);
            add(flat.lengthMm() - flat.seam().widthMm(), what);
        }
    }

    private void at(double azimuthRad, String what) {
        piece.stations(azimuthRad).forEach(station -> add(station, what));
    }

    private void add(double station, String what) {
        marks.add(new StationStrip.Mark(station, what));
    }

    private List<StationStrip> faces(String part, double insideMm, double outsideMm) {
        double neutral = piece.flat().neutralRadiusMm();
        return List.of(strip(part, StationStrip.Face.FLAT, 1, false), strip(part, StationStrip.Face.OUTSIDE, outsideMm / neutral,
                false),
                strip(part, StationStrip.Face.INSIDE, insideMm / neutral, true));
    }

    private StationStrip strip(String part, StationStrip.Face face, double scale, boolean mirrored) {
        double length = piece.flat().lengthMm() * scale;
        List<StationStrip.Mark> placed = marks.stream()
                .map(mark -> new StationStrip.Mark(mirrored ? length - mark.atMm() * scale : mark.atMm() * scale, mark.what()))
                .sorted(Comparator.comparingDouble(StationStrip.Mark::atMm)).distinct().toList();
        return new StationStrip(piece.name(part), face, length, placed);
    }
}

package org.capwright.blank;

import java.util.ArrayList;
import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Layer;
import org.capwright.drawing.Station;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.capwright.metal.Edge;
import org.capwright.metal.EdgeKind;
import org.capwright.metal.SeamKind;
import org.capwright.part.CylinderFlat;
import org.capwright.part.PlacedBead;

/**
 * One piece of a cylinder laid flat: outline, seams, edges and beads, and where an azimuth lies on it. What falls in the
 * lap of a seam lies on both ends.
 *
 * @param flat the cylinder's blank
 * @param index which piece, from 0
 * @param writing how to write on it
 */
record CylinderPiece(CylinderFlat flat, int index, Writing writing) {
    /** A notch in the upper edge: for which gutter, from, to along the piece, and its bottom. */
    record Notch(int gutter, double fromMm, double toMm, double bottomMm) {
    }

    /** Where an azimuth lies on this piece: nowhere, once, or in the lap at both ends. */
    List<Double> stations(double azimuthRad) {
        double girth = flat.girthMm();
        double first = (azimuthRad - flat.seamAzimuthRad()) * flat.neutralRadiusMm() - index * girth / flat.pieces()
                + flat.seam().allowanceMm() / 2;
        first -= girth * Math.floor(first / girth);
        List<Double> stations = new ArrayList<>();
        for (double station = first; station <= flat.lengthMm(); station += girth) {
            stations.add(station);
        }
        return stations;
    }

    /** The outline, counterclockwise from the lower left corner, with notches in its upper edge from the left. */
    Path outline(List<Notch> notches) {
        double length = flat.lengthMm();
        PathBuilder pen = PathBuilder.from(Vec2.ZERO).lineTo(new Vec2(length, 0)).lineTo(new Vec2(length,
                edgeAt(length, notches)));
        for (int i = notches.size() - 1; i >= 0; i--) {
            Notch notch = notches.get(i);
            double from = Math.max(0, notch.fromMm());
            double to = Math.min(length, notch.toMm());
            pen.lineTo(new Vec2(to, to < length ? flat.widthMm() : notch.bottomMm())).lineTo(new Vec2(to, notch.bottomMm()))
                    .lineTo(new Vec2(from, notch.bottomMm())).lineTo(new Vec2(from, from > 0 ? flat.widthMm()
                    : notch.bottomMm()));
        }
        return pen.lineTo(new Vec2(0, edgeAt(0, notches))).close();
    }

    /** Height of the upper edge at an end, which may fall into a notch. */
    private double edgeAt(double x, List<Notch> notches) {
        return notches.stream().filter(notch -> notch.fromMm() <= x && notch.toMm() >= x).mapToDouble(Notch::bottomMm)
                .findFirst().orElse(flat.widthMm());
    }

    /** Seams, edges and beads, with their running dimensions. */
    void draw(Drawing.Builder drawing) {
        seams(drawing);
        edge(drawing, flat.footEdge(), 0, 1);
        edge(drawing, flat.topEdge(), flat.widthMm(), -1);
        for (PlacedBead bead : flat.beads()) {
            bead(drawing, bead);
        }
        drawing.station(Station.bottom(flat.lengthMm(), flat.widthMm(), "end"));
        drawing.station(Station.left(flat.widthMm(), flat.lengthMm(), "top edge"));
    }

    private void seams(Drawing.Builder drawing) {
        double width = flat.seam().widthMm();
        if (flat.seam().kind() == SeamKind.BUTT) {
            return;
        }
        boolean lap = flat.seam().kind() == SeamKind.LAP;
        for (double x : new double[] {width, flat.lengthMm() - width}) {
            drawing.add(lap ? Layer.MARK : Layer.BEND, vertical(x));
            drawing.station(Station.bottom(x, flat.widthMm(), lap ? "lap" : "lock fold"));
        }
    }

    private void edge(Drawing.Builder drawing, Edge edge, double atMm, int inwards) {
        if (edge.kind() == EdgeKind.PLAIN) {
            return;
        }
        double y = atMm + inwards * edge.allowanceMm();
        drawing.bend(level(y));
        drawing.station(Station.left(y, flat.lengthMm(), edge.kind().word() + " edge"));
    }

    private void bead(Drawing.Builder drawing, PlacedBead placed) {
        double middle = flat.flatHeightMm(placed.aboveFootMm());
        double half = (placed.bead().widthMm() + placed.bead().takeUpMm()) / 2;
        drawing.mark(level(middle - half)).mark(level(middle)).mark(level(middle + half));
        drawing.station(Station.left(middle, flat.lengthMm(), "bead " + (placed.inward() ? "in" : "out")
                + ", " + writing.length(placed.bead().widthMm()) + " by " + writing.length(placed.bead().depthMm())));
    }

    Path level(double y) {
        return Path.line(new Vec2(0, y), new Vec2(flat.lengthMm(), y));
    }

    private Path vertical(double x) {
        return Path.line(new Vec2(x, 0), new Vec2(x, flat.widthMm()));
    }

    String id(String part) {
        return flat.pieces() == 1 ? part : part + "-" + (index + 1);
    }

    String name(String part) {
        return flat.pieces() == 1 ? part : part + ", piece " + (index + 1) + " of " + flat.pieces();
    }

    String seamNote() {
        return switch (flat.seam().kind()) {
            case BUTT -> "butt weld the ends";
            case LAP -> "lap the ends " + writing.length(flat.seam().widthMm());
            case LOCK -> "grooved lock, pockets " + writing.length(flat.seam().widthMm());
        };
    }
}

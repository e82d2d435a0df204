package org.capwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.part.PlacedBead;

/** Shapes that several views share. */
final class Shapes {
    private static final int ELLIPSE_POINTS = 24;

    private Shapes() {
    }

    static Path rectangle(double x1, double y1, double x2, double y2) {
        return Path.polyline(List.of(new Vec2(x1, y1), new Vec2(x2, y1), new Vec2(x2, y2), new Vec2(x1, y2)), true);
    }

    static Path line(double x1, double y1, double x2, double y2) {
        return Path.line(new Vec2(x1, y1), new Vec2(x2, y2));
    }

    /** The mirror image at x = 0. */
    static Path mirrored(Path path) {
        return new Path(path.segments().stream().map(Shapes::mirrored).toList(), path.closed());
    }

    private static Segment mirrored(Segment segment) {
        if (segment instanceof Segment.Arc arc) {
            return new Segment.Arc(flip(arc.center()), arc.radius(), Math.PI - arc.startRad(), -arc.sweepRad());
        }
        return new Segment.Line(flip(segment.from()), flip(segment.to()));
    }

    private static Vec2 flip(Vec2 p) {
        return new Vec2(-p.x(), p.y());
    }

    /** Turned about a point. */
    static Path turned(Path path, Vec2 about, double rad) {
        return path.translated(about.times(-1)).rotated(rad).translated(about);
    }

    /** A face of a cylinder's wall in section, from its foot up, with its beads. */
    static Path face(double x, double footZ, double topZ, List<PlacedBead> beads) {
        PathBuilder pen = PathBuilder.from(new Vec2(x, footZ));
        for (PlacedBead placed : beads) {
            double middle = footZ + placed.aboveFootMm();
            double half = placed.bead().widthMm() / 2;
            double radius = placed.bead().arcRadiusMm();
            double off = radius - placed.bead().depthMm();
            Vec2 center = new Vec2(placed.inward() ? x + off : x - off, middle);
            pen.lineTo(new Vec2(x, middle - half)).arcTo(new Vec2(x, middle + half), center, !placed.inward());
        }
        return pen.lineTo(new Vec2(x, topZ)).open();
    }

    /** A circle of a cylinder's wall seen at an angle. */
    static Path ellipse(double x, double y, double halfWidth, double halfHeight) {
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < ELLIPSE_POINTS; i++) {
            double turn = 2 * Math.PI * i / ELLIPSE_POINTS;
            points.add(new Vec2(x + halfWidth * Math.cos(turn), y + halfHeight * Math.sin(turn)));
        }
        return Path.polyline(points, true);
    }

    /** A bent sheet: the outside faces as a line, the sheet's thickness to the left of it. */
    static Path sheet(List<Vec2> outside, double thicknessMm) {
        List<Vec2> points = new ArrayList<>(outside);
        for (int i = outside.size() - 1; i >= 0; i--) {
            points.add(inside(outside, i, thicknessMm));
        }
        return Path.polyline(points, true);
    }

    /** The inside of a corner: off both neighbouring lines by the thickness. */
    private static Vec2 inside(List<Vec2> line, int i, double thickness) {
        Vec2 before = i == 0 ? null : unit(line.get(i - 1), line.get(i));
        Vec2 after = i == line.size() - 1 ? null : unit(line.get(i), line.get(i + 1));
        if (before == null || after == null) {
            return line.get(i).plus((before == null ? after : before).left().times(thickness));
        }
        Vec2 sum = before.left().plus(after.left());
        return line.get(i).plus(sum.times(thickness / (1 + before.dot(after))));
    }

    private static Vec2 unit(Vec2 from, Vec2 to) {
        return to.minus(from).times(1 / from.distance(to));
    }
}

package org.capwright.export.dxf;

import java.util.ArrayList;
import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Layer;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;

/**
 * The paths of a layer with nothing drawn twice, so that no tool runs over the same place again: straight lines on each other
 * are joined to one, and of paths that are the same only the first is kept. Outlines stay whole.
 */
final class LinesOnce {
    private static final double SAME_MM = 1e-4;
    private static final double PARALLEL_RAD = 1e-7;

    private final List<Path> others = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();

    private LinesOnce() {
    }

    /** A stretch of a straight line: its direction (to the right, or up), its distance from the origin, its ends along it. */
    private record Span(Vec2 direction, double offMm, double fromMm, double toMm) {
        static Span of(Vec2 a, Vec2 b) {
            Vec2 along = b.minus(a).times(1 / a.distance(b));
            Vec2 direction = along.x() < -PARALLEL_RAD || Math.abs(along.x()) <= PARALLEL_RAD && along.y() < 0 ? along.times(-1)
                    : along;
            double first = direction.dot(a);
            double second = direction.dot(b);
            return new Span(direction, direction.cross(a), Math.min(first, second), Math.max(first, second));
        }

        boolean touches(Span other) {
            return Math.abs(direction.cross(other.direction)) < PARALLEL_RAD && Math.abs(offMm - other.offMm) < SAME_MM
                    && fromMm <= other.toMm + SAME_MM && other.fromMm <= toMm + SAME_MM;
        }

        Span joined(Span other) {
            return new Span(direction, offMm, Math.min(fromMm, other.fromMm), Math.max(toMm, other.toMm));
        }

        Path path() {
            Vec2 foot = direction.left().times(offMm);
            return Path.line(foot.plus(direction.times(fromMm)), foot.plus(direction.times(toMm)));
        }
    }

    /** The paths of a layer. */
    static List<Path> of(Drawing drawing, Layer layer) {
        LinesOnce lines = new LinesOnce();
        drawing.paths(layer).forEach(lines::add);
        List<Path> all = new ArrayList<>(lines.others);
        lines.spans.forEach(span -> all.add(span.path()));
        return all;
    }

    private void add(Path path) {
        if (path.segments().size() == 1 && path.segments().get(0) instanceof Segment.Line line) {
            add(Span.of(line.from(), line.to()));
        } else if (others.stream().noneMatch(other -> same(other, path))) {
            others.add(path);
        }
    }

    private void add(Span span) {
        for (Span other : spans) {
            if (span.touches(other)) {
                spans.remove(other);
                add(span.joined(other));
                return;
            }
        }
        spans.add(span);
    }

    private static boolean same(Path a, Path b) {
        if (a.segments().size() != b.segments().size()) {
            return false;
        }
        for (int i = 0; i < a.segments().size(); i++) {
            if (!same(a.segments().get(i), b.segments().get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(Segment a, Segment b) {
        return a.from().distance(b.from()) < SAME_MM && a.to().distance(b.to()) < SAME_MM
                && a.pointAt(0.5).distance(b.pointAt(0.5)) < SAME_MM;
    }
}

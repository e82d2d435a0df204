package org.capwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;

/**
 * A view of the cap or of a part of it, at true size.
 *
 * @param title what it shows
 * @param remark how to read it, may be empty
 * @param lines its lines
 * @param spans its dimensions
 * @param notes its references: parts with their numbers, and remarks
 */
public record View(String title, String remark, List<Line> lines, List<Span> spans, List<Note> notes) {
    /** Keeps its own copies. */
    public View {
        lines = List.copyOf(lines);
        spans = List.copyOf(spans);
        notes = List.copyOf(notes);
    }

    /**
     * A line.
     *
     * @param kind what it stands for
     * @param path where it runs
     */
    public record Line(LineKind kind, Path path) {
    }

    /** Along which edge of the view a dimension stands. */
    public enum Side {
        /** Below: it measures along x. */
        BELOW,
        /** On the left: it measures along y. */
        LEFT
    }

    /**
     * A dimension between two parallel lines.
     *
     * @param side along which edge it stands
     * @param fromMm where it begins: x, or y
     * @param toMm where it ends, over where it begins
     * @param fromReachMm how far the thing at its beginning is across: y, or x
     * @param toReachMm the same at its end
     * @param prefix what stands before the value, such as a diameter sign
     */
    public record Span(Side side, double fromMm, double toMm, double fromReachMm, double toReachMm, String prefix) {
        /**
         * What it measures.
         *
         * @return mm
         */
        public double mm() {
            return toMm - fromMm;
        }
    }

    /**
     * A reference beside the view with a line to its place.
     *
     * @param at the place
     * @param words what it says
     */
    public record Note(Vec2 at, String words) {
    }

    /**
     * The smallest upright rectangle round its lines.
     *
     * @return the rectangle
     */
    public Bounds bounds() {
        return lines.stream().map(line -> line.path().bounds()).reduce(Bounds::union).orElseThrow();
    }

    /** Collects a view. */
    static final class Builder {
        private static final String DIAMETER = "\u00d8 ";
        private static final double LEAST_MM = 0.01;

        private final String title;
        private final String remark;
        private final List<Line> lines = new ArrayList<>();
        private final List<Span> spans = new ArrayList<>();
        private final List<Note> notes = new ArrayList<>();

        Builder(String title) {
            this(title, "");
        }

        Builder(String title, String remark) {
            this.title = title;
            this.remark = remark;
        }

        Builder add(LineKind kind, Path path) {
            lines.add(new Line(kind, path));
            return this;
        }

        /** A line and its mirror image at x = 0. */
        Builder both(LineKind kind, Path path) {
            return add(kind, path).add(kind, Shapes.mirrored(path));
        }

        Builder below(double fromMm, double toMm, double reachMm) {
            return span(new Span(Side.BELOW, fromMm, toMm, reachMm, reachMm, ""));
        }

        /** A diameter about x = 0. */
        Builder diameter(double radiusMm, double reachMm) {
            return span(new Span(Side.BELOW, -radiusMm, radiusMm, reachMm, reachMm, DIAMETER));
        }

        Builder left(double fromMm, double toMm, double reachMm) {
            return left(fromMm, toMm, reachMm, reachMm);
        }

        Builder left(double fromMm, double toMm, double fromReachMm, double toReachMm) {
            return span(new Span(Side.LEFT, fromMm, toMm, fromReachMm, toReachMm, ""));
        }

        private Builder span(Span span) {
            if (span.mm() > LEAST_MM) {
                spans.add(span);
            }
            return this;
        }

        Builder note(double x, double y, String words) {
            notes.add(new Note(new Vec2(x, y), words));
            return this;
        }

        View build() {
            return new View(title, remark, lines, spans, notes);
        }
    }
}

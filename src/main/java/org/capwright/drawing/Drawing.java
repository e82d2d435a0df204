package org.capwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;

/**
 * A drawing at true size.
 *
 * @param name what it shows
 * @param strokes its lines, at least one
 * @param labels its writing
 * @param stations its running dimensions
 */
public record Drawing(String name, List<Stroke> strokes, List<Label> labels, List<Station> stations) {
    /** Keeps its own copies; refuses a drawing without a line. */
    public Drawing {
        if (strokes.isEmpty()) {
            throw new IllegalArgumentException("the drawing \"" + name + "\" needs a line");
        }
        strokes = List.copyOf(strokes);
        labels = List.copyOf(labels);
        stations = List.copyOf(stations);
    }

    /**
     * The smallest upright rectangle round its lines; writing does not count.
     *
     * @return the rectangle
     */
    public Bounds bounds() {
        return strokes.stream().map(stroke -> stroke.path().bounds()).reduce(Bounds::union).orElseThrow();
    }

    /**
     * The paths of a layer.
     *
     * @param layer which
     * @return its paths, in order
     */
    public List<Path> paths(Layer layer) {
        return strokes.stream().filter(stroke -> stroke.layer() == layer).map(Stroke::path).toList();
    }

    /** Collects a drawing. */
    public static final class Builder {
        private final String name;
        private final List<Stroke> strokes = new ArrayList<>();
        private final List<Label> labels = new ArrayList<>();
        private final List<Station> stations = new ArrayList<>();

        /**
         * An empty drawing.
         *
         * @param name what it will show
         */
        public Builder(String name) {
            this.name = name;
        }

        /**
         * Adds a line.
         *
         * @param layer what it is for
         * @param path where it runs
         * @return this
         */
        public Builder add(Layer layer, Path path) {
            strokes.add(new Stroke(layer, path));
            return this;
        }

        /**
         * Adds a line to be cut.
         *
         * @param path where it runs
         * @return this
         */
        public Builder cut(Path path) {
            return add(Layer.CUT, path);
        }

        /**
         * Adds a line to be bent.
         *
         * @param path where it runs
         * @return this
         */
        public Builder bend(Path path) {
            return add(Layer.BEND, path);
        }

        /**
         * Adds a line to be scribed.
         *
         * @param path where it runs
         * @return this
         */
        public Builder mark(Path path) {
            return add(Layer.MARK, path);
        }

        /**
         * Adds a small cross.
         *
         * @param at its middle
         * @param halfMm half its size
         * @return this
         */
        public Builder cross(Vec2 at, double halfMm) {
            mark(Path.line(at.minus(new Vec2(halfMm, 0)), at.plus(new Vec2(halfMm, 0))));
            return mark(Path.line(at.minus(new Vec2(0, halfMm)), at.plus(new Vec2(0, halfMm))));
        }

        /**
         * Adds writing.
         *
         * @param label the writing
         * @return this
         */
        public Builder label(Label label) {
            labels.add(label);
            return this;
        }

        /**
         * Adds a running dimension.
         *
         * @param station the dimension
         * @return this
         */
        public Builder station(Station station) {
            stations.add(station);
            return this;
        }

        /**
         * The drawing.
         *
         * @return what was collected
         */
        public Drawing build() {
            return new Drawing(name, strokes, labels, stations);
        }
    }
}

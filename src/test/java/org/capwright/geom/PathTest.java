package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Areas, centroids, lengths and bounds of arcs and lines against JTS, which has no arcs and gets fine chords. */
class PathTest {
    private static final long SEED = 99;
    private static final double CHORD_MM = 1e-5;

    @Test
    void areaCentroidLengthAndBoundsAgreeWithJts() {
        Random random = new Random(SEED);
        for (int i = 0; i < 100; i++) {
            Path path = random(random);
            List<Vec2> points = new ArrayList<>(path.points(CHORD_MM));
            points.set(points.size() - 1, points.get(0));
            Polygon polygon = new GeometryFactory().createPolygon(points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
            if (!polygon.isValid()) {
                continue;
            }
            String what = "seed " + SEED + ", case " + i;
            assertThat(Math.abs(path.area())).as(what).isCloseTo(polygon.getArea(), within(1e-5 * polygon.getArea()));
            assertThat(path.centroid().x()).as(what).isCloseTo(polygon.getCentroid().getX(), within(1e-3));
            assertThat(path.centroid().y()).as(what).isCloseTo(polygon.getCentroid().getY(), within(1e-3));
            assertThat(path.length()).as(what).isCloseTo(polygon.getLength(), within(1e-4 * polygon.getLength()));
            assertThat(path.bounds().width()).as(what).isCloseTo(polygon.getEnvelopeInternal().getWidth(), within(1e-3));
            assertThat(path.reversed().area()).as(what).isCloseTo(-path.area(), within(1e-9 * polygon.getArea()));
            assertThat(path.rotated(1).area()).as(what).isCloseTo(path.area(), within(1e-9 * polygon.getArea()));
        }
    }

    /** A star of points; between some neighbours an arc, to either side. */
    private static Path random(Random random) {
        int corners = 3 + random.nextInt(6);
        Vec2[] at = new Vec2[corners];
        for (int i = 0; i < corners; i++) {
            at[i] = Vec2.polar(50 + random.nextDouble() * 100, 2 * Math.PI * (i + 0.6 * random.nextDouble()) / corners).plus(new Vec2(30, -20));
        }
        PathBuilder pen = PathBuilder.from(at[0]);
        for (int i = 1; i <= corners; i++) {
            Vec2 from = at[i - 1];
            Vec2 to = at[i % corners];
            Vec2 half = to.minus(from).times(0.5);
            if (random.nextBoolean()) {
                double away = (1.5 + random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
                pen.arcTo(to, from.plus(half).plus(half.left().times(away)), away > 0);
            } else if (i < corners) {
                pen.lineTo(to);
            }
        }
        return pen.close();
    }

    @Test
    void aCircleIsACircle() {
        Path circle = Path.circle(new Vec2(3, 4), 5);
        assertThat(circle.area()).isCloseTo(Math.PI * 25, within(1e-9));
        assertThat(circle.length()).isCloseTo(Math.PI * 10, within(1e-9));
        assertThat(circle.centroid().distance(new Vec2(3, 4))).isLessThan(1e-9);
        assertThat(circle.bounds()).isEqualTo(new Bounds(-2, -1, 8, 9));
    }

    @Test
    void chordsKeepToTheirTolerance() {
        for (double tolerance : new double[] {1, 0.1, 0.01}) {
            List<Vec2> points = Path.circle(Vec2.ZERO, 100).points(tolerance);
            for (int i = 1; i < points.size(); i++) {
                Vec2 middle = points.get(i - 1).plus(points.get(i)).times(0.5);
                assertThat(100 - middle.norm()).isLessThanOrEqualTo(tolerance * (1 + 1e-9));
            }
        }
    }

    @Test
    void segmentsMustJoin() {
        assertThatThrownBy(() -> new Path(List.of(new Segment.Line(Vec2.ZERO, new Vec2(1, 0)), new Segment.Line(new Vec2(2, 0), new Vec2(3, 0))), false))
                .isInstanceOf(IllegalArgumentException.class).hasMessageStartingWith("segment 1 does not begin where the one before it ends");
    }
}

package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.capwright.geom.Segment.Arc;
import org.capwright.geom.Segment.Line;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes whose area, centroid and length are in every book of formulas. */
class ClosedFormsTest {
    private static final double R = 240;
    private static final Vec2 CENTER = new Vec2(130, -75);

    @Test
    void circle() {
        Path circle = Path.circle(CENTER, R);
        assertThat(circle.area()).isCloseTo(Math.PI * R * R, within(1e-9));
        assertThat(circle.length()).isCloseTo(2 * Math.PI * R, within(1e-10));
        assertThat(circle.centroid().distance(CENTER)).isLessThan(1e-10);
        Bounds bounds = circle.bounds();
        assertThat(bounds.width()).isCloseTo(2 * R, within(1e-10));
        assertThat(bounds.height()).isCloseTo(2 * R, within(1e-10));
        assertThat(bounds.center().distance(CENTER)).isLessThan(1e-10);
    }

    /** Circular segment of turn a: area R^2 (a - sin a)/2, centroid 4 R sin^3(a/2) / (3 (a - sin a)) from the centre. */
    @ParameterizedTest
    @ValueSource(doubles = {10, 60, 90, 180, 200, 300, 350})
    void segment(double degrees) {
        double a = Math.toRadians(degrees);
        double axis = 0.4;
        Arc arc = new Arc(CENTER, R, axis - a / 2, a);
        Path segment = new Path(List.of(arc, new Line(arc.to(), arc.from())), true);
        double area = R * R * (a - Math.sin(a)) / 2;
        double out = 4 * R * Math.pow(Math.sin(a / 2), 3) / (3 * (a - Math.sin(a)));
        assertThat(segment.area()).isCloseTo(area, within(1e-12 * R * R * 10));
        assertThat(segment.centroid().distance(CENTER.plus(Vec2.polar(out, axis)))).isLessThan(1e-6);
        assertThat(segment.length()).isCloseTo(R * a + 2 * R * Math.sin(a / 2), within(1e-10));
        assertThat(segment.reversed().area()).isCloseTo(-area, within(1e-12 * R * R * 10));
        assertThat(segment.reversed().centroid().distance(segment.centroid())).isLessThan(1e-6);
    }

    /** Ring sector, the inner arc run backwards: area a (R^2 - r^2)/2, centroid 4 sin(a/2) (R^3 - r^3) / (3 a (R^2 - r^2)). */
    @ParameterizedTest
    @ValueSource(doubles = {15, 90, 180, 270, 355})
    void ringSector(double degrees) {
        double a = Math.toRadians(degrees);
        double r = 100;
        Path sector = PathBuilder.from(CENTER.plus(new Vec2(r, 0))).lineTo(CENTER.plus(new Vec2(R, 0)))
                .arcTo(CENTER.plus(Vec2.polar(R, a)), CENTER, true).lineTo(CENTER.plus(Vec2.polar(r, a)))
                .arcTo(CENTER.plus(new Vec2(r, 0)), CENTER, false).close();
        double out = 4 * Math.sin(a / 2) * (R * R * R - r * r * r) / (3 * a * (R * R - r * r));
        assertThat(sector.area()).isCloseTo(a * (R * R - r * r) / 2, within(1e-8));
        assertThat(sector.centroid().distance(CENTER.plus(Vec2.polar(out, a / 2)))).isLessThan(1e-8);
        assertThat(sector.length()).isCloseTo(a * (R + r) + 2 * (R - r), within(1e-9));
    }

    @Test
    void rectangleAndTriangle() {
        Path rectangle = Path.polyline(List.of(new Vec2(1, 2), new Vec2(7, 2), new Vec2(7, 4), new Vec2(1, 4)), true);
        assertThat(rectangle.area()).isEqualTo(12);
        assertThat(rectangle.centroid().distance(new Vec2(4, 3))).isLessThan(1e-12);
        assertThat(rectangle.length()).isEqualTo(16);
        Path triangle = Path.polyline(List.of(new Vec2(0, 0), new Vec2(0, 6), new Vec2(3, 0)), true);
        assertThat(triangle.area()).isEqualTo(-9);
        assertThat(triangle.centroid().distance(new Vec2(1, 2))).isLessThan(1e-12);
    }

    /** Slot with half-round ends: a rectangle and a circle. */
    @Test
    void slot() {
        Path slot = PathBuilder.from(new Vec2(-20, -5)).lineTo(new Vec2(20, -5)).arcTo(new Vec2(20, 5), new Vec2(20, 0), true)
                .lineTo(new Vec2(-20, 5)).arcTo(new Vec2(-20, -5), new Vec2(-20, 0), true).close();
        assertThat(slot.area()).isCloseTo(400 + 25 * Math.PI, within(1e-11));
        assertThat(slot.centroid().norm()).isLessThan(1e-12);
        assertThat(slot.length()).isCloseTo(80 + 10 * Math.PI, within(1e-12));
        assertThat(slot.bounds().width()).isCloseTo(50, within(1e-12));
    }
}

package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.capwright.geom.Segment.Arc;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The straight lines that stand for arcs keep to their tolerance, and there are no more of them than that takes. */
class ChordToleranceTest {
    private static final long SEED = 71;
    private static final double ROUNDING_MM = 1e-9;

    @ParameterizedTest
    @ValueSource(doubles = {50, 1, 0.1, 0.01, 0.001, 0.00001})
    void everyPointOfTheArcIsWithinTheTolerance(double tolerance) {
        Random random = new Random(SEED);
        for (int i = 0; i < 40; i++) {
            Arc arc = new Arc(new Vec2(random.nextDouble(-100, 100), 40), random.nextDouble(0.5, 400), random.nextDouble(-7, 7),
                    random.nextDouble(-2, 2) * Math.PI);
            List<Vec2> points = new Path(List.of(arc), false).points(tolerance);
            String what = "seed " + SEED + ", case " + i + ": " + arc;
            assertThat(points.get(0).distance(arc.from())).as(what).isLessThan(ROUNDING_MM);
            assertThat(points.get(points.size() - 1).distance(arc.to())).as(what).isLessThan(ROUNDING_MM);
            assertThat(widest(arc, points)).as(what).isLessThanOrEqualTo(tolerance + ROUNDING_MM);
        }
    }

    /** Distance from points of the arc, many to a chord, to the chord that stands for them. */
    private static double widest(Arc arc, List<Vec2> points) {
        int chords = points.size() - 1;
        double widest = 0;
        for (int i = 0; i < chords; i++) {
            for (double share : new double[] {0.1, 0.25, 0.5, 0.75}) {
                Vec2 on = arc.pointAt((i + share) / chords);
                widest = Math.max(widest, distance(on, points.get(i), points.get(i + 1)));
            }
        }
        return widest;
    }

    private static double distance(Vec2 point, Vec2 from, Vec2 to) {
        Vec2 along = to.minus(from);
        double share = Math.max(0, Math.min(1, point.minus(from).dot(along) / along.dot(along)));
        return point.distance(from.plus(along.times(share)));
    }

    /** One chord fewer would not do. */
    @Test
    void noMoreChordsThanItTakes() {
        for (double tolerance : new double[] {1, 0.1, 0.01, 0.001}) {
            int chords = Path.circle(Vec2.ZERO, 300).points(tolerance).size() - 1;
            assertThat(300 * (1 - Math.cos(Math.PI / chords))).isLessThanOrEqualTo(tolerance);
            assertThat(300 * (1 - Math.cos(Math.PI / (chords - 1)))).isGreaterThan(tolerance);
        }
    }

    @Test
    void linesAreTheirEnds() {
        List<Vec2> corners = List.of(new Vec2(0, 0), new Vec2(7, 0), new Vec2(7, 3));
        assertThat(Path.polyline(corners, false).points(0.1)).containsExactlyElementsOf(corners);
        assertThat(Path.polyline(corners, true).points(0.1)).containsExactly(corners.get(0), corners.get(1), corners.get(2),
                corners.get(0));
    }

    @Test
    void aClosedPathEndsOnItsFirstPointToTheLastBit() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            Path path = i == 0 ? Path.circle(new Vec2(1, 2), 3) : RandomShapes.next(random);
            List<Vec2> points = path.points(0.01);
            assertThat(points.get(points.size() - 1)).as("seed %d, case %d", SEED, i).isEqualTo(points.get(0));
        }
    }

    /** A tolerance wider than the circle still leaves two chords. */
    @Test
    void aWideToleranceLeavesAFigure() {
        List<Vec2> points = Path.circle(Vec2.ZERO, 2).points(100);
        assertThat(points).hasSizeGreaterThanOrEqualTo(3);
        assertThat(points.get(1).norm()).isCloseTo(2, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN})
    void aToleranceIsOverNothing(double tolerance) {
        Path circle = Path.circle(Vec2.ZERO, 10);
        assertThatThrownBy(() -> circle.points(tolerance)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the tolerance must be over 0 mm, not " + tolerance);
    }
}

package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.capwright.geom.Segment.Arc;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single arcs against closed forms, and against many points on them. */
class ArcTest {
    private static final long SEED = 53;
    private static final int CASES = 300;
    private static final int STEPS = 4000;

    /** Quarter arcs and more, about (10, 20) with radius 5; angles in degrees. */
    @ParameterizedTest
    @CsvSource({"0, 90, 10, 20, 15, 25", "90, 90, 5, 20, 10, 25", "0, -90, 10, 15, 15, 20", "180, -90, 5, 20, 10, 25",
        "-45, 90, 13.535533905932738, 16.464466094067262, 15, 23.535533905932738", "45, 270, 5, 15, 13.535533905932738, 25",
        "0, 360, 5, 15, 15, 25", "77, 360, 5, 15, 15, 25", "77, -360, 5, 15, 15, 25", "810, 90, 5, 20, 10, 25"})
    void bounds(double start, double sweep, double minX, double minY, double maxX, double maxY) {
        Bounds bounds = new Arc(new Vec2(10, 20), 5, Math.toRadians(start), Math.toRadians(sweep)).bounds();
        assertThat(bounds.minX()).isCloseTo(minX, within(1e-12));
        assertThat(bounds.minY()).isCloseTo(minY, within(1e-12));
        assertThat(bounds.maxX()).isCloseTo(maxX, within(1e-12));
        assertThat(bounds.maxY()).isCloseTo(maxY, within(1e-12));
    }

    /** No point outside; and the points reach each side to within the sagitta of a step, r (sweep/steps)^2 / 8 at most. */
    @Test
    void boundsAreTheSmallestRoundManyPoints() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            Arc arc = random(random);
            Bounds walked = new Bounds(arc.from().x(), arc.from().y(), arc.from().x(), arc.from().y());
            for (int k = 0; k <= STEPS; k++) {
                Vec2 point = arc.pointAt((double) k / STEPS);
                walked = walked.union(new Bounds(point.x(), point.y(), point.x(), point.y()));
            }
            String what = "seed " + SEED + ", case " + i + ": " + arc;
            double step = arc.radius() * Math.pow(arc.sweepRad() / STEPS, 2) + 1e-9;
            assertThat(arc.bounds().minX()).as(what).isBetween(walked.minX() - step, walked.minX() + 1e-9);
            assertThat(arc.bounds().minY()).as(what).isBetween(walked.minY() - step, walked.minY() + 1e-9);
            assertThat(arc.bounds().maxX()).as(what).isBetween(walked.maxX() - 1e-9, walked.maxX() + step);
            assertThat(arc.bounds().maxY()).as(what).isBetween(walked.maxY() - 1e-9, walked.maxY() + step);
        }
    }

    @Test
    void reversedItIsTheSamePointsTheOtherWay() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            Arc arc = random(random);
            String what = "seed " + SEED + ", case " + i + ": " + arc;
            assertThat(arc.reversed().from().distance(arc.to())).as(what).isLessThan(1e-9);
            assertThat(arc.reversed().to().distance(arc.from())).as(what).isLessThan(1e-9);
            assertThat(arc.reversed().pointAt(0.3).distance(arc.pointAt(0.7))).as(what).isLessThan(1e-9);
            assertThat(arc.reversed().length()).as(what).isCloseTo(arc.length(), within(1e-9));
        }
    }

    @Test
    void movedAndTurnedAllItsPointsGoAlong() {
        Random random = new Random(SEED);
        Vec2 by = new Vec2(-40, 12.5);
        for (int i = 0; i < CASES; i++) {
            Arc arc = random(random);
            String what = "seed " + SEED + ", case " + i + ": " + arc;
            for (double t : new double[] {0, 0.25, 0.9, 1}) {
                Vec2 point = arc.pointAt(t);
                assertThat(arc.translated(by).pointAt(t).distance(point.plus(by))).as(what).isLessThan(1e-9);
                assertThat(arc.rotated(2.2).pointAt(t).distance(point.rotated(2.2))).as(what).isLessThan(1e-9);
            }
        }
    }

    @Test
    void lengthIsRadiusTimesTurn() {
        assertThat(new Arc(Vec2.ZERO, 10, 1, Math.PI / 2).length()).isCloseTo(5 * Math.PI, within(1e-12));
        assertThat(new Arc(Vec2.ZERO, 10, 1, -Math.PI / 2).length()).isCloseTo(5 * Math.PI, within(1e-12));
    }

    private static Arc random(Random random) {
        Vec2 center = new Vec2(random.nextDouble(-200, 200), random.nextDouble(-200, 200));
        return new Arc(center, random.nextDouble(0.5, 300), random.nextDouble(-7, 7), random.nextDouble(-2, 2) * Math.PI);
    }
}

package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.capwright.geom.Segment.Arc;
import org.capwright.geom.Segment.Line;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PathBuilderTest {
    private static final Vec2 EAST = new Vec2(5, 0);
    private static final Vec2 NORTH = new Vec2(0, 5);
    private static final Vec2 WEST = new Vec2(-5, 0);

    @Test
    void closingDrawsTheLastLine() {
        Path path = PathBuilder.from(Vec2.ZERO).lineTo(EAST).lineTo(NORTH).close();
        assertThat(path.closed()).isTrue();
        assertThat(path.segments()).containsExactly(new Line(Vec2.ZERO, EAST), new Line(EAST, NORTH), new Line(NORTH, Vec2.ZERO));
    }

    @Test
    void closingWhereItBeganDrawsNoLine() {
        Path path = PathBuilder.from(Vec2.ZERO).lineTo(EAST).lineTo(NORTH).lineTo(Vec2.ZERO).close();
        assertThat(path.segments()).hasSize(3);
    }

    @Test
    void anOpenPathStaysOpen() {
        Path path = PathBuilder.from(Vec2.ZERO).lineTo(EAST).lineTo(EAST).lineTo(NORTH).open();
        assertThat(path.closed()).isFalse();
        assertThat(path.segments()).containsExactly(new Line(Vec2.ZERO, EAST), new Line(EAST, NORTH));
    }

    /** From (5, 0) round the origin to the direction given: the turn, counterclockwise and clockwise. */
    @ParameterizedTest
    @CsvSource({"90, 90, -270", "180, 180, -180", "-90, 270, -90", "179, 179, -181", "-179, 181, -179", "359, 359, -1", "0.001, 0.001, -359.999"})
    void arcsTurnTheWayTheyAreTold(double direction, double counterclockwise, double clockwise) {
        Vec2 to = Vec2.polar(5, Math.toRadians(direction));
        assertThat(degrees(PathBuilder.from(EAST).arcTo(to, Vec2.ZERO, true).open())).isCloseTo(counterclockwise, within(1e-9));
        assertThat(degrees(PathBuilder.from(EAST).arcTo(to, Vec2.ZERO, false).open())).isCloseTo(clockwise, within(1e-9));
    }

    /** Across the direction of -x, where the measure of angles jumps from pi to -pi. */
    @Test
    void arcsPassTheJumpOfTheAngles() {
        Vec2 above = Vec2.polar(5, Math.toRadians(170));
        Vec2 below = Vec2.polar(5, Math.toRadians(-170));
        assertThat(degrees(PathBuilder.from(above).arcTo(below, Vec2.ZERO, true).open())).isCloseTo(20, within(1e-9));
        assertThat(degrees(PathBuilder.from(below).arcTo(above, Vec2.ZERO, false).open())).isCloseTo(-20, within(1e-9));
        assertThat(degrees(PathBuilder.from(above).arcTo(below, Vec2.ZERO, false).open())).isCloseTo(-340, within(1e-9));
    }

    @Test
    void arcsEndWhereTheyAreTold() {
        Random random = new Random(61);
        for (int i = 0; i < 500; i++) {
            Vec2 center = new Vec2(random.nextDouble(-300, 300), random.nextDouble(-300, 300));
            double radius = random.nextDouble(0.5, 500);
            Vec2 from = center.plus(Vec2.polar(radius, random.nextDouble(-7, 7)));
            Vec2 to = center.plus(Vec2.polar(radius, random.nextDouble(-7, 7)));
            Path path = PathBuilder.from(from).arcTo(to, center, random.nextBoolean()).open();
            assertThat(path.segments().get(0).from().distance(from)).as("seed 61, case %d", i).isLessThan(1e-9);
            assertThat(path.segments().get(0).to().distance(to)).as("seed 61, case %d", i).isLessThan(1e-9);
        }
    }

    @Test
    void twoHalvesAreACircle() {
        Path path = PathBuilder.from(EAST).arcTo(WEST, Vec2.ZERO, true).arcTo(EAST, Vec2.ZERO, true).close();
        assertThat(path.segments()).hasSize(2);
        assertThat(path.area()).isCloseTo(25 * Math.PI, within(1e-12));
    }

    /** As with lines: an arc to where the pen is has no length. Rounding must not make a full circle of it. */
    @ParameterizedTest
    @CsvSource({"0, true", "0, false", "1e-11, true", "1e-11, false", "-1e-11, true", "-1e-11, false"})
    void anArcToThePenIsNone(double offMm, boolean counterclockwise) {
        Path path = PathBuilder.from(NORTH).lineTo(EAST).arcTo(new Vec2(5, offMm), Vec2.ZERO, counterclockwise).open();
        assertThat(path.segments()).containsExactly(new Line(NORTH, EAST));
    }

    @ParameterizedTest
    @CsvSource({"0, 5.001", "0, 4.999", "0, 0", "NaN, 0"})
    void bothEndsAreEquallyFarFromTheCentre(double x, double y) {
        PathBuilder pen = PathBuilder.from(EAST);
        Vec2 to = new Vec2(x, y);
        assertThatThrownBy(() -> pen.arcTo(to, Vec2.ZERO, true)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an arc from " + EAST + " to " + to + " can't have its centre at " + Vec2.ZERO
                        + ": its ends must be equally far from it");
    }

    @Test
    void nothingDrawnIsNoPath() {
        assertThatThrownBy(() -> PathBuilder.from(EAST).open()).hasMessage("a path needs a segment");
        assertThatThrownBy(() -> PathBuilder.from(EAST).close()).hasMessage("a path needs a segment");
    }

    private static double degrees(Path path) {
        return Math.toDegrees(((Arc) path.segments().get(0)).sweepRad());
    }
}

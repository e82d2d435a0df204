package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Vec2Test {
    private static final Vec2 A = new Vec2(3, 4);
    private static final Vec2 B = new Vec2(-1, 2);

    @Test
    void arithmetic() {
        assertThat(A.plus(B)).isEqualTo(new Vec2(2, 6));
        assertThat(A.minus(B)).isEqualTo(new Vec2(4, 2));
        assertThat(A.times(-2)).isEqualTo(new Vec2(-6, -8));
        assertThat(A.plus(Vec2.ZERO)).isEqualTo(A);
    }

    @Test
    void products() {
        assertThat(A.dot(B)).isEqualTo(5);
        assertThat(A.cross(B)).isEqualTo(10);
        assertThat(B.cross(A)).isEqualTo(-10);
        assertThat(A.dot(A.left())).isZero();
        assertThat(A.cross(A.left())).isEqualTo(25);
    }

    @Test
    void lengths() {
        assertThat(A.norm()).isEqualTo(5);
        assertThat(A.distance(B)).isCloseTo(Math.sqrt(20), within(1e-15));
        assertThat(new Vec2(3e200, 4e200).norm()).isCloseTo(5e200, within(1e186));
    }

    /** Directions count from +x towards +y, in (-pi, pi]. */
    @ParameterizedTest
    @CsvSource({"1, 0, 0", "1, 1, 45", "0, 1, 90", "-1, 0, 180", "0, -1, -90", "1, -1, -45"})
    void directions(double x, double y, double degrees) {
        Vec2 vector = new Vec2(x, y);
        assertThat(Math.toDegrees(vector.direction())).isCloseTo(degrees, within(1e-12));
        assertThat(Vec2.polar(vector.norm(), Math.toRadians(degrees)).distance(vector)).isLessThan(1e-15);
    }

    @Test
    void turning() {
        assertThat(new Vec2(1, 0).rotated(Math.PI / 2).distance(new Vec2(0, 1))).isLessThan(1e-15);
        assertThat(A.rotated(Math.PI / 2).distance(A.left())).isLessThan(1e-14);
        assertThat(A.rotated(0.7).rotated(-0.7).distance(A)).isLessThan(1e-14);
        assertThat(A.rotated(1.1).norm()).isCloseTo(5, within(1e-14));
    }
}

package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundsTest {
    private static final Bounds BOX = new Bounds(-1, 2, 5, 10);

    @Test
    void ofPoints() {
        assertThat(Bounds.of(List.of(new Vec2(5, 2), new Vec2(-1, 3), new Vec2(0, 10)))).isEqualTo(BOX);
        assertThat(Bounds.of(List.of(new Vec2(5, 2)))).isEqualTo(new Bounds(5, 2, 5, 2));
        assertThatThrownBy(() -> Bounds.of(List.of())).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no points, no bounds");
    }

    @Test
    void sizeAndMiddle() {
        assertThat(BOX.width()).isEqualTo(6);
        assertThat(BOX.height()).isEqualTo(8);
        assertThat(BOX.center()).isEqualTo(new Vec2(2, 6));
    }

    @Test
    void growing() {
        assertThat(BOX.grown(1)).isEqualTo(new Bounds(-2, 1, 6, 11));
        assertThat(BOX.grown(-1)).isEqualTo(new Bounds(0, 3, 4, 9));
        assertThat(BOX.union(new Bounds(0, 0, 1, 1))).isEqualTo(new Bounds(-1, 0, 5, 10));
        assertThat(BOX.union(new Bounds(4, 9, 6, 12))).isEqualTo(new Bounds(-1, 2, 6, 12));
    }

    @ParameterizedTest
    @CsvSource({"0, 3, true", "-1, 2, true", "5, 10, true", "5.001, 5, false", "-1.001, 5, false", "0, 1.999, false", "0, 10.001, false"})
    void containing(double x, double y, boolean inside) {
        assertThat(BOX.contains(new Vec2(x, y))).isEqualTo(inside);
    }

    @ParameterizedTest
    @CsvSource({"0, 3, 1, 4, true", "-9, -9, 9, 99, true", "5, 10, 6, 11, true", "-3, 5, -1, 6, true", "5.001, 3, 6, 4, false",
        "-3, 3, -1.001, 4, false", "0, 0, 1, 1.999, false", "0, 10.001, 1, 11, false"})
    void touching(double minX, double minY, double maxX, double maxY, boolean touching) {
        Bounds other = new Bounds(minX, minY, maxX, maxY);
        assertThat(BOX.intersects(other)).isEqualTo(touching);
        assertThat(other.intersects(BOX)).isEqualTo(touching);
    }
}

package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Segment.Arc;
import org.capwright.geom.Segment.Line;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a path takes and what it refuses. */
class PathTest {
    private static final Line FIRST = new Line(Vec2.ZERO, new Vec2(1, 0));

    @Test
    void segmentsMustJoin() {
        Line apart = new Line(new Vec2(1.00001, 0), new Vec2(3, 0));
        assertThatThrownBy(() -> new Path(List.of(FIRST, apart), false)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("segment 1 does not begin where the one before it ends: Vec2[x=1.0, y=0.0], Vec2[x=1.00001, y=0.0]");
        Line joined = new Line(new Vec2(1 + 1e-7, 0), new Vec2(3, 0));
        assertThat(new Path(List.of(FIRST, joined), false).length()).isCloseTo(3, within(1e-6));
    }

    @Test
    void aClosedPathReturnsToItsBeginning() {
        assertThatThrownBy(() -> new Path(List.of(FIRST), true)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("segment 0 does not begin where the one before it ends: Vec2[x=1.0, y=0.0], Vec2[x=0.0, y=0.0]");
        assertThat(new Path(List.of(FIRST), false).length()).isEqualTo(1);
    }

    @Test
    void anArcMustJoinToo() {
        Arc arc = new Arc(new Vec2(1, 1), 1, -Math.PI / 2, Math.PI / 2);
        assertThat(new Path(List.of(FIRST, arc), false).length()).isCloseTo(1 + Math.PI / 2, within(1e-12));
        assertThatThrownBy(() -> new Path(List.of(FIRST, arc.reversed()), false)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("segment 1 does not begin where the one before it ends");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void aPointThatIsNowhereJoinsNothing(double x) {
        Line nowhere = new Line(new Vec2(x, 0), new Vec2(3, 0));
        assertThatThrownBy(() -> new Path(List.of(FIRST, nowhere), false)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("segment 1 does not begin where the one before it ends");
    }

    @Test
    void aPathNeedsASegment() {
        assertThatThrownBy(() -> new Path(List.of(), false)).hasMessage("a path needs a segment");
        assertThatThrownBy(() -> new Path(List.of(), true)).hasMessage("a path needs a segment");
    }

    @Test
    void aPolylineNeedsTwoPoints() {
        for (boolean closed : new boolean[] {true, false}) {
            assertThatThrownBy(() -> Path.polyline(List.of(), closed)).hasMessage("a polyline needs two points, not 0");
            assertThatThrownBy(() -> Path.polyline(List.of(Vec2.ZERO), closed)).hasMessage("a polyline needs two points, not 1");
        }
    }

    @Test
    void onlyAClosedPathHasAnArea() {
        Path open = Path.polyline(List.of(Vec2.ZERO, new Vec2(4, 0), new Vec2(4, 3)), false);
        assertThatThrownBy(open::area).isInstanceOf(IllegalStateException.class)
                .hasMessage("an open path has no area");
        assertThatThrownBy(open::centroid).isInstanceOf(IllegalStateException.class)
                .hasMessage("an open path has no area");
        assertThat(open.bounds()).isEqualTo(new Bounds(0, 0, 4, 3));
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-5, 1", "NaN, 1", "Infinity, 1", "5, NaN", "5, 6.2832", "5, -6.2832"})
    void anArcHasARadiusAndAtMostAFullTurn(double radius, double sweep) {
        assertThatThrownBy(() -> new Arc(Vec2.ZERO, radius, 0, sweep)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an arc needs a radius over 0 mm and at most a full turn, not " + radius + " mm and " + sweep + " rad");
    }

    @Test
    void reversedTwiceIsTheSame() {
        Path path = PathBuilder.from(Vec2.ZERO).lineTo(new Vec2(10, 0)).arcTo(new Vec2(10, 8), new Vec2(10, 4), true)
                .lineTo(new Vec2(0, 8)).close();
        Path back = path.reversed();
        assertThat(back.segments().get(0).from()).isEqualTo(Vec2.ZERO);
        assertThat(back.segments().get(0).to()).isEqualTo(new Vec2(0, 8));
        assertThat(back.closed()).isTrue();
        assertThat(back.reversed().length()).isCloseTo(path.length(), within(1e-12));
        assertThat(back.reversed().segments().get(0)).isEqualTo(path.segments().get(0));
    }

    @Test
    void aPathKeepsItsOwnSegments() {
        List<Segment> segments = new ArrayList<>(List.of(FIRST));
        Path path = new Path(segments, false);
        segments.clear();
        assertThat(path.segments()).containsExactly(FIRST);
    }
}

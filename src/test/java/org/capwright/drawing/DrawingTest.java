package org.capwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.junit.jupiter.api.Test;

class DrawingTest {
    private static final Path OUTLINE =
            Path.polyline(List.of(Vec2.ZERO, new Vec2(300, 0), new Vec2(300, 100), new Vec2(0, 100)), true);
    private static final Path FOLD = Path.line(new Vec2(0, 20), new Vec2(300, 20));
    private static final Path HOLE = Path.circle(new Vec2(50, 50), 4);
    private static final Label WORDS = new Label(new Vec2(900, 900), "SLEEVE", 6, 0, Label.Anchor.MIDDLE);

    @Test
    void theBuilderKeepsEverythingInOrder() {
        Station station = Station.bottom(50, 50, "hole");
        Drawing drawing = new Drawing.Builder("sleeve").cut(OUTLINE).bend(FOLD).cut(HOLE).label(WORDS).station(station).build();
        assertThat(drawing.name()).isEqualTo("sleeve");
        assertThat(drawing.strokes()).containsExactly(new Stroke(Layer.CUT, OUTLINE), new Stroke(Layer.BEND, FOLD),
                new Stroke(Layer.CUT, HOLE));
        assertThat(drawing.labels()).containsExactly(WORDS);
        assertThat(drawing.stations()).containsExactly(station);
    }

    @Test
    void aLayerHasItsOwnPathsAlone() {
        Drawing drawing = new Drawing.Builder("leaf").mark(HOLE).cut(OUTLINE).bend(FOLD).cut(HOLE).build();
        assertThat(drawing.paths(Layer.CUT)).containsExactly(OUTLINE, HOLE);
        assertThat(drawing.paths(Layer.BEND)).containsExactly(FOLD);
        assertThat(drawing.paths(Layer.MARK)).containsExactly(HOLE);
        assertThat(drawing.paths(Layer.TEXT)).isEmpty();
    }

    @Test
    void boundsAreOfTheLinesAlone() {
        Drawing drawing = new Drawing.Builder("leaf").cut(OUTLINE).mark(Path.line(new Vec2(-5, 50), new Vec2(10, 120)))
                .label(WORDS).station(Station.left(-500, 900, "far away")).build();
        assertThat(drawing.bounds()).isEqualTo(new Bounds(-5, 0, 300, 120));
    }

    /** An arc bulges past its ends: a quarter of it would be lost to a box round corners. */
    @Test
    void boundsReachRoundArcs() {
        Path half = PathBuilder.from(new Vec2(100, 0)).arcTo(new Vec2(-100, 0), Vec2.ZERO, true).close();
        Bounds bounds = new Drawing.Builder("half").cut(half).build().bounds();
        assertThat(bounds.maxY()).isCloseTo(100, within(1e-12));
        assertThat(bounds.minY()).isCloseTo(0, within(1e-12));
        assertThat(bounds.width()).isCloseTo(200, within(1e-12));
    }

    @Test
    void aCrossIsTwoMarks() {
        Drawing drawing = new Drawing.Builder("cross").cross(new Vec2(10, 20), 3).build();
        assertThat(drawing.paths(Layer.MARK)).containsExactly(Path.line(new Vec2(7, 20), new Vec2(13, 20)),
                Path.line(new Vec2(10, 17), new Vec2(10, 23)));
        assertThat(drawing.bounds()).isEqualTo(new Bounds(7, 17, 13, 23));
    }

    @Test
    void aDrawingNeedsALine() {
        Drawing.Builder empty = new Drawing.Builder("nothing").label(WORDS);
        assertThatThrownBy(empty::build).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the drawing \"nothing\" needs a line");
    }

    @Test
    void whatIsBuiltStaysAsItIs() {
        Drawing.Builder builder = new Drawing.Builder("leaf").cut(OUTLINE);
        Drawing before = builder.build();
        builder.cut(HOLE).label(WORDS);
        assertThat(before.strokes()).hasSize(1);
        assertThat(before.labels()).isEmpty();
        assertThat(builder.build().strokes()).hasSize(2);
    }

    @Test
    void aDrawingKeepsItsOwnCopies() {
        List<Stroke> strokes = new ArrayList<>(List.of(new Stroke(Layer.CUT, OUTLINE)));
        List<Label> labels = new ArrayList<>(List.of(WORDS));
        Drawing drawing = new Drawing("leaf", strokes, labels, List.of());
        strokes.clear();
        labels.clear();
        assertThat(drawing.strokes()).hasSize(1);
        assertThat(drawing.labels()).hasSize(1);
        assertThatThrownBy(() -> drawing.strokes().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void stationsKnowTheirEdge() {
        assertThat(Station.bottom(12, 34, "hole")).isEqualTo(new Station(Station.Side.BOTTOM, 12, 34, "hole"));
        assertThat(Station.left(12, 34, "hole")).isEqualTo(new Station(Station.Side.LEFT, 12, 34, "hole"));
    }
}

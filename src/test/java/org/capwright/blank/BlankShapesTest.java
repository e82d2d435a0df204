package org.capwright.blank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.capwright.drawing.Layer;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Outlines, holes, areas and centroids of blanks against JTS, for the kiln job and for random caps. */
class BlankShapesTest {
    private static final long SEED = 20_260;
    private static final int CAPS = 120;

    @Test
    void kiln() {
        check("kiln", Cap.solve(Jobs.kiln()));
    }

    @Test
    void randomCaps() {
        for (RandomCaps.Drawn drawn : RandomCaps.of(SEED, CAPS)) {
            check(drawn.toString(), drawn.cap());
        }
    }

    private static void check(String what, Cap cap) {
        for (Blank blank : Blanks.of(cap)) {
            String which = blank.id() + " of " + what;
            Polygon outline = outline(blank, which);
            holes(blank, outline, which);
            lines(blank, outline, which);
            if (blank.id().startsWith("leaf")) {
                marks(blank, outline, which);
            }
        }
    }

    private static Polygon outline(Blank blank, String which) {
        Path path = blank.outline();
        Polygon outline = Polygons.of(path);
        assertThat(path.closed()).as("closed: " + which).isTrue();
        assertThat(new IsValidOp(outline).getValidationError()).as("simple: " + which).isNull();
        assertThat(outline.getArea()).as("area: " + which).isPositive();
        assertThat(Math.abs(path.area())).as("area: " + which).isCloseTo(outline.getArea(), within(5e-6 * outline.getArea()));
        Vec2 centroid = path.centroid();
        assertThat(centroid.x()).as("centroid x: " + which).isCloseTo(outline.getCentroid().getX(), within(3e-3));
        assertThat(centroid.y()).as("centroid y: " + which).isCloseTo(outline.getCentroid().getY(), within(3e-3));
        return outline;
    }

    private static void holes(Blank blank, Polygon outline, String which) {
        double area = outline.getArea();
        Polygon edge = Polygons.coarse(blank.outline());
        List<Polygon> seen = new ArrayList<>();
        for (Path hole : blank.holes()) {
            Polygon polygon = Polygons.coarse(hole);
            String named = "hole " + polygon.getEnvelopeInternal() + ": " + which;
            assertThat(hole.closed() && polygon.isValid()).as(named).isTrue();
            assertThat(edge.contains(polygon)).as("inside outline: " + named).isTrue();
            assertThat(polygon.distance(edge.getBoundary())).as("to the edge: " + named).isGreaterThan(0.5);
            for (Polygon other : seen) {
                assertThat(polygon.isWithinDistance(other, 0.5)).as("near another: " + named).isFalse();
            }
            seen.add(polygon);
            area -= Polygons.of(hole).getArea();
        }
        assertThat(blank.areaMm2()).as("area less holes: " + which).isCloseTo(area, within(5e-6 * outline.getArea()));
        assertThat(blank.massKg()).as("mass: " + which)
                .isCloseTo(area * blank.sheet().thicknessMm() * 1e-9 * blank.sheet().metal().densityKgPerM3(), within(1e-5 * blank.massKg()));
    }

    /** Marks of a leaf lie on its blank; the arms of a cross may reach out. */
    private static void marks(Blank blank, Polygon outline, String which) {
        for (Path mark : blank.drawing().paths(Layer.MARK)) {
            Point middle = Polygons.line(mark).getCentroid();
            assertThat(outline.distance(middle)).as("mark at " + middle + ": " + which).isLessThan(1e-3);
        }
    }

    /** Bend lines begin and end on the blank; those of leaves in the middles of relief holes. */
    private static void lines(Blank blank, Polygon outline, String which) {
        double out = blank.id().startsWith("leaf") ? 25.4 / 4 : 1e-6;
        for (Path bend : blank.drawing().paths(Layer.BEND)) {
            LineString line = Polygons.line(bend);
            for (Point end : List.of(line.getStartPoint(), line.getEndPoint())) {
                assertThat(outline.distance(end)).as("bend line's end " + end + ": " + which).isLessThan(out);
            }
        }
    }
}

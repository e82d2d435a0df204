package org.capwright.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.capwright.geom.Segment.Arc;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Areas, centroids, lengths and bounds against JTS 1.20. JTS has no arcs, so each becomes chords here, by its centre, radius
 * and turn alone; twice as many chords leave a quarter of the difference.
 */
class PathAgainstJtsTest {
    private static final long SEED = 99;
    private static final int CASES = 300;
    private static final int CHORDS = 2000;
    private static final GeometryFactory JTS = new GeometryFactory();

    /** Chords of 250 / 2000 degrees fall short by under 1e-6 of the length and of the area between arc and chord. */
    @Test
    void measuresAgree() {
        Random random = new Random(SEED);
        int valid = 0;
        for (int i = 0; i < CASES; i++) {
            Path path = RandomShapes.next(random);
            Polygon polygon = polygon(path, CHORDS);
            if (polygon.isValid()) {
                valid++;
                agree("seed " + SEED + ", case " + i, path, polygon);
            }
        }
        assertThat(valid).as("shapes that do not cross themselves").isGreaterThan(CASES / 4);
    }

    /** JTS counts clockwise areas positive. */
    private static void agree(String what, Path path, Polygon polygon) {
        double length = polygon.getLength();
        double area = -Area.ofRingSigned(polygon.getCoordinates());
        assertThat(path.length()).as(what).isBetween(length - 1e-9, length * (1 + 1e-6));
        assertThat(path.area()).as(what).isCloseTo(area, within(1e-6 * length * length));
        Vec2 centroid = new Vec2(polygon.getCentroid().getX(), polygon.getCentroid().getY());
        assertThat(path.centroid().distance(centroid)).as(what).isLessThan(1e-5 * length);
        Envelope box = polygon.getEnvelopeInternal();
        Bounds bounds = path.bounds();
        assertThat(bounds.minX()).as(what).isBetween(box.getMinX() - 1e-6 * length, box.getMinX() + 1e-9);
        assertThat(bounds.minY()).as(what).isBetween(box.getMinY() - 1e-6 * length, box.getMinY() + 1e-9);
        assertThat(bounds.maxX()).as(what).isBetween(box.getMaxX() - 1e-9, box.getMaxX() + 1e-6 * length);
        assertThat(bounds.maxY()).as(what).isBetween(box.getMaxY() - 1e-9, box.getMaxY() + 1e-6 * length);
    }

    /** The remaining difference is the chords', not the path's: it shrinks with their square. */
    @Test
    void moreChordsComeCloser() {
        Random random = new Random(SEED);
        for (int i = 0; i < 50; i++) {
            Path path = RandomShapes.next(random);
            double coarse = path.length() - polygon(path, 100).getLength();
            double fine = path.length() - polygon(path, 200).getLength();
            assertThat(fine).as("seed %d, case %d", SEED, i).isCloseTo(coarse / 4, within(1e-3 * coarse + 1e-9));
        }
    }

    @Test
    void runTheOtherWayMovedAndTurned() {
        Random random = new Random(SEED);
        Vec2 by = new Vec2(70, -400);
        for (int i = 0; i < CASES; i++) {
            Path path = RandomShapes.next(random);
            if (!polygon(path, 200).isValid()) {
                continue;
            }
            String what = "seed " + SEED + ", case " + i;
            assertThat(path.reversed().area()).as(what).isCloseTo(-path.area(), within(1e-7));
            assertThat(path.reversed().centroid().distance(path.centroid())).as(what).isLessThan(1e-7);
            assertThat(path.translated(by).area()).as(what).isCloseTo(path.area(), within(1e-7));
            assertThat(path.translated(by).centroid().distance(path.centroid().plus(by))).as(what).isLessThan(1e-7);
            assertThat(path.rotated(1).area()).as(what).isCloseTo(path.area(), within(1e-7));
            assertThat(path.rotated(1).centroid().distance(path.centroid().rotated(1))).as(what).isLessThan(1e-7);
            assertThat(path.rotated(1).length()).as(what).isCloseTo(path.length(), within(1e-9));
        }
    }

    private static Polygon polygon(Path path, int chords) {
        List<Coordinate> corners = new ArrayList<>();
        for (Segment segment : path.segments()) {
            corners.add(new Coordinate(segment.from().x(), segment.from().y()));
            if (segment instanceof Arc arc) {
                for (int k = 1; k < chords; k++) {
                    double rad = arc.startRad() + arc.sweepRad() * k / chords;
                    corners.add(new Coordinate(arc.center().x() + arc.radius() * Math.cos(rad),
                            arc.center().y() + arc.radius() * Math.sin(rad)));
                }
            }
        }
        corners.add(corners.get(0));
        return JTS.createPolygon(corners.toArray(Coordinate[]::new));
    }
}

package org.capwright.stock.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

class GeometryOfNestingTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Against JTS: a place is inside the no-fit polygon where the two shapes overlap, outside where they are apart. */
    @Test
    void noFitPolygonsTellOverlap() {
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            Convex a = convex(random);
            Convex b = convex(random);
            Convex noFit = a.noFit(b);
            double x = 120 * random.nextDouble() - 60;
            double y = 120 * random.nextDouble() - 60;
            Polygon moved = (Polygon) AffineTransformation.translationInstance(x, y).transform(polygon(b));
            double overlap = polygon(a).intersection(moved).getArea();
            if (noFit.holds(x, y, 1e-6)) {
                assertThat(overlap).as("seed %d", seed).isPositive();
            } else {
                assertThat(overlap).as("seed %d", seed).isLessThan(1e-3);
            }
        }
    }

    /** A half disc with notched corners, an L and a comb: the parts do not overlap and make up the whole. */
    @Test
    void convexPartsMakeUpTheWhole() {
        for (Path path : List.of(halfDisc(), Path.polyline(List.of(new Vec2(0, 0), new Vec2(9, 0), new Vec2(9, 3),
                new Vec2(4, 3), new Vec2(4, 7),
                new Vec2(0, 7)), true), comb())) {
            Polygon whole = Cover.around(path, List.of());
            List<List<Vec2>> parts = ConvexParts.of(whole);
            double sum = parts.stream().map(Convex::of).mapToDouble(part -> polygon(part).getArea()).sum();
            assertThat(sum).isCloseTo(whole.getArea(), Offset.offset(1e-6));
        }
        assertThat(ConvexParts.of(Cover.around(Path.circle(Vec2.ZERO, 50), List.of()))).hasSize(1);
    }

    @Test
    void coversHoldTheirOutlines() {
        for (Path path : List.of(halfDisc(), Path.circle(new Vec2(3, 4), 500))) {
            Polygon fine = Cover.along(path, List.of(), 1e-4);
            assertThat(Cover.around(path, List.of()).buffer(1e-6).contains(fine)).isTrue();
            assertThat(Cover.grown(Cover.around(path, List.of()), 2).buffer(1e-3).contains(fine.buffer(2))).isTrue();
            assertThat(fine.buffer(2).buffer(1e-3).contains(Cover.within(path, List.of(), 2))).isTrue();
        }
    }

    /** A half disc and a disc need no more room than their own bounds. */
    @Test
    void coversKeepToTheBoundsOfTheirOutlines() {
        for (Path path : List.of(halfDisc(), Path.circle(new Vec2(3, 4), 500))) {
            Bounds bounds = path.bounds();
            Envelope cover = Cover.around(path, List.of()).getEnvelopeInternal();
            assertThat(cover.getMinX()).isCloseTo(bounds.minX(), Offset.offset(1e-6));
            assertThat(cover.getMaxX()).isCloseTo(bounds.maxX(), Offset.offset(1e-6));
            assertThat(cover.getMinY()).isCloseTo(bounds.minY(), Offset.offset(1e-6));
            assertThat(cover.getMaxY()).isCloseTo(bounds.maxY(), Offset.offset(1e-6));
        }
    }

    /** What lies in the covered hole lies in the true hole. */
    @Test
    void coversOfHolesLieWithinTheHoles() {
        Path ring = Path.circle(Vec2.ZERO, 100);
        Path hole = Path.circle(Vec2.ZERO, 60);
        Polygon cover = Cover.around(ring, List.of(hole));
        assertThat(cover.getNumInteriorRing()).isEqualTo(1);
        Polygon covered = FACTORY.createPolygon(cover.getInteriorRingN(0).getCoordinateSequence());
        assertThat(Cover.along(hole, List.of(), 1e-4).buffer(2e-4).contains(covered)).isTrue();
        double sum = ConvexParts.of(cover).stream().map(Convex::of).mapToDouble(part -> polygon(part).getArea()).sum();
        assertThat(sum).isCloseTo(cover.getArea(), Offset.offset(1e-6));
    }

    /** Against trying every pair of edges both ways. */
    @Test
    void theLargestRestIsTheLargest() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            List<Bounds> boxes = new ArrayList<>();
            for (int i = random.nextInt(6); i >= 0; i--) {
                double x = random.nextInt(80);
                double y = random.nextInt(40);
                boxes.add(new Bounds(x, y, x + 5 + random.nextInt(20), y + 5 + random.nextInt(10)));
            }
            double found = LargestRest.of(new Bounds(0, 0, 100, 50), boxes, 3).map(rest -> rest.width() * rest.height())
                    .orElse(0.0);
            assertThat(found).as("seed %d", seed).isEqualTo(largest(boxes));
        }
    }

    private static double largest(List<Bounds> boxes) {
        double best = 0;
        for (int left = 0; left < 100; left++) {
            for (int right = left + 3; right <= 100; right++) {
                boolean[] taken = new boolean[50];
                for (Bounds box : boxes) {
                    for (int y = (int) box.minY(); box.maxX() > left && box.minX() < right && y < Math.min(50, box.maxY()); y++) {
                        taken[y] = true;
                    }
                }
                int run = 0;
                for (boolean one : taken) {
                    run = one ? 0 : run + 1;
                    best = run >= 3 ? Math.max(best, (double) run * (right - left)) : best;
                }
            }
        }
        return best;
    }

    /** Four rectangles round a hole, each across the end of the next: the textbook layout that no shear can cut. */
    @Test
    void aPinwheelIsNoWorkForAShear() {
        SheetSize sheet = new SheetSize("sheet", 30, 30, 1, 1, false);
        List<Placement> pinwheel = List.of(place(20, 10, 0, 0), place(10, 20, 20, 0), place(20, 10, 10, 20),
                place(10, 20, 0, 10));
        assertThat(ShearPlan.of(sheet, pinwheel, Optional.empty())).isEmpty();

        List<ShearCut> cuts = ShearPlan.of(sheet, List.of(place(20, 10, 0, 0), place(10, 30, 20, 0), place(20, 20, 0, 10)),
                Optional.empty()).orElseThrow();
        assertThat(cuts).containsExactly(new ShearCut(new Vec2(20, 0), new Vec2(20, 30)),
                new ShearCut(new Vec2(0, 10), new Vec2(20, 10)));
    }

    /**
     * The rest above comes off whole with the first cut, then the rest beside the lower piece; a shear plan that cut it
     * up would be cursed.
     */
    @Test
    void theRemnantComesOffWholeAndFirst() {
        SheetSize sheet = new SheetSize("sheet", 100, 50, 1, 1, false);
        List<ShearCut> cuts = ShearPlan.of(sheet, List.of(place(60, 20, 0, 0), place(30, 8, 62, 0)),
                Optional.of(new Bounds(0, 22, 100, 50))).orElseThrow();
        assertThat(cuts).startsWith(new ShearCut(new Vec2(0, 20), new Vec2(100, 20)),
                new ShearCut(new Vec2(92, 0), new Vec2(92, 20)));
        // a remnant that a shear can't leave whole is cut rather than the pieces
        assertThat(ShearPlan.of(sheet, List.of(place(60, 20, 0, 0), place(30, 8, 62, 0)),
                Optional.of(new Bounds(61, 9, 100, 50)))).isPresent();
    }

    private static Placement place(double length, double width, double x, double y) {
        return new Placement(Tasks.rectangle(length, width), 0, new Vec2(x, y));
    }

    private static Path halfDisc() {
        return PathBuilder.from(new Vec2(-200, 0)).lineTo(new Vec2(-190, 0)).lineTo(new Vec2(-190, -12))
                .lineTo(new Vec2(190, -12))
                .lineTo(new Vec2(190, 0)).lineTo(new Vec2(200, 0)).arcTo(new Vec2(-200, 0), Vec2.ZERO, true).close();
    }

    private static Path comb() {
        List<Vec2> corners = new ArrayList<>(List.of(new Vec2(0, 0), new Vec2(70, 0)));
        for (int x = 70; x > 0; x -= 20) {
            corners.addAll(List.of(new Vec2(x, 30), new Vec2(x - 10, 30)));
            if (x > 10) {
                corners.addAll(List.of(new Vec2(x - 10, 10), new Vec2(x - 20, 10)));
            }
        }
        return Path.polyline(corners, true);
    }

    private static Convex convex(Random random) {
        Coordinate[] points = new Coordinate[8];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Coordinate(40 * random.nextDouble(), 40 * random.nextDouble());
        }
        return Convex.of(ConvexParts.of((Polygon) FACTORY.createMultiPointFromCoords(points).convexHull()).get(0));
    }

    private static Polygon polygon(Convex convex) {
        Coordinate[] ring = new Coordinate[convex.size() + 1];
        for (int i = 0; i <= convex.size(); i++) {
            ring[i] = new Coordinate(convex.x[i % convex.size()], convex.y[i % convex.size()]);
        }
        return FACTORY.createPolygon(ring);
    }
}

package org.capwright.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Moments of bore strips against JTS polygons and Simpson sums, and where the strips of 4 and 6 leaves lie. */
class LeafBoreTest {
    @Test
    void momentAgainstJtsPolygons() {
        Random random = new Random(41);
        for (int i = 0; i < 50; i++) {
            LeafBore bore = randomBore(random);
            Polygon strip = strip(bore.boreRadiusMm(), bore.fromMm(), bore.toMm());
            double expected = strip.getArea() * (strip.getCentroid().getX() - bore.axisMm());
            assertThat(bore.wholeMm3()).as("seed 41, case %d", i).isCloseTo(expected, within(1e-6 * strip.getArea() * bore.boreRadiusMm()));
        }
    }

    @Test
    void interceptedMomentAgainstSimpson() {
        Random random = new Random(42);
        for (int i = 0; i < 200; i++) {
            LeafBore bore = randomBore(random);
            double open = random.nextDouble() * Math.PI / 2;
            double to = Math.min(bore.toMm(), bore.shadowMm(open));
            double expected = to <= bore.fromMm() ? 0 : simpson(bore, to);
            assertThat(bore.interceptedMm3(open)).as("seed 42, case %d", i).isCloseTo(expected, within(1e-9 * Math.pow(bore.boreRadiusMm(), 3)));
        }
    }

    /** In x = R sin t the chord's square root is smooth: {@code 2 R^2 cos^2 t (R sin t - x_r) dt}. */
    private static double simpson(LeafBore bore, double toMm) {
        double r = bore.boreRadiusMm();
        double from = Math.asin(bore.fromMm() / r);
        double step = (Math.asin(toMm / r) - from) / 400;
        double sum = 0;
        for (int i = 0; i <= 400; i++) {
            double t = from + i * step;
            double weight = i == 0 || i == 400 ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * 2 * r * r * Math.cos(t) * Math.cos(t) * (r * Math.sin(t) - bore.axisMm());
        }
        return sum * step / 3;
    }

    private static Polygon strip(double radius, double from, double to) {
        List<Coordinate> ring = new ArrayList<>();
        int n = 4000;
        double start = Math.acos(from / radius);
        double end = Math.acos(to / radius);
        for (int side = 1; side >= -1; side -= 2) {
            for (int i = 0; i <= n; i++) {
                double turn = side > 0 ? start + (end - start) * i / n : end + (start - end) * i / n;
                ring.add(new Coordinate(radius * Math.cos(turn), side * radius * Math.sin(turn)));
            }
        }
        ring.add(ring.get(0));
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static LeafBore randomBore(Random random) {
        double radius = 50 + 500 * random.nextDouble();
        double from = radius * 0.8 * random.nextDouble();
        double to = random.nextBoolean() ? radius : from + (radius - from) * (0.1 + 0.9 * random.nextDouble());
        double axis = from - 20 * random.nextDouble();
        return new LeafBore(radius, from, to, axis, to - axis + 20 * random.nextDouble());
    }

    @Test
    void stripsOfSixLeavesLieBetweenTheGutters() {
        Cap cap = Kiln.cap(Map.of("stack.outsideDiameter", "48 in", "leaves.count", "6"));
        List<LeafAir> leaves = Air.of(cap).leaves();
        double half = 1.0336 * 25.4;
        for (int i = 0; i < 3; i++) {
            LeafBore bore = leaves.get(i).bore();
            double end = i < 2 ? cap.joints().get(i + 1) - half : cap.sleeve().insideRadiusMm();
            assertThat(bore.fromMm()).isCloseTo(cap.joints().get(i) + half, within(1e-9));
            assertThat(bore.toMm()).isCloseTo(end, within(1e-9));
            assertThat(bore.shadowMm(0)).isCloseTo(cap.leaves().get(i).slab().freeEdgeMm(), within(1e-9));
        }
    }

    @Test
    void leafShorterThanTheNextGutterEndsTheStrip() {
        Cap cap = Kiln.cap(Map.of("stack.outsideDiameter", "48 in", "leaves.count", "4", "leaves.gap", "2 1/2 in"));
        LeafBore inner = Air.of(cap).leaves().get(0).bore();
        assertThat(inner.toMm()).isEqualTo(cap.leaves().get(0).slab().freeEdgeMm());
    }

    @Test
    void freeAreaOfSixLeavesIsWhatIsLeftBetweenTheGutters() {
        Air air = Air.of(Kiln.cap(Map.of("stack.outsideDiameter", "48 in", "leaves.count", "6")));
        double strips = air.leaves().stream().map(LeafAir::bore)
                .mapToDouble(bore -> strip(bore.boreRadiusMm(), bore.fromMm(), bore.toMm()).getArea()).sum();
        assertThat(air.freeAreaMm2() / (2 * strips)).isCloseTo(1, within(1e-6));
    }

    @Test
    void gutterThatCoversTheBoreIsRefused() {
        Cap cap = Kiln.cap(Map.of("leaves.count", "6", "gutter.insideWidth", "6 in"));
        assertThatThrownBy(() -> Air.of(cap)).isInstanceOf(RefusedJobException.class).hasMessage(
                "gutter.insideWidth: \"6 in\": the gutters leave no bore that could lift leaf 1."
                        + " Take a narrower gutter, a smaller rod offset or fewer leaves.");
    }
}

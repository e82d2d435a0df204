package org.capwright.fitup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.capwright.fitup.Reading.Kind;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.junit.jupiter.api.Test;

class OvalFitTest {
    private static final long SEED = 6_100;
    private static final double ACCURACY_MM = 0.8;

    /**
     * Six points of Gander, Golub and Strebel, "Least-Squares Fitting of Circles and Ellipses", BIT 34 (1994), 558-578, section 1:
     * the geometric fit has its centre at (4.7398, 2.9835) and radius 4.7142.
     */
    @Test
    void thePublishedCircle() {
        double[][] points = {{1, 7}, {2, 6}, {5, 8}, {7, 7}, {9, 5}, {3, 7}};
        List<Reading> readings = new ArrayList<>();
        for (double[] point : points) {
            Vec2 p = new Vec2(point[0], point[1]);
            readings.add(new Reading("", Kind.RADIUS, p.direction(), p.norm(), 1, 0));
        }
        OvalFit fit = OvalFit.of(readings, Oval.circle(5).moved(new Vec2(5, 4)), false);

        assertThat(fit.terms()).isEqualTo(new Terms(true, 2, 0));
        assertThat(fit.outline().centre().x()).isCloseTo(4.7398, within(5e-5));
        assertThat(fit.outline().centre().y()).isCloseTo(2.9835, within(5e-5));
        assertThat(fit.outline().radiusMm()).isCloseTo(4.7142, within(5e-5));
    }

    @Test
    void exactReadingsGiveTheShapeBack() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            Oval shape = Oval.of(280 + 10 * random.nextGaussian(), 10 * random.nextDouble(), Math.PI * random.nextDouble(),
                    new Vec2(10 * random.nextGaussian(), 10 * random.nextGaussian()));
            OvalFit fit = OvalFit.of(readings(shape, 5, 6, 0, random), Oval.circle(280));
            assertThat(fit.terms()).isEqualTo(new Terms(true, 2, 2));
            assertThat(fit.outline().radiusMm()).as("seed %d, %d", SEED, i).isCloseTo(shape.radiusMm(), within(1e-6));
            assertThat(fit.outline().cosMm()).isCloseTo(shape.cosMm(), within(1e-6));
            assertThat(fit.outline().sinMm()).isCloseTo(shape.sinMm(), within(1e-6));
            assertThat(fit.outline().centre().distance(shape.centre())).isLessThan(1e-6);
            assertThat(fit.suspects()).isEmpty();
        }
    }

    /** Noise as stated: the stated deviation of the fit is what the fits really scatter by, within what 500 of them can tell. */
    @Test
    void theStatedDeviationIsTheRealOne() {
        Random random = new Random(SEED);
        Oval shape = Oval.of(282, 4, 0.7, new Vec2(3, -2));
        Vec2 place = new Vec2(200, 190);
        double square = 0;
        double stated = 0;
        double bias = 0;
        int fits = 500;
        for (int i = 0; i < fits; i++) {
            OvalFit fit = OvalFit.of(readings(shape, 6, 6, ACCURACY_MM / 2, random), Oval.circle(280));
            double off = fit.outline().insideMm(place.x(), place.y()) - shape.insideMm(place.x(), place.y());
            square += off * off / fits;
            bias += off / fits;
            stated += Math.pow(fit.deviationMm(place) / fit.scale(), 2) / fits;
        }
        assertThat(Math.sqrt(square)).as("seed %d", SEED).isCloseTo(Math.sqrt(stated), within(0.1 * Math.sqrt(stated)));
        assertThat(Math.abs(bias)).isLessThan(4 * Math.sqrt(stated / fits));
    }

    @Test
    void termsGoAsFarAsTheReadings() {
        Oval shape = Oval.of(282, 4, 0.7, new Vec2(3, -2));
        Random random = new Random(SEED);
        Oval drawn = Oval.circle(280);

        assertThat(OvalFit.of(List.of(), drawn).terms()).isEqualTo(new Terms(false, 0, 0));
        assertThat(OvalFit.of(List.of(), drawn).outline()).isEqualTo(drawn);
        assertThat(OvalFit.of(readings(shape, 1, 0, 0, random), drawn).terms()).isEqualTo(new Terms(true, 0, 0));
        // two diameters square to each other tell one part of the ovality only
        assertThat(OvalFit.of(readings(shape, 2, 0, 0, random), drawn).terms()).isEqualTo(new Terms(true, 0, 1));
        assertThat(OvalFit.of(readings(shape, 3, 0, 0, random), drawn).terms()).isEqualTo(new Terms(true, 0, 2));
        assertThat(OvalFit.of(readings(shape, 0, 3, 0, random), drawn).terms()).isEqualTo(new Terms(true, 2, 0));
        // four gaps 90 deg apart, at 45 deg: the ovality along the axes does not show in them
        assertThat(OvalFit.of(readings(shape, 0, 4, 0, random), drawn).terms()).isEqualTo(new Terms(true, 2, 1));
        assertThat(OvalFit.of(readings(shape, 0, 6, 0, random), drawn).terms()).isEqualTo(new Terms(true, 2, 2));
        assertThat(OvalFit.of(readings(shape, 3, 3, 0, random), drawn).terms()).isEqualTo(new Terms(true, 2, 2));
    }

    @Test
    void aMistypedReadingIsPointedOutAndStays() {
        Random random = new Random(SEED);
        int found = 0;
        int fits = 200;
        for (int i = 0; i < fits; i++) {
            Oval shape = Oval.of(282, 3 * random.nextDouble(), random.nextDouble(), new Vec2(random.nextGaussian(), random.nextGaussian()));
            List<Reading> readings = readings(shape, 6, 6, ACCURACY_MM / 2, random);
            int which = random.nextInt(readings.size());
            Reading right = readings.get(which);
            // a quarter inch left out or put in
            Reading wrong = new Reading(right.path(), right.kind(), right.azimuthRad(), right.valueMm() + (random.nextBoolean() ? 6.35 : -6.35),
                    right.accuracyMm(), right.baseMm());
            readings.set(which, wrong);
            OvalFit fit = OvalFit.of(readings, Oval.circle(280));
            assertThat(fit.residuals()).hasSize(readings.size());
            if (fit.suspects().size() == 1 && fit.suspects().get(0).reading().equals(wrong)) {
                found++;
                Oval without = fit.withoutSuspects().orElseThrow().outline();
                assertThat(without.radiusMm()).isCloseTo(shape.radiusMm(), within(1.0));
            }
        }
        assertThat(found).as("of %d, seed %d", fits, SEED).isGreaterThan(fits * 95 / 100);
    }

    @Test
    void honestReadingsAreSeldomSuspect() {
        Random random = new Random(SEED);
        int suspect = 0;
        for (int i = 0; i < 500; i++) {
            suspect += OvalFit.of(readings(Oval.of(282, 2, 0.3, new Vec2(1, 1)), 6, 6, ACCURACY_MM / 2, random), Oval.circle(280)).suspects().size();
        }
        assertThat(suspect).as("seed %d", SEED).isLessThan(5);
    }

    /** Diameters evenly round half a turn and gaps evenly all round (at 45 deg where there are four), over a sleeve of 230 mm. */
    static List<Reading> readings(Oval shape, int diameters, int gaps, double deviation, Random random) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < diameters; i++) {
            double rad = Math.PI * i / diameters;
            readings.add(new Reading("d" + i, Kind.DIAMETER, rad, 2 * shape.radiusMm(rad) + deviation * random.nextGaussian(), ACCURACY_MM, 0));
        }
        for (int i = 0; i < gaps; i++) {
            double rad = 2 * Math.PI * i / gaps + (gaps == 4 ? Math.PI / 4 : 0);
            readings.add(new Reading("g" + i, Kind.GAP, rad, shape.fromOriginMm(rad) - 230 + deviation * random.nextGaussian(), ACCURACY_MM, 230));
        }
        return readings;
    }
}

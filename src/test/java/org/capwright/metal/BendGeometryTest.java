package org.capwright.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.capwright.geom.Vec2;
import org.junit.jupiter.api.Test;

/** Bend formulas against a bend drawn in the plane: two flats that touch an arc, their outside lines prolonged. */
class BendGeometryTest {
    private static final long SEED = 31;
    private static final int CHORDS = 20_000;

    /** The first flat runs along the x axis below the bend and ends at the origin; the bend turns it upwards. */
    @Test
    void setbackAndAllowanceAreWhatTheDrawingMeasures() {
        Random random = new Random(SEED);
        for (int i = 0; i < 50; i++) {
            Bend bend = new Bend(random.nextDouble(0.1, 3), random.nextDouble(0.3, 5), random.nextDouble(0.3, 3),
                    random.nextDouble(0.25, 0.5));
            String what = "seed " + SEED + ", case " + i;
            assertThat(bend.outsideSetbackMm()).as(what).isCloseTo(mouldPoint(bend).x(), within(1e-9 * mouldPoint(bend).x()));
            assertThat(bend.allowanceMm()).as(what).isCloseTo(neutralArc(bend), within(1e-7));
        }
    }

    /** Both outside lengths less the deduction are the flats and the arc. */
    @Test
    void theFlatLengthIsTheSameEitherWay() {
        Random random = new Random(SEED);
        for (int i = 0; i < 50; i++) {
            Bend bend = new Bend(random.nextDouble(0.1, 2.5), random.nextDouble(0.3, 5), random.nextDouble(0.3, 3),
                    random.nextDouble(0.25, 0.5));
            double flats = 30 + 40;
            double outside = flats + 2 * mouldPoint(bend).x();
            assertThat(outside - bend.deductionMm()).as("seed %d, case %d", SEED, i)
                    .isCloseTo(flats + neutralArc(bend), within(1e-6));
        }
    }

    /** Where the outside lines of both flats meet: on the x axis, and on the tangent at the arc's end. */
    private static Vec2 mouldPoint(Bend bend) {
        double outside = bend.insideRadiusMm() + bend.thicknessMm();
        Vec2 center = new Vec2(0, outside);
        Vec2 end = center.plus(Vec2.polar(outside, bend.turnRad() - Math.PI / 2));
        Vec2 along = Vec2.polar(1, bend.turnRad());
        return end.minus(along.times(end.y() / along.y()));
    }

    private static double neutralArc(Bend bend) {
        double radius = bend.insideRadiusMm() + bend.neutralFactor() * bend.thicknessMm();
        Vec2 last = Vec2.polar(radius, 0);
        double length = 0;
        for (int i = 1; i <= CHORDS; i++) {
            Vec2 next = Vec2.polar(radius, bend.turnRad() * i / CHORDS);
            length += next.distance(last);
            last = next;
        }
        return length;
    }
}

package org.capwright.fitup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.part.StopBar;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** The room for a stop bar's ends in hoods whose chords are known in closed form. */
class StopEndsTest {
    private static final Cap CAP = Cap.solve(Jobs.kilnWith(Map.of("leaves.count", "4")));
    private static final double RADIUS = CAP.hood().insideRadiusMm();
    private static final double CLOSE_MM = 1e-6;

    /** In the hood as drawn both ends have the gap of the job, measured along y: least where the wall is squarest to it. */
    @Test
    void asDrawn() {
        StopBar bar = CAP.stops().get(0);
        double drawn = RADIUS - bar.endRadiusMm();
        assertThat(StopEnds.gapMm(bar, 1, Oval.circle(RADIUS))).isCloseTo(drawn, within(CLOSE_MM));
    }

    /** A shift along the bar changes nothing, as the bar moves along; one across it shortens the chord of the far corner. */
    @Test
    void shifted() {
        StopBar bar = CAP.stops().get(1);
        Oval along = Oval.circle(RADIUS).moved(new Vec2(0, 7));
        assertThat(StopEnds.gapMm(bar, 1, along)).isCloseTo(StopEnds.gapMm(bar, 1, Oval.circle(RADIUS)), within(CLOSE_MM));
        double corner = bar.jointMm() + bar.halfWidthMm();
        double chord = Math.sqrt(RADIUS * RADIUS - (corner + 10) * (corner + 10));
        assertThat(StopEnds.gapMm(bar, 1, Oval.circle(RADIUS).moved(new Vec2(-10, 0))))
                .isCloseTo(chord - bar.endMm(bar.halfWidthMm()), within(CLOSE_MM));
        assertThat(StopEnds.gapMm(bar, -1, Oval.circle(RADIUS).moved(new Vec2(10, 0))))
                .isCloseTo(chord - bar.endMm(bar.halfWidthMm()), within(CLOSE_MM));
    }

    @Test
    void notesSayHowMuch() {
        ShopFormat format = new ShopFormat(UnitSystem.METRIC, 32);
        assertThat(StopEnds.notes(CAP, Oval.circle(RADIUS), format)).isEmpty();
        List<String> narrow = StopEnds.notes(CAP, Oval.circle(RADIUS - 4), format);
        assertThat(narrow).hasSize(3).first().asString()
                .matches("As the hood stands, dress 3\\.\\d mm off each end of stop bar 1, or it will not go in\\.");
        assertThat(StopEnds.notes(CAP, Oval.circle(RADIUS + 4), format)).first().asString()
                .isEqualTo("As the hood stands, the ends of stop bar 1 are 4.8 mm short of it, too far to weld: make it longer.");
    }
}

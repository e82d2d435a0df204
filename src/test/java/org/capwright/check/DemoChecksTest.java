package org.capwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.capwright.part.Cap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The demo jobs are clear; broken on purpose they foul what a lead hand would expect, where it would touch. */
class DemoChecksTest {
    @TestFactory
    Stream<DynamicTest> noDemoIsFoul() {
        return DemoJobs.ALL.stream().map(name -> DynamicTest.dynamicTest(name,
                () -> assertThat(notClear(DemoJobs.cap(name, Map.of()), Verdict.FOUL)).isEmpty()));
    }

    @Test
    void onlyTheGrainDryersRodIsTight() {
        assertThat(DemoJobs.ALL.stream().flatMap(name -> notClear(DemoJobs.cap(name, Map.of()), Verdict.TIGHT).stream()))
                .containsExactly("rod.1.sag");
    }

    @TestFactory
    Stream<DynamicTest> aNarrowAnnulusFoulsLeafToHoodAtTheHingeCornersLipAtTheStop() {
        return DemoJobs.ALL.stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            Cap cap = DemoJobs.cap(name, Map.of("hood.annulus", "19 mm"));
            assertThat(notClear(cap, Verdict.FOUL)).anyMatch(id -> id.matches("leaf\\.\\d\\.hood"));
            Check foul = first(cap, check -> check.id().matches("leaf\\.\\d\\.hood") && check.verdict() == Verdict.FOUL);
            Check.Place place = foul.place().orElseThrow();
            assertThat(place.openRad()).isEqualTo(cap.stopRad());
            // at the rod, far out along it, below the axis: the lip of the hinge corner has swung outwards
            assertThat(place.at().y()).isGreaterThan(0.8 * cap.sleeve().outsideRadiusMm());
            assertThat(place.at().z()).isLessThan(cap.leaves().get(0).rodAxisZMm());
        }));
    }

    @TestFactory
    Stream<DynamicTest> aWideHingeFlangeFoulsTheGuttersWallAtTheRim() {
        return DemoJobs.ALL.stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            Cap cap = DemoJobs.cap(name, Map.of("leaves.hingeFlange", "14 mm", "gutter.insideWidth", "40 mm", "gutter.depth", "30 mm"));
            Check wall = first(cap, check -> check.id().equals("heel.1.wall"));
            assertThat(wall.verdict()).isEqualTo(Verdict.FOUL);
            assertThat(wall.place().orElseThrow().at().z()).isLessThanOrEqualTo(1e-9);
        }));
    }

    @TestFactory
    Stream<DynamicTest> aShallowGutterFoulsItsFloorWhileTheHeelIsLowest() {
        return DemoJobs.ALL.stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            Cap cap = DemoJobs.cap(name, Map.of("gutter.depth", "7 mm"));
            Check floor = first(cap, check -> check.id().equals("heel.1.floor"));
            assertThat(floor.verdict()).isNotEqualTo(Verdict.CLEAR);
            assertThat(Math.toDegrees(floor.place().orElseThrow().openRad())).isBetween(10.0, 60.0);
        }));
    }

    @TestFactory
    Stream<DynamicTest> aHeavyLeafFoulsTheLift() {
        return DemoJobs.ALL.stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            Cap cap = DemoJobs.cap(name, Map.of("leaves.thickness", "6 mm", "leaves.bend.insideRadius", "6 mm", "leaves.dripFlange", "40 mm",
                    "leaves.hingeFlange", "40 mm", "leaves.shrink.kappa", "0", "gutter.insideWidth", "auto", "gutter.depth", "auto",
                    "air.shutOffPressure", "150 Pa"));
            assertThat(notClear(cap, Verdict.FOUL)).contains("lift.1");
        }));
    }

    @TestFactory
    Stream<DynamicTest> aLowHoodFoulsOverTheTips() {
        return DemoJobs.ALL.stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            Cap auto = DemoJobs.cap(name, Map.of("hood.aboveRim", "auto", "hood.belowRim", "180 mm"));
            String low = (auto.hood().aboveRimMm() - 10) + " mm";
            Cap cap = DemoJobs.cap(name, Map.of("hood.aboveRim", low, "hood.belowRim", "180 mm"));
            assertThat(notClear(cap, Verdict.FOUL)).contains("hood.tips");
        }));
    }

    @TestFactory
    Stream<DynamicTest> aLongSpoutFoulsTheCurvedFlangeWhileTheLeafIsClosed() {
        return DemoJobs.ALL.stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            Cap cap = DemoJobs.cap(name, Map.of("gutter.spout", "12 mm"));
            assertThat(notClear(cap, Verdict.FOUL)).contains("flange.1.spout").allMatch(id -> id.matches("flange\\.\\d\\.spout"));
            assertThat(first(cap, check -> check.id().equals("flange.1.spout")).place().orElseThrow().openRad()).isZero();
        }));
    }

    @TestFactory
    Stream<DynamicTest> highStandoffsFoulTheClosedLip() {
        return DemoJobs.ALL.stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            Cap cap = DemoJobs.cap(name, Map.of("standoffs.belowRim", "8 mm"));
            assertThat(notClear(cap, Verdict.FOUL)).contains("lip.1.standoff");
            assertThat(first(cap, check -> check.id().equals("lip.1.standoff")).place().orElseThrow().openRad()).isZero();
        }));
    }

    @Test
    void aSprayBoothsLeavesMustReachTheStop() {
        Cap cap = DemoJobs.cap("kiln-room", Map.of("air.duty", "spray booth"));
        assertThat(notClear(cap, Verdict.FOUL)).containsExactly("float.1");
    }

    @Test
    void hotGasFoulsTheBushings() {
        Cap cap = DemoJobs.cap("kiln-room", Map.of("air.duty", "hot", "air.temperature", "250 F"));
        assertThat(notClear(cap, Verdict.FOUL)).contains("bushing.heat");
    }

    @Test
    void corrosiveFumeAsksForStainless() {
        assertThat(notClear(DemoJobs.cap("kiln-room", Map.of("air.duty", "corrosive")), Verdict.FOUL)).containsExactly("duty.metal");
        assertThat(notClear(DemoJobs.cap("bakery-oven-room", Map.of("air.duty", "corrosive")), Verdict.FOUL)).isEmpty();
    }

    private static List<String> notClear(Cap cap, Verdict verdict) {
        return Checks.of(cap).stream().filter(check -> check.verdict() == verdict).map(Check::id).toList();
    }

    private static Check first(Cap cap, Predicate<Check> which) {
        return Checks.of(cap).stream().filter(which).findFirst().orElseThrow();
    }
}

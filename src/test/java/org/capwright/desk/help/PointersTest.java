package org.capwright.desk.help;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.desk.sketch.Pointer;
import org.capwright.geom.Vec2;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.Inputs;
import org.capwright.job.JobReader;
import org.capwright.job.LeafInputs;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;
import org.capwright.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The help sheet's drawings point at something that is there, and spans are the inputs' own sizes. */
class PointersTest {
    private static final Set<String> PARTS = Set.of("", "sleeve", "hood", "leaves", "rods", "gutter", "stop", "standoffs",
            "doublers");

    static Stream<Cap> demos() {
        return Stream.of("kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class").map(PointersTest::demo);
    }

    private static Cap demo(String name) {
        return Cap.solve(JobReader.read(JobFiles.read(Path.of("demo-jobs", name + ".json"))).orThrow());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyInputOfTheCapHasADrawing(Cap cap) {
        for (Input<?> input : Inputs.all()) {
            Optional<Pointer> pointer = Pointers.of(input, cap);
            boolean onPaperOnly = input.path().startsWith("job.") || input.path().equals("capwright");
            assertThat(pointer.isPresent()).as(input.path()).isEqualTo(!onPaperOnly);
            pointer.ifPresent(one -> inside(one, cap, input.path()));
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyCheckHasADrawing(Cap cap) {
        for (Check check : Checks.of(cap)) {
            Optional<Pointer> pointer = Pointers.of(check, cap);
            assertThat(pointer).as(check.id()).isPresent();
            inside(pointer.orElseThrow(), cap, check.id());
        }
    }

    private static void inside(Pointer pointer, Cap cap, String what) {
        assertThat(PARTS).as(what).contains(pointer.part());
        if (pointer.points()) {
            double reach = Math.max(cap.widthMm(), cap.heightMm());
            for (Vec2 end : List.of(pointer.from(), pointer.to())) {
                assertThat(end.norm()).as(what).isLessThan(reach);
            }
        }
    }

    @Test
    void aSpanIsTheInputsSize() {
        Cap cap = demo("kiln-room");
        for (Input<?> input : List.of(HoodInputs.ANNULUS, HoodInputs.ABOVE_RIM, HoodInputs.BELOW_RIM, LeafInputs.COVER)) {
            Pointer pointer = Pointers.of(input, cap).orElseThrow();
            double typed = ((Length) cap.job().get(input)).mm();
            assertThat(pointer.from().distance(pointer.to())).as(input.path()).isCloseTo(typed, within(1e-6));
        }
    }
}

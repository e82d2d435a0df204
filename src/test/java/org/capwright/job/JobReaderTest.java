package org.capwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.capwright.units.Length;
import org.junit.jupiter.api.Test;

class JobReaderTest {
    private static final JobText GOOD = JobText.of(Map.of("stack.outsideDiameter", "18 in"));

    @Test
    void aJobNeedsOnlyItsStack() {
        CapJob job = JobReader.read(GOOD).orThrow();

        assertThat(job.get(StackInputs.OUTSIDE_DIAMETER)).isEqualTo(Length.ofInches(18));
        assertThat(job.get(StackInputs.SLIP)).isEqualTo(Length.ofInches(0.125));
        assertThat(job.find(HoodInputs.ABOVE_RIM)).isEmpty();
        assertThat(job.listTyped(HoodInputs.BEADS)).isFalse();
    }

    @Test
    void everyProblemIsToldAtOnce() {
        JobText bad = JobText.of(Map.of("leaves.cover", "9 in", "leaves.gap", "wide", "sleeve.metal", "galvanised"));

        JobReading reading = JobReader.read(bad);

        assertThat(reading.job()).isEmpty();
        assertThat(messages(bad)).containsExactly(
                "stack.outsideDiameter: must be given, 4 in to 96 in. Type it, such as \"24 1/2 in\".",
                "sleeve.metal: \"galvanised\": is not one of \"galvanized\", \"aluminized\", \"cold-rolled\", \"stainless 304\","
                        + " \"stainless 316\", \"aluminium\" (did you mean \"galvanized\"?). Type one of these.",
                "leaves.cover: \"9 in\": must be 1/8 in to 4 in. Type a value in that range.",
                "leaves.gap: \"wide\": can't be read as a length; type it like 24 1/2 in or 622 mm. Type 1/16 in to 3 in.");
        assertThatThrownBy(reading::orThrow).isInstanceOf(RefusedJobException.class)
                .hasMessage(String.join("\n", messages(bad)));
    }

    @Test
    void anUnknownFieldIsRefusedWithTheNearestName() {
        assertThat(messages(GOOD.with("leaves.covr", "1/2 in"))).containsExactly(
                "leaves.covr: \"1/2 in\": there is no such field. Write \"leaves.cover\" if you meant that.");
        assertThat(messages(GOOD.with("weather.tomorrow.afternoon", "rain"))).containsExactly(
                "weather.tomorrow.afternoon: \"rain\": there is no such field. Take it out.");
    }

    @Test
    void aNewerVersionIsRefusedWithoutLookingFurther() {
        assertThat(messages(JobText.of(Map.of("capwright", "2", "leaves.covr", "1")))).containsExactly(
                "capwright: \"2\": this job file is of a newer version than this program reads (up to 1)."
                        + " Open it with a newer Capwright.");
    }

    @Test
    void rangesIncludeTheirEndsAndNothingIsClamped() {
        assertThat(JobReader.read(GOOD.with("leaves.gap", "1/16 in")).problems()).isEmpty();
        assertThat(JobReader.read(GOOD.with("leaves.gap", "3 in")).problems()).isEmpty();
        assertThat(messages(GOOD.with("leaves.gap", "3.0001 in"))).containsExactly(
                "leaves.gap: \"3.0001 in\": must be 1/16 in to 3 in. Type a value in that range.");
        assertThat(messages(GOOD.with("hood.pieces", "7"))).containsExactly(
                "hood.pieces: \"7\": must be 1 to 6, or auto. Type a value in that range.");
    }

    @Test
    void whatIsNoNumberIsRefused() {
        for (String text : List.of("NaN", "Infinity", "1e999", "", "null", "true", "1,5 in")) {
            assertThat(messages(GOOD.with("leaves.gap", text))).as(text).hasSize(1).first().asString()
                    .startsWith("leaves.gap:").contains("can't be read as a length");
        }
    }

    @Test
    void aMetalWithoutGaugeTableNeedsItsThickness() {
        JobText aluminized = GOOD.with("hood.metal", "aluminized");

        assertThat(messages(aluminized)).containsExactly("hood.thickness: \"auto\": there is no gauge table for aluminized"
                + " sheet. Type the measured thickness.");
        assertThat(messages(aluminized.with("hood.thickness", "0.034 in"))).isEmpty();
    }

    @Test
    void greaseIsRefusedWithTheReason() {
        assertThat(messages(GOOD.with("air.duty", "grease"))).containsExactly("air.duty: \"grease\": dampers have no place over"
                + " grease-laden exhaust (fire rules such as NFPA 96): a leaf that sticks or burns traps the fire."
                + " Use an upblast fan or an open stack head approved for cooking exhaust.");
    }

    @Test
    void beadsAreReadElementByElement() {
        CapJob job = JobReader.read(GOOD.with("hood.beads[0].fromTop", "1 in").with("hood.beads[1].fromTop", "3 in")
                .with("hood.beads[1].side", "in")).orThrow();

        assertThat(job.get(HoodInputs.BEAD_FROM_TOP.at(1))).isEqualTo(Length.ofInches(3));
        assertThat(job.get(HoodInputs.BEAD_SIDE.at(0))).isEqualTo(HoodInputs.BeadSide.OUT);
        assertThat(job.get(HoodInputs.BEAD_SIDE.at(1))).isEqualTo(HoodInputs.BeadSide.IN);
        assertThat(job.listTyped(HoodInputs.BEADS)).isTrue();
    }

    @Test
    void aBeadIsRefusedByItsNumber() {
        assertThat(messages(GOOD.with("hood.beads[0].fromTop", "1 in").with("hood.beads[1].width", "1/2 in"))).containsExactly(
                "hood.beads[1].fromTop: must be given, 1/4 in to 108 in. Type it, such as \"24 1/2 in\".");
        assertThat(messages(GOOD.with("hood.beads[0].fromTop", "1 in").with("hood.beads[0].depth", "3/8 in"))).containsExactly(
                "hood.beads[0].depth: \"3/8 in\": a bead's depth must be at most half its width of 1/2 in."
                        + " Make it shallower or wider.");
    }

    @Test
    void aListIsEmptyOrAutoButNoOtherWord() {
        assertThat(JobReader.read(GOOD.with("hood.beads", JobText.EMPTY_LIST)).orThrow().listTyped("hood.beads")).isTrue();
        assertThat(JobReader.read(GOOD.with("hood.beads", "auto")).orThrow().listTyped("hood.beads")).isFalse();
        assertThat(messages(GOOD.with("hood.beads", "two"))).containsExactly(
                "hood.beads: \"two\": must be a list, \"none\", or auto. Type its elements, or one of these words.");
    }

    @Test
    void bareNumbersTakeTheUnitOfTheJob() {
        JobText metric = JobText.of(Map.of("job.units", "mm", "stack.outsideDiameter", "457.2", "leaves.cover", "1/2 in"));

        CapJob job = JobReader.read(metric).orThrow();

        assertThat(job.get(StackInputs.OUTSIDE_DIAMETER).mm()).isEqualTo(457.2);
        assertThat(job.get(LeafInputs.COVER).mm()).isCloseTo(12.7, within(1e-12));
        assertThat(job.get(StackInputs.SLIP).mm()).as("default").isCloseTo(3.175, within(1e-12));
    }

    @Test
    void bareNumbersInAnInchJobAreInches() {
        assertThat(JobReader.read(GOOD.with("leaves.cover", "0.5")).orThrow().get(LeafInputs.COVER).mm())
                .isCloseTo(12.7, within(1e-12));
    }

    private static List<String> messages(JobText text) {
        return JobReader.read(text).problems().stream().map(Problem::message).toList();
    }

    /** Reading one input anew gives what reading all of it gives: for every input, typed well, badly, and against the rules. */
    @Test
    void rereadingOneInputIsReadingAll() {
        CapJob job = JobReader.read(JobText.of(Map.of("stack.outsideDiameter", "18 in", "leaves.gap", "1/2"))).orThrow();
        for (Input<?> input : Inputs.all()) {
            if (input.path().contains("[]")) {
                continue;
            }
            for (String typed : List.of("1 in", "auto", "nonsense", "2", "mm", "grease", "aluminized", "400 in")) {
                JobReading whole = JobReader.read(job.text().with(input.path(), typed));
                JobReading one = JobReader.reread(job, input, typed);
                assertThat(one.problems()).as(input.path() + " " + typed).isEqualTo(whole.problems());
                assertThat(one.job()).as(input.path() + " " + typed).isEqualTo(whole.job());
                whole.job().ifPresent(read -> assertThat(one.job().orElseThrow().values()).isEqualTo(read.values()));
            }
        }
    }
}

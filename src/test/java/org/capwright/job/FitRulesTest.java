package org.capwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FitRulesTest {
    private static final JobText GOOD = JobText.of(Map.of("stack.outsideDiameter", "18 in"));

    @Test
    void readingsWithoutADesignChangeAreTaken() {
        JobText text = GOOD.with("fit.hoodBore[0].azimuth", "30 deg").with("fit.hoodBore[0].diameter", "22 1/4 in").with("fit.date", "2 March")
                .with("fit.gaps[5].gap", "2 in").with("held.sleeve", "cut").with("fit.rods[0].side", "minus");
        CapJob job = JobReader.read(text).orThrow();

        assertThat(job.find(FitInputs.HOOD_DIAMETER.at(0))).isPresent();
        assertThat(job.find(FitInputs.GAP.at(4))).isEmpty();
        assertThat(job.get(FitInputs.ROD_SIDE.at(0)).sign()).isEqualTo(-1);
        assertThat(Inputs.ofDesign("fit.hoodBore[0].diameter")).isFalse();
        assertThat(Inputs.ofDesign("standoffs.count")).isTrue();
    }

    @Test
    void aBoreReadingIsEitherADiameterOrARadius() {
        assertThat(messages(GOOD.with("fit.hoodBore[0].diameter", "22 in").with("fit.hoodBore[0].radius", "11 in"))).containsExactly(
                "fit.hoodBore[0].diameter: \"22 in\": a reading of the bore is either a diameter or a radius. Take one of the two out.");
        // a reading that was not taken yet
        assertThat(messages(GOOD.with("fit.hoodBore[3].diameter", "22 in"))).isEmpty();
    }

    @Test
    void numbersAreThoseOfTheLeaves() {
        assertThat(messages(GOOD.with("fit.leaves[0].number", "2").with("fit.leaves[0].length", "9 in"))).containsExactly(
                "fit.leaves[0].number: \"2\": with 2 leaves the numbers go from 1 to 1. Type one of these.");
        assertThat(messages(GOOD.with("leaves.count", "4").with("fit.leaves[0].number", "2"))).isEmpty();
    }

    private static List<String> messages(JobText text) {
        return JobReader.read(text).problems().stream().map(Problem::message).toList();
    }
}

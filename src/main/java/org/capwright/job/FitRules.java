package org.capwright.job;

import java.util.ArrayList;
import java.util.List;

/** What must hold of readings that are each in range. */
final class FitRules {
    private final CapJob job;
    private final List<Problem> problems = new ArrayList<>();

    private FitRules(CapJob job) {
        this.job = job;
    }

    /** Every rule that the readings break. */
    static List<Problem> problems(CapJob job) {
        FitRules rules = new FitRules(job);
        rules.hoodBore();
        int perHalf = job.get(LeafInputs.COUNT) / 2;
        rules.numbers(FitInputs.RODS, FitInputs.ROD_NUMBER, perHalf);
        rules.numbers(FitInputs.LEAVES, FitInputs.LEAF_NUMBER, perHalf);
        rules.numbers(FitInputs.GUTTERS, FitInputs.GUTTER_NUMBER, perHalf);
        return rules.problems;
    }

    private void hoodBore() {
        for (int i = 0; i < job.text().listSize(FitInputs.HOOD_BORE); i++) {
            boolean diameter = job.find(FitInputs.HOOD_DIAMETER.at(i)).isPresent();
            boolean radius = job.find(FitInputs.HOOD_RADIUS.at(i)).isPresent();
            if (diameter && radius) {
                refuse(FitInputs.HOOD_DIAMETER.at(i), "a reading of the bore is either a diameter or a radius",
                        "Take one of the two out");
            }
        }
    }

    private void numbers(String list, Input<Integer> number, int most) {
        for (int i = 0; i < job.text().listSize(list); i++) {
            if (job.get(number.at(i)) > most) {
                refuse(number.at(i), "with " + job.get(LeafInputs.COUNT) + " leaves the numbers go from 1 to " + most,
                        "Type one of these");
            }
        }
    }

    private void refuse(Input<?> input, String reason, String remedy) {
        problems.add(new Problem(input.path(), job.text().at(input.path()).orElse(""), reason, remedy));
    }
}

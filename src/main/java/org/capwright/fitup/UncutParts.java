package org.capwright.fitup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.capwright.check.Check;
import org.capwright.check.Remedies;
import org.capwright.check.ShopSize;
import org.capwright.check.Verdict;
import org.capwright.fitup.Suggestion.Kind;
import org.capwright.job.Input;
import org.capwright.job.JobReader;
import org.capwright.job.JobReading;
import org.capwright.job.RefusedJobException;

/** Which part that is not cut yet to change, and to what: tried step by step on the fit-up itself. */
final class UncutParts {
    private static final int MOST_STEPS = 32;
    private static final Map<String, String> PART_OF = Map.of("hood", "hood", "leaves", "leaves", "gutter", "gutter", "rods",
            "rods",
            "bushings", "rods", "standoffs", "standoffs", "stop", "stop", "stack", "sleeve");

    private final FitUp fitUp;
    private final FitVerdict deciding;

    UncutParts(FitUp fitUp, FitVerdict deciding) {
        this.fitUp = fitUp;
        this.deciding = deciding;
    }

    List<Suggestion> all() {
        List<Suggestion> all = new ArrayList<>();
        for (Input<?> input : Remedies.inputs(general(deciding.check()))) {
            String part = PART_OF.getOrDefault(input.path().split("\\.")[0], "");
            if (!part.isEmpty() && !fitUp.rederived().held().contains(part)) {
                change(input, part, 1).or(() -> change(input, part, -1)).ifPresent(all::add);
            }
        }
        return all;
    }

    /** The check without its side. */
    private static Check general(Check check) {
        return new Check(check.id().replaceAll("\\.(plus|minus)$", ""), check.words(), check.quantity(), check.value(),
                check.limit(),
                check.place(), check.estimate());
    }

    /** The smallest number of steps one way that makes the clearance clear. */
    private Optional<Suggestion> change(Input<?> input, String part, int way) {
        int steps = 1;
        while (steps <= MOST_STEPS && !clears(input, way * steps)) {
            steps *= 2;
        }
        if (steps > MOST_STEPS) {
            return Optional.empty();
        }
        int low = steps / 2;
        int high = steps;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (clears(input, way * middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return suggestion(input, part, way * high);
    }

    private boolean clears(Input<?> input, int steps) {
        return suggestion(input, "", steps).filter(one -> one.verdict() == Verdict.CLEAR).isPresent();
    }

    private Optional<Suggestion> suggestion(Input<?> input, String part, int steps) {
        Optional<String> to = ShopSize.stepped(fitUp.made(), input, steps);
        return to.flatMap(text -> changed(input, text).map(after -> Suggestions.tried(Kind.UNCUT,
                "change the " + part + ", not cut yet: " + input.label() + " " + text, fitUp, deciding, after)));
    }

    private Optional<FitUp> changed(Input<?> input, String text) {
        JobReading reading = JobReader.read(fitUp.drawn().job().text().with(input.path(), text));
        try {
            return reading.job().map(FitUp::of);
        } catch (RefusedJobException e) {
            return Optional.empty();
        }
    }
}

package org.capwright.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.capwright.check.Verdict;
import org.capwright.geom.Vec2;
import org.capwright.swing.Clearance;

/**
 * What to do about what was made. Everything advised has been done to the program's own swing first.
 *
 * @param bestShift shift of the hood, from where it stands, that makes the least clearance of leaf and hood greatest
 * @param leastNowMm least clearance of leaf and hood as it stands
 * @param bestLeastMm the same after the shift
 * @param suggestions what to do, the best first; none where everything is clear
 */
public record Advice(Vec2 bestShift, double leastNowMm, double bestLeastMm, List<Suggestion> suggestions) {
    /** A shift that gains less is not worth a clamp. */
    private static final double WORTH_MM = 0.1;

    /** Keeps its own copy. */
    public Advice {
        suggestions = List.copyOf(suggestions);
    }

    /**
     * Advice on a fit-up.
     *
     * @param fitUp what was made
     * @return what to do
     */
    public static Advice of(FitUp fitUp) {
        Clearance now = fitUp.swing().leastToHood();
        Vec2 shift = BestShift.of(fitUp.made(), fitUp.work());
        FitUp shifted = fitUp.with(fitUp.work().withHood(fitUp.work().hood().moved(shift)));
        double then = shifted.swing().leastToHood().leastMm();
        if (then < now.leastMm()) {
            shift = Vec2.ZERO;
            then = now.leastMm();
            shifted = fitUp;
        }
        List<Suggestion> suggestions = new ArrayList<>();
        if (fitUp.verdict() != Verdict.CLEAR) {
            suggestions.addAll(new Suggestions(fitUp).all(shift, shifted, then - now.leastMm() > WORTH_MM));
            suggestions.sort(Comparator.comparing(Suggestion::verdict).reversed().thenComparing(one -> !one.spoilsNothing()));
        }
        return new Advice(shift, now.leastMm(), then, suggestions);
    }

    /**
     * What the shift gains.
     *
     * @return mm, not negative
     */
    public double gainMm() {
        return bestLeastMm - leastNowMm;
    }
}

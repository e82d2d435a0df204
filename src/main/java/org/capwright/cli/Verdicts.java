package org.capwright.cli;

import java.util.List;
import java.util.Locale;
import org.capwright.check.Check;
import org.capwright.check.Verdict;

/** Counts verdicts. */
final class Verdicts {
    private Verdicts() {
    }

    /** How many checks came to what, such as {@code 1 foul, 2 tight, 40 clear}. */
    static String summary(List<Check> checks) {
        return String.format(Locale.ROOT, "%d foul, %d tight, %d clear", count(checks, Verdict.FOUL),
                count(checks, Verdict.TIGHT),
                count(checks, Verdict.CLEAR));
    }

    private static long count(List<Check> checks, Verdict verdict) {
        return checks.stream().filter(check -> check.verdict() == verdict).count();
    }
}

package org.capwright.desk.view;

import org.capwright.check.Verdict;

/** A sign for each verdict, so that colour is never alone. */
final class Marks {
    private Marks() {
    }

    static String sign(Verdict verdict) {
        return switch (verdict) {
            case FOUL -> "\u2715";
            case TIGHT -> "\u25b3";
            case CLEAR -> "\u2713";
        };
    }

    static String style(Verdict verdict) {
        return "verdict-" + verdict.word();
    }
}

package org.capwright.desk.sketch;

import org.capwright.check.Verdict;

/** A sign for each verdict, so that colour is never alone. */
public final class Marks {
    private Marks() {
    }

    /**
     * The sign of a verdict.
     *
     * @param verdict the verdict
     * @return one character
     */
    public static String sign(Verdict verdict) {
        return switch (verdict) {
            case FOUL -> "\u2715";
            case TIGHT -> "\u25b3";
            case CLEAR -> "\u2713";
        };
    }

    /**
     * The style class of a verdict.
     *
     * @param verdict the verdict
     * @return its name in the style sheet
     */
    public static String style(Verdict verdict) {
        return "verdict-" + verdict.word();
    }
}

package org.capwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Breaks a text into lines of a width, between words and where the text itself begins a new line. A measure stays in one piece:
 * a whole number and its fraction, a number and its unit, inches and their remainder; torn apart they would be misread.
 */
final class LineBreaks {
    private static final char JOINED = '\u0001';
    private static final Pattern WITHIN_MEASURE = Pattern.compile("(?<=\\d) (?=\\d+/\\d)"
            + "|(?<=\\d) (?=(?:in|mm|m|ft|deg|lb|kg|Pa|MPa|F|C|ga|%)(?![A-Za-z]))"
            + "|(?<=\\bin) (?=[+-]\\.\\d|w\\.g\\.)|(?<= [+\\u00b1-]) (?=\\d)"
            // a part, a standard and its number
            + "|(?<=\\b(?:leaf|rod|gutter|doubler|bar)) (?=\\d)"
            + "|(?<=NFPA|ISO|EN|CFR) (?=\\d)|(?<=\\d) (?=CFR)");

    private final Typeface typeface;
    private final double capitalsMm;
    private final double widthMm;
    private final List<String> lines = new ArrayList<>();
    private String line = "";

    private LineBreaks(Typeface typeface, double capitalsMm, double widthMm) {
        this.typeface = typeface;
        this.capitalsMm = capitalsMm;
        this.widthMm = widthMm;
    }

    /** The lines of a text; at least one. */
    static List<String> of(Typeface typeface, double capitalsMm, String text, double widthMm) {
        LineBreaks breaks = new LineBreaks(typeface, capitalsMm, widthMm);
        for (String paragraph : text.split("\\R", -1)) {
            for (String word : WITHIN_MEASURE.matcher(paragraph).replaceAll(Character.toString(JOINED)).split(" ")) {
                breaks.add(word);
            }
            breaks.end();
        }
        return breaks.lines;
    }

    private void add(String word) {
        if (fits(word)) {
            append(word);
        } else if (word.indexOf(JOINED) >= 0) {
            // wider than a whole line: better torn than off the page
            List.of(word.split(Character.toString(JOINED))).forEach(this::add);
        } else {
            letters(word);
        }
    }

    private void append(String word) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (!line.isEmpty() && !fits(longer)) {
            end();
            longer = word;
        }
        line = longer;
    }

    /** A word wider than a line, letter by letter. */
    private void letters(String word) {
        String rest = line.isEmpty() ? "" : line + " ";
        for (int point : word.codePoints().toArray()) {
            String longer = rest + Character.toString(point);
            if (!rest.isEmpty() && !fits(longer)) {
                line = rest;
                end();
                longer = Character.toString(point);
            }
            rest = longer;
        }
        line = rest;
    }

    private void end() {
        lines.add(line.replace(JOINED, ' ').stripTrailing());
        line = "";
    }

    private boolean fits(String text) {
        return typeface.widthMm(capitalsMm, text) <= widthMm;
    }
}

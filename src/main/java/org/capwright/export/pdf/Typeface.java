package org.capwright.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The one typeface of all pages, embedded: Liberation Sans, which PDFBox brings along. */
final class Typeface {
    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    /** Height of its capitals as a share of its size. */
    private static final double CAPITAL_SHARE = 0.729;
    private static final String MISSING = "?";

    private final PDFont font;
    private final Map<Integer, Boolean> known = new HashMap<>();

    Typeface(PDDocument document) throws IOException {
        try (InputStream stream = PDDocument.class.getResourceAsStream(RESOURCE)) {
            font = PDType0Font.load(document, stream);
        }
    }

    PDFont font() {
        return font;
    }

    /** Size of type whose capitals have a height. */
    double sizeMm(double capitalsMm) {
        return capitalsMm / CAPITAL_SHARE;
    }

    double widthMm(double capitalsMm, String text) throws IOException {
        return font.getStringWidth(printable(text)) / 1000 * sizeMm(capitalsMm);
    }

    /** The text with a question mark for every letter that the typeface lacks. */
    String printable(String text) {
        return text.codePoints().mapToObj(point -> known.computeIfAbsent(point, this::has) ? Character.toString(point) : MISSING)
                .collect(Collectors.joining());
    }

    private boolean has(int point) {
        try {
            font.encode(Character.toString(point));
            return true;
        } catch (IllegalArgumentException | IOException e) {
            return false;
        }
    }
}

package org.capwright.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
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
    private final Map<Integer, Double> widths = new HashMap<>();

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

    double widthMm(double capitalsMm, String text) {
        double thousandths = text.codePoints().mapToDouble(point -> widths.computeIfAbsent(point, this::width)).sum();
        return thousandths / 1000 * sizeMm(capitalsMm);
    }

    private double width(int point) {
        try {
            return font.getStringWidth(known(point));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text with a question mark for every letter that the typeface lacks. */
    String printable(String text) {
        return text.codePoints().mapToObj(this::known).collect(Collectors.joining());
    }

    private String known(int point) {
        return known.computeIfAbsent(point, this::has) ? Character.toString(point) : MISSING;
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

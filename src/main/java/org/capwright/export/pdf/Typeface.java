package org.capwright.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one typeface of all pages, embedded: Liberation Sans, which PDFBox brings along. It has Latin, Greek, Cyrillic and Hebrew
 * letters. A letter that it lacks is written with others that mean the same, such as {@code mm} for U+339C; one that has no such
 * form, as of scripts the typeface does not know, is an empty box: fonts of the machine at hand are never asked, so that a job
 * gives the same pages everywhere.
 */
final class Typeface {
    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String MISSING = "\u25a1";
    private static final String ELLIPSIS = "\u2026";
    /** What stands for signs of the trade that the typeface lacks and Unicode does not take apart. */
    private static final Map<Integer, String> ALIKE = Map.of(0x2300, "\u00d8", 0x2205, "\u00d8", 0x2713, "\u221a", 0x2714,
            "\u221a",
            0x2717, "\u00d7", 0x2718, "\u00d7", 0x2610, MISSING);

    private final PDFont font;
    private final double capitalShare;
    private final Map<Integer, String> shown = new HashMap<>();
    private final Map<Integer, Double> widths = new HashMap<>();

    Typeface(PDDocument document) throws IOException {
        try (InputStream stream = PDDocument.class.getResourceAsStream(RESOURCE)) {
            font = PDType0Font.load(document, stream);
        }
        capitalShare = font.getFontDescriptor().getCapHeight() / 1000;
    }

    PDFont font() {
        return font;
    }

    /** Size of type whose capitals have a height. */
    double sizeMm(double capitalsMm) {
        return capitalsMm / capitalShare;
    }

    double widthMm(double capitalsMm, String text) {
        double thousandths = text.codePoints().mapToDouble(point -> widths.computeIfAbsent(point, this::width)).sum();
        return thousandths / 1000 * sizeMm(capitalsMm);
    }

    private double width(int point) {
        try {
            return font.getStringWidth(shown(point));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text, its end cut off and an ellipsis in its place where it is wider than there is room. */
    String shortened(double capitalsMm, String text, double widthMm) {
        if (widthMm(capitalsMm, text) <= widthMm) {
            return text;
        }
        double room = widthMm - widthMm(capitalsMm, ELLIPSIS);
        int end = 0;
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            room -= widthMm(capitalsMm, text.substring(end, next));
            if (room < 0) {
                break;
            }
            end = next;
        }
        return text.substring(0, end).stripTrailing() + ELLIPSIS;
    }

    /** The text in letters that the typeface has. */
    String printable(String text) {
        return text.codePoints().mapToObj(this::shown).collect(Collectors.joining());
    }

    private String shown(int point) {
        return shown.computeIfAbsent(point, this::find);
    }

    private String find(int point) {
        if (Character.isWhitespace(point) || Character.isISOControl(point)) {
            return " ";
        }
        if (Character.getType(point) == Character.FORMAT) {
            return "";
        }
        return has(point) ? Character.toString(point) : ALIKE.getOrDefault(point, takenApart(point));
    }

    /** Unicode's own equivalent (Unicode Standard Annex 15, form KD) in letters that are there. */
    private String takenApart(int point) {
        String parts = Normalizer.normalize(Character.toString(point), Normalizer.Form.NFKD).codePoints().filter(this::has)
                .mapToObj(Character::toString).collect(Collectors.joining());
        return parts.isEmpty() ? MISSING : parts;
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

package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A piece of running matter that is never broken over two pages. */
interface Block {
    /** Its height at a width. */
    double heightMm(Typeface typeface, double widthMm) throws IOException;

    /** Draws it below a height. */
    void paint(Canvas canvas, Typeface typeface, double x, double top, double widthMm) throws IOException;

    /** What stands above it where it begins a page: the head of its table. */
    default Optional<Block> repeated() {
        return Optional.empty();
    }

    /** Whether it heads what follows, so that it never ends a page. */
    default boolean heads() {
        return false;
    }

    /** Breaks a text into lines of a width, between words. */
    static List<String> lines(Typeface typeface, double capitalsMm, String text, double widthMm) throws IOException {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && typeface.widthMm(capitalsMm, line + " " + word) > widthMm) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /**
     * A paragraph.
     *
     * @param text its text
     * @param capitalsMm height of its capitals
     * @param aboveMm space above it
     */
    record Paragraph(String text, double capitalsMm, double aboveMm) implements Block {
        private static final double LEADING = 1.75;
        private static final double HEADING_MM = 3.4;

        /** Plain matter. */
        static Paragraph plain(String text) {
            return new Paragraph(text, 2.4, 1);
        }

        /** A heading. */
        static Paragraph heading(String text) {
            return new Paragraph(text, HEADING_MM, 6);
        }

        @Override
        public boolean heads() {
            return capitalsMm == HEADING_MM;
        }

        @Override
        public double heightMm(Typeface typeface, double widthMm) throws IOException {
            return aboveMm + lines(typeface, capitalsMm, text, widthMm).size() * capitalsMm * LEADING;
        }

        @Override
        public void paint(Canvas canvas, Typeface typeface, double x, double top, double widthMm) throws IOException {
            double y = top - aboveMm - capitalsMm;
            for (String line : lines(typeface, capitalsMm, text, widthMm)) {
                canvas.text(x, y, capitalsMm, line);
                y -= capitalsMm * LEADING;
            }
        }
    }
}

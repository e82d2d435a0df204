package org.capwright.export.pdf;

import java.io.IOException;
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

    /** Whether a page must not end after it: a heading, the head of a table, all but the last piece of a step. */
    default boolean keepsWithNext() {
        return false;
    }

    /**
     * A paragraph.
     *
     * @param text its text
     * @param capitalsMm height of its capitals
     * @param aboveMm space above it
     * @param keepsWithNext whether a page must not end after it
     */
    record Paragraph(String text, double capitalsMm, double aboveMm, boolean keepsWithNext) implements Block {
        private static final double LEADING = 1.75;
        private static final double HEADING_MM = 3.4;

        Paragraph(String text, double capitalsMm, double aboveMm) {
            this(text, capitalsMm, aboveMm, false);
        }

        /** Plain matter. */
        static Paragraph plain(String text) {
            return new Paragraph(text, 2.4, 1);
        }

        /** A heading. */
        static Paragraph heading(String text) {
            return new Paragraph(text, HEADING_MM, 4.5, true);
        }

        @Override
        public double heightMm(Typeface typeface, double widthMm) throws IOException {
            return aboveMm + LineBreaks.of(typeface, capitalsMm, text, widthMm).size() * capitalsMm * LEADING;
        }

        @Override
        public void paint(Canvas canvas, Typeface typeface, double x, double top, double widthMm) throws IOException {
            double y = top - aboveMm - capitalsMm;
            for (String line : LineBreaks.of(typeface, capitalsMm, text, widthMm)) {
                canvas.text(x, y, capitalsMm, line);
                y -= capitalsMm * LEADING;
            }
        }
    }
}

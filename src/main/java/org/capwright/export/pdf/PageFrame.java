package org.capwright.export.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.capwright.export.JobTag;
import org.capwright.geom.Bounds;

/** What stands round every page: title and job at the top, scale bars along the bottom and the left edge. */
final class PageFrame {
    /** Unprinted edge: what common printers leave free, and a little more. */
    static final double MARGIN_MM = 8;
    private static final double HEADER_MM = 15;
    private static final double BARS_MM = 13;
    private static final double TITLE_MM = 3.6;
    private static final double TEXT_MM = 2.4;
    private static final double BETWEEN_MM = 4;
    private static final double METRIC_BAR_MM = 100;
    private static final double INCH_BAR_MM = 101.6;

    private PageFrame() {
    }

    /** The area inside the frame of a page. */
    static Bounds area(double widthMm, double heightMm) {
        return new Bounds(MARGIN_MM + BARS_MM, MARGIN_MM + BARS_MM, widthMm - MARGIN_MM, heightMm - MARGIN_MM - HEADER_MM);
    }

    /** The area inside the frame of a page with or without scale bars. */
    static Bounds area(double widthMm, double heightMm, boolean bars) {
        return bars ? area(widthMm, heightMm) : new Bounds(MARGIN_MM, MARGIN_MM, widthMm - MARGIN_MM,
                heightMm - MARGIN_MM - HEADER_MM);
    }

    /** Smallest paper round an area. */
    static Bounds paperAround(double areaWidthMm, double areaHeightMm) {
        return new Bounds(0, 0, areaWidthMm + 2 * MARGIN_MM + BARS_MM, areaHeightMm + 2 * MARGIN_MM + BARS_MM + HEADER_MM);
    }

    static void paint(Canvas canvas, PrintPage page, JobTag tag, PrinterScale scale, int number, int count) throws IOException {
        double top = page.heightMm() - MARGIN_MM;
        double right = page.widthMm() - MARGIN_MM;
        double width = right - MARGIN_MM;
        Typeface typeface = canvas.typeface();
        String pageNumber = "page " + number + " of " + count;
        double titleWidth = width - typeface.widthMm(TEXT_MM, pageNumber) - BETWEEN_MM;
        canvas.text(MARGIN_MM, top - TITLE_MM, TITLE_MM, typeface.shortened(TITLE_MM, capital(page.title()), titleWidth));
        canvas.textEnding(right, top - TITLE_MM, TEXT_MM, pageNumber);
        canvas.text(MARGIN_MM, top - 8, TEXT_MM, typeface.shortened(TEXT_MM, page.subtitle(), width));
        canvas.text(MARGIN_MM, top - 12, TEXT_MM, new TagLine(typeface, TEXT_MM, width).of(tag));
        canvas.pen(0.2, 0);
        canvas.line(MARGIN_MM, top - 13.5, right, top - 13.5);
        if (page.bars()) {
            bars(canvas);
            printer(canvas, scale.words(page.widthMm(), page.heightMm()));
        }
    }

    /** Along the left edge, beyond the scale bars. */
    private static void printer(Canvas canvas, List<String> words) throws IOException {
        double y = MARGIN_MM + BARS_MM + INCH_BAR_MM + 20;
        for (int i = 0; i < words.size(); i++) {
            canvas.text(MARGIN_MM + 2 + TEXT_MM / 3 + 5 * i, y, TEXT_MM, Math.PI / 2, words.get(i));
        }
    }

    private static String capital(String title) {
        return title.isEmpty() ? title : title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
    }

    private static void bars(Canvas canvas) throws IOException {
        double corner = MARGIN_MM + BARS_MM;
        across(canvas, corner, MARGIN_MM + 2, METRIC_BAR_MM, 10, "100 mm");
        across(canvas, corner, MARGIN_MM + 7, INCH_BAR_MM, 4, "4 in");
        up(canvas, MARGIN_MM + 2, corner, METRIC_BAR_MM, 10, "100 mm");
        up(canvas, MARGIN_MM + 7, corner, INCH_BAR_MM, 4, "4 in");
    }

    private static void across(Canvas canvas, double x, double y, double length, int parts, String text) throws IOException {
        canvas.pen(0.2, 0);
        canvas.line(x, y, x + length, y);
        for (int i = 0; i <= parts; i++) {
            double tick = i == 0 || i == parts ? 2 : 1;
            canvas.line(x + length * i / parts, y - tick / 2, x + length * i / parts, y + tick);
        }
        canvas.text(x + length + 2, y - TEXT_MM / 3, TEXT_MM, text + " when printed at 100 %");
    }

    private static void up(Canvas canvas, double x, double y, double length, int parts, String text) throws IOException {
        canvas.pen(0.2, 0);
        canvas.line(x, y, x, y + length);
        for (int i = 0; i <= parts; i++) {
            double tick = i == 0 || i == parts ? 2 : 1;
            canvas.line(x - tick / 2, y + length * i / parts, x + tick, y + length * i / parts);
        }
        canvas.text(x + TEXT_MM / 3, y + length + 2, TEXT_MM, Math.PI / 2, text);
    }
}

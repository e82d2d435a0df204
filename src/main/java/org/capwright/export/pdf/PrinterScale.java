package org.capwright.export.pdf;

import java.util.List;
import java.util.Locale;
import org.capwright.units.Length;

/**
 * How a printer's own error is put right on one kind of paper: everything is drawn larger or smaller by these factors, so
 * that lengths come out true.
 *
 * @param printer what the shop calls the printer
 * @param across factor along the paper's shorter side: true length over printed length
 * @param along factor along the paper's longer side
 */
public record PrinterScale(String printer, double across, double along) {
    /** Nothing to put right. */
    public static final PrinterScale NONE = new PrinterScale("", 1, 1);
    /** Largest error that is put right; beyond it somebody has "fit to page" on. Common practice, no source. */
    public static final double MOST = 0.01;

    /**
     * Whether a text may be a printer's name.
     *
     * @param text the text
     * @return true for 1 to 24 letters, digits, blanks, points, lines
     */
    public static boolean isName(String text) {
        return text.matches("[\\p{L}\\p{N} ._-]{1,24}");
    }

    /**
     * The scale that makes a bar true.
     *
     * @param bar which bar, for the message, such as {@code across}
     * @param drawn its true length
     * @param measured what it measures on paper
     * @return true length over measured length
     * @throws IllegalArgumentException beyond 1 %, with what to do
     */
    public static double factor(String bar, Length drawn, Length measured) {
        double error = measured.mm() / drawn.mm() - 1;
        if (!(Math.abs(error) <= MOST)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "the bar %s: %.2f mm (%.4f in) instead of %.2f mm (%.4f in) is %s"
                    + " by %.1f %%: \"fit to page\" is on. At most 1 %% can be put right. Print the page again at 100 %% (\"actual size\")"
                    + " and measure anew.", bar, measured.mm(), measured.inches(), drawn.mm(), drawn.inches(),
                    error < 0 ? "short" : "long", Math.abs(error) * 100));
        }
        return drawn.mm() / measured.mm();
    }

    /**
     * Whether anything is put right.
     *
     * @return false for {@link #NONE}
     */
    public boolean any() {
        return across != 1 || along != 1;
    }

    /** Factor along a page's x. */
    double x(double widthMm, double heightMm) {
        return widthMm > heightMm ? along : across;
    }

    /** Factor along a page's y. */
    double y(double widthMm, double heightMm) {
        return widthMm > heightMm ? across : along;
    }

    /** What a page says about it, in two lines. */
    List<String> words(double widthMm, double heightMm) {
        return any() ? List.of("for printer " + printer, String.format(Locale.ROOT, "drawn x %+.2f %%, y %+.2f %%",
                (x(widthMm, heightMm) - 1) * 100, (y(widthMm, heightMm) - 1) * 100))
                        : List.of("not corrected", "for any printer");
    }
}

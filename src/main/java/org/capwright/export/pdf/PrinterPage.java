package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.capwright.export.JobTag;
import org.capwright.geom.Bounds;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/** The page by which a printer is checked: one long bar each way, as long as whole centimetres or half inches allow. */
public final class PrinterPage {
    private static final double TEXT_MM = 2.8;
    private static final double LINE_MM = 5.5;
    private static final double TICK_MM = 6;
    private static final double INSET_MM = 16;
    private static final int DENOMINATOR = 64;

    private final Paper paper;
    private final UnitSystem units;
    private final ShopFormat format;

    private PrinterPage(Paper paper, UnitSystem units) {
        this.paper = paper;
        this.units = units;
        this.format = new ShopFormat(units, DENOMINATOR);
    }

    /**
     * Writes the page.
     *
     * @param file where to
     * @param paper the paper to check the printer with
     * @param units the units of the bars
     * @throws IOException if it can't be written
     */
    public static void write(Path file, Paper paper, UnitSystem units) throws IOException {
        PrinterPage page = new PrinterPage(paper, units);
        try (PdfBook book = new PdfBook("Printer check", new JobTag("printer check, no job", "", "none", List.of()))) {
            book.write(List.of(new PrintPage(paper.widthMm(), paper.heightMm(), "Printer check",
                    "two long bars at true size, nothing put right", page::paint)), file);
        }
    }

    /**
     * Length of the bar along the paper's shorter side.
     *
     * @param paper the paper
     * @param units the units it is a round number of
     * @return its true length
     */
    public static Length across(Paper paper, UnitSystem units) {
        return round(PageFrame.area(paper.widthMm(), paper.heightMm()).width() - INSET_MM, units);
    }

    /**
     * Length of the bar along the paper's longer side.
     *
     * @param paper the paper
     * @param units the units it is a round number of
     * @return its true length
     */
    public static Length along(Paper paper, UnitSystem units) {
        return round(PageFrame.area(paper.widthMm(), paper.heightMm()).height() - INSET_MM, units);
    }

    private static Length round(double roomMm, UnitSystem units) {
        double step = units == UnitSystem.INCH ? Length.MM_PER_INCH / 2 : 10;
        return Length.ofMm(Math.floor(roomMm / step) * step);
    }

    private void paint(Canvas canvas, Bounds area) throws IOException {
        Length across = across(paper, units);
        Length along = along(paper, units);
        double x = area.minX() + INSET_MM / 2;
        double y = area.minY() + INSET_MM / 2;
        canvas.pen(0.25, 0);
        canvas.line(x, y, x + across.mm(), y);
        canvas.line(x, y, x, y + along.mm());
        for (double at : new double[] {x, x + across.mm()}) {
            canvas.line(at, y - TICK_MM, at, y + TICK_MM);
        }
        for (double at : new double[] {y, y + along.mm()}) {
            canvas.line(x - TICK_MM, at, x + TICK_MM, at);
        }
        words(canvas, x + 2 * TICK_MM, area.maxY() - 2 * LINE_MM, across, along);
    }

    private void words(Canvas canvas, double x, double top, Length across, Length along) throws IOException {
        List<String> lines = List.of("Print this page at 100 % (\"actual size\") on the printer and paper to be checked.",
                "Measure both long bars, between the middles of their end marks, with a steel rule.", "",
                "across: " + format.length(across) + " true, measures ____________________",
                "along: " + format.length(along) + " true, measures ____________________", "",
                "Then type, with a name for the printer:",
                "capwright printer set NAME --paper " + paper + " --units " + (units == UnitSystem.INCH ? "in" : "mm"),
                "    --across MEASURED --along MEASURED", "",
                "From then on, cut --printer NAME draws everything so that it comes out true,",
                "and every page says by how much. Where both are right to 0.1 %, leave it.");
        double y = top;
        for (String line : lines) {
            canvas.text(x, y, TEXT_MM, line);
            y -= LINE_MM;
        }
    }
}

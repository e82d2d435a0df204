package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.export.JobTag;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.units.Length;
import org.capwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is put right for a printer, measured on the paths that were written. */
class PrinterScaleTest {
    /** A printer that draws 0.4 % short across the paper and 0.25 % long along it. */
    private static final PrinterScale PRINTER = new PrinterScale("office", 1 / 0.996, 1 / 1.0025);

    @TempDir
    private Path folder;

    /** As printed: what is in the file, shrunk and stretched as the printer does; upright and lying pages alike. */
    @Test
    void scaleBarsComeOutTrue() throws IOException {
        Cap cap = Cap.solve(Jobs.kiln());
        Path file = folder.resolve("templates.pdf");
        TemplateBook.write(file, Blanks.of(cap), new PrintSetup(Paper.LETTER, PRINTER), false,
                JobTag.of(cap.job(), "0123abcd", List.of()), Writing.of(cap).format());
        int lying = 0;
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                var box = document.getPage(i).getMediaBox();
                boolean wide = box.getWidth() > box.getHeight();
                lying += wide ? 1 : 0;
                bars(PageStrokes.lines(document.getPage(i)), wide ? 1.0025 : 0.996, wide ? 0.996 : 1.0025, i + 1);
                assertThat(Texts.of(document, i + 1).stream().map(Texts.Text::words)).contains("for printer office",
                        wide ? "drawn x -0.25 %, y +0.40 %" : "drawn x +0.40 %, y -0.25 %");
            }
        }
        assertThat(lying).isPositive();
    }

    private static void bars(List<PageStrokes.Line> lines, double printsX, double printsY, int page) {
        for (double bar : new double[] {100, 101.6}) {
            assertThat(lines).as("bar across, page " + page)
                    .anyMatch(line -> Math.abs(line.dx() * printsX - bar) < 0.01 && Math.abs(line.dy()) < 1e-3);
            assertThat(lines).as("bar up, page " + page)
                    .anyMatch(line -> Math.abs(line.dy() * printsY - bar) < 0.01 && Math.abs(line.dx()) < 1e-3);
        }
    }

    @Test
    void factorsUpToOnePercent() {
        assertThat(PrinterScale.factor("across", Length.ofMm(180), Length.ofMm(179.28))).isCloseTo(1 / 0.996, within(1e-12));
        assertThat(PrinterScale.factor("across", Length.ofMm(200), Length.ofMm(201.99))).isCloseTo(200 / 201.99, within(1e-12));
        assertThatThrownBy(() -> PrinterScale.factor("along", Length.ofMm(200), Length.ofMm(190)))
                .hasMessage("the bar along: 190.00 mm (7.4803 in) instead of 200.00 mm (7.8740 in) is short by 5.0 %: \"fit to page\" is on."
                        + " At most 1 % can be put right. Print the page again at 100 % (\"actual size\") and measure anew.");
    }

    @Test
    void thePageHasItsBars() throws IOException {
        for (Paper paper : List.of(Paper.LETTER, Paper.LEGAL, Paper.TABLOID, Paper.A4, Paper.A3)) {
            for (UnitSystem units : UnitSystem.values()) {
                Path file = folder.resolve("check.pdf");
                PrinterPage.write(file, paper, units);
                try (PDDocument document = Loader.loadPDF(file.toFile())) {
                    List<PageStrokes.Line> lines = PageStrokes.lines(document.getPage(0));
                    double across = PrinterPage.across(paper, units).mm();
                    double along = PrinterPage.along(paper, units).mm();
                    assertThat(across).isGreaterThan(150);
                    assertThat(lines).anyMatch(line -> Math.abs(line.dx() - across) < 0.005 && Math.abs(line.dy()) < 1e-3);
                    assertThat(lines).anyMatch(line -> Math.abs(line.dy() - along) < 0.005 && Math.abs(line.dx()) < 1e-3);
                    assertThat(document.getPage(0).getMediaBox().getWidth() * 25.4 / 72).isCloseTo(paper.widthMm(), within(0.01));
                }
            }
        }
    }
}

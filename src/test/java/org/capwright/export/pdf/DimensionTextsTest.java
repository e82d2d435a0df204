package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.export.JobTag;
import org.capwright.geom.Bounds;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Writing on dimensioned pages stays on the paper and off other writing. */
class DimensionTextsTest {
    private static final double EDGE_MM = 4;
    private static final double TOUCH_MM = 0.05;

    /** Where the scale bars lie, both ways: in the lower left corner, over 4 in long. */
    private static final List<Bounds> BARS = List.of(new Bounds(20, 8, 124, 18), new Bounds(8, 20, 18, 124));

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"LETTER, 18 in, 2, in", "A4, 18 in, 2, in", "ONE, 18 in, 2, in", "LETTER, 36 in, 4, in", "A4, 48 in, 6, mm", "LETTER, 8 in, 2, mm",
        "LETTER, 60 in, 6, in"})
    void dimensionedPages(Paper paper, String diameter, String leaves, String units) throws IOException {
        Cap cap = Cap.solve(Jobs.kilnWith(Map.of("stack.outsideDiameter", diameter, "leaves.count", leaves, "job.units", units,
                "gutter.insideWidth", "auto", "gutter.depth", "auto", "hood.aboveRim", "auto", "hood.beads[1].fromTop", "3 in")));
        Path file = folder.resolve("templates.pdf");
        TemplateBook.write(file, Blanks.of(cap), paper, true, JobTag.of(cap.job(), "0123abcd", List.of()), Writing.of(cap).format());
        List<Book.Sheet> sheets = Book.read(file);
        int dimensioned = 0;
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int i = 0; i < sheets.size(); i++) {
                if (sheets.get(i).title().contains("dimensions")) {
                    dimensioned++;
                    page(sheets.get(i), Texts.of(document, i + 1), paper + ", " + diameter + ", " + leaves + " leaves");
                }
            }
        }
        assertThat(dimensioned).isPositive();
    }

    private static void page(Book.Sheet sheet, List<Texts.Text> lines, String which) {
        Bounds paper = new Bounds(EDGE_MM, EDGE_MM, sheet.widthMm() - EDGE_MM, sheet.heightMm() - EDGE_MM);
        for (int i = 0; i < lines.size(); i++) {
            Texts.Text line = lines.get(i);
            Bounds box = line.box();
            assertThat(box.minX() >= paper.minX() && box.maxX() <= paper.maxX() && box.minY() >= paper.minY() && box.maxY() <= paper.maxY())
                    .as("%s on the paper: %s, page %d, %s", line, which, sheet.number(), sheet.title()).isTrue();
            if (!line.words().contains("100 mm") && !line.words().contains("4 in")) {
                assertThat(BARS).as("%s off the scale bars: %s, page %d", line, which, sheet.number()).noneMatch(box::intersects);
            }
            for (Texts.Text other : lines.subList(0, i)) {
                // the tiles' names lie under the drawing
                if (!line.words().matches("[A-Z]\\d+|empty, not printed") && !other.words()
                        .matches("[A-Z]\\d+|empty, not printed")) {
                    assertThat(box.grown(-TOUCH_MM).intersects(other.box().grown(-TOUCH_MM)))
                            .as("%s over %s: %s, page %d, %s", line, other, which, sheet.number(), sheet.title()).isFalse();
                }
            }
        }
    }
}

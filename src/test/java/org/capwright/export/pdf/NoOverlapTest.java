package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.export.CutFiles;
import org.capwright.export.Demos;
import org.capwright.part.Cap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * On no page of any demo does writing lie on other writing or on a line, run into its neighbour, or leave the printable
 * paper.
 */
class NoOverlapTest {
    private static final double TOUCH_MM = 0.1;
    private static final double EDGE_MM = 5;
    /** A word space of the largest writing is half as wide. */
    private static final double GAP_MM = 1.2;

    @TempDir
    private Path folder;

    static Stream<org.junit.jupiter.params.provider.Arguments> demosAndPapers() {
        return Demos.ALL.stream().flatMap(demo -> Stream.of(Paper.LETTER, Paper.A4)
                .map(paper -> org.junit.jupiter.params.provider.Arguments.of(demo, paper)));
    }

    @ParameterizedTest
    @MethodSource("demosAndPapers")
    void demos(String demo, Paper paper) throws IOException {
        Cap cap = Demos.cap(demo);
        CutFiles.write(folder, cap, List.of(), paper, false, "0123abcd");
        List<String> found = new ArrayList<>();
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
        }
        assertThat(files).hasSizeGreaterThan(5);
        for (Path file : files) {
            found.addAll(overlaps(file));
        }
        assertThat(found).isEmpty();
    }

    /** The finder finds what it should: writing on writing, a line through writing, writing off the paper. */
    @Test
    void theFinderFinds() throws IOException {
        Path file = folder.resolve("bad.pdf");
        try (PdfBook book = new PdfBook("Bad", new org.capwright.export.JobTag("job", "", "0123abcd", List.of()))) {
            book.write(List.of(new PrintPage(215.9, 279.4, "bad", "", (canvas, area) -> {
                canvas.text(60, 150, 3, "first words");
                canvas.text(65, 151, 3, 0.5, "turned words");
                canvas.text(60, 100, 3, "crossed");
                canvas.pen(0.2, 0);
                canvas.line(50, 95, 70, 107);
                canvas.text(210, 120, 3, "far out");
                canvas.text(60, 60, 3, "a cell");
                canvas.text(60 + canvas.width(3, "a cell") + 0.8, 60, 3, "its neighbour");
            })), file);
        }
        assertThat(overlaps(file)).hasSize(4);
    }

    static List<String> overlaps(Path file) throws IOException {
        List<String> found = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                String where = file.getFileName() + " page " + page + ": ";
                List<Texts.Text> texts = Texts.of(document, page);
                List<PageStrokes.Line> lines = PageStrokes.lines(document.getPage(page - 1));
                double width = document.getPage(page - 1).getMediaBox().getWidth() * 25.4 / 72;
                double height = document.getPage(page - 1).getMediaBox().getHeight() * 25.4 / 72;
                for (int i = 0; i < texts.size(); i++) {
                    Texts.Text text = texts.get(i);
                    texts.subList(0, i).stream().filter(other -> text.overlaps(other, TOUCH_MM))
                            .forEach(other -> found.add(where + text.words() + " on " + other.words()));
                    texts.stream().filter(other -> other != text && text.runsInto(other, GAP_MM))
                            .forEach(other -> found.add(where + text.words() + " runs into " + other.words()));
                    lines.stream().filter(line -> text.crossedBy(line.from(), line.to(), TOUCH_MM)).limit(1)
                            .forEach(line -> found.add(where + text.words() + " on a line from " + line.from() + " to "
                                    + line.to()));
                    if (text.corners(0).stream().anyMatch(p -> p.x() < EDGE_MM || p.y() < EDGE_MM || p.x() > width - EDGE_MM
                            || p.y() > height - EDGE_MM)) {
                        found.add(where + text.words() + " off the paper");
                    }
                }
            }
        }
        return found;
    }
}

package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.export.CutFiles;
import org.capwright.export.Demos;
import org.capwright.export.JobTag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Page breaks: no heading, no head of a table, no caution at the foot of a page. */
class FlowTest {
    @TempDir
    private Path folder;

    /** However much stands before it, a heading has its table's first row with it. */
    @Test
    void headingsStayWithTheirTables() throws IOException {
        for (int before = 0; before < 60; before++) {
            List<Block> blocks = new ArrayList<>();
            for (int i = 0; i < before; i++) {
                blocks.add(Block.Paragraph.plain("line " + i));
            }
            blocks.add(Block.Paragraph.heading("heading"));
            blocks.addAll(TableBlocks.of(List.of(1.0), List.of("head"), List.of(List.of("row 1"), List.of("row 2"))));
            List<List<String>> pages = pages(blocks);
            assertThat(pages).as(before + " lines before").anyMatch(page -> page.containsAll(List.of("heading", "head",
                    "row 1")));
        }
    }

    private List<List<String>> pages(List<Block> blocks) throws IOException {
        Path file = folder.resolve("flow.pdf");
        try (PdfBook book = new PdfBook("Flow", new JobTag("job", "", "0123abcd", List.of()))) {
            book.write(Flow.pages(blocks, Paper.LETTER, "Flow", "", book.typeface()), file);
        }
        return words(file);
    }

    private static List<List<String>> words(Path file) throws IOException {
        List<List<String>> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                pages.add(Texts.of(document, page).stream().map(Texts.Text::words).toList());
            }
        }
        return pages;
    }

    /** A step of the build sheet is on one page: pages begin with a step's heading. */
    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "grain-dryer-hall", "bakery-oven-room"})
    void stepsAreNotTorn(String demo) throws IOException {
        CutFiles.write(folder, Demos.cap(demo), List.of(), Paper.LETTER, false, "0123abcd");
        for (List<String> page : words(folder.resolve("build-sheet.pdf"))) {
            int head = page.indexOf("100 mm when printed at 100 %");
            List<String> inside = page.subList(head, page.size());
            assertThat(inside.stream().filter(text -> !text.contains("100 mm") && !text.contains("4 in")
                    && !text.contains("corrected") && !text.contains("any printer")).findFirst().orElseThrow())
                            .matches("\\d+  .*");
        }
    }

    @Test
    void whatIsTallerThanAPageIsTornAllTheSame() throws IOException {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            blocks.add(new TickBlock("step " + i, i < 99));
        }
        List<List<String>> pages = pages(blocks);
        assertThat(pages).hasSizeGreaterThan(1);
        assertThat(pages.stream().flatMap(List::stream).filter(text -> text.startsWith("step"))).hasSize(100);
    }
}

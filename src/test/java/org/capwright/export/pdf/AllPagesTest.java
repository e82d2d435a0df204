package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.export.CutFiles;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every page of every PDF: size of the paper, job, stamp, page number, printer. */
class AllPagesTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Paper.class)
    void sizeAndTag(Paper paper) throws IOException {
        Cap cap = Cap.solve(Jobs.kiln());
        CutFiles.write(folder, cap, List.of(), paper, false, "0123abcd");
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
        }
        assertThat(files).extracting(file -> file.getFileName().toString())
                .contains("build-sheet.pdf", "cards.pdf", "cut-list.pdf",
                "layout.pdf", "sign-off-sheet.pdf", "station-strips.pdf", "templates.pdf");
        for (Path file : files) {
            try (PDDocument document = Loader.loadPDF(file.toFile())) {
                pages(document, paper, file.getFileName().toString());
            }
        }
    }

    private static void pages(PDDocument document, Paper paper, String name) throws IOException {
        int count = document.getNumberOfPages();
        assertThat(count).as(name).isPositive();
        for (int i = 0; i < count; i++) {
            String which = name + " page " + (i + 1) + " on " + paper;
            List<String> words = Texts.of(document, i + 1).stream().map(Texts.Text::words).toList();
            assertThat(words).as(which).contains("page " + (i + 1) + " of " + count, "not corrected", "for any printer")
                    .anyMatch(text -> text.endsWith("stamp 0123abcd"));
            double width = document.getPage(i).getMediaBox().getWidth() * 25.4 / 72;
            double height = document.getPage(i).getMediaBox().getHeight() * 25.4 / 72;
            if (paper != Paper.ONE || !name.equals("templates.pdf")) {
                assertThat(Math.min(width, height)).as(which).isCloseTo(paper.widthMm(), within(0.01));
                assertThat(Math.max(width, height)).as(which).isCloseTo(paper.heightMm(), within(0.01));
            }
        }
    }
}

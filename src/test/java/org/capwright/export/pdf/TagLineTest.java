package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.export.JobTag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The head of a page holds whatever a job is called. */
class TagLineTest {
    private static final double RIGHT_MM = 215.9 - PageFrame.MARGIN_MM;
    private static final String LONG = "Exhaust of the large spray and drying hall of the north works, second stack from the east, ".repeat(4);

    @TempDir
    private Path folder;

    private List<Texts.Text> head(JobTag tag) throws IOException {
        Path file = folder.resolve("page.pdf");
        try (PdfBook book = new PdfBook("Book", tag)) {
            book.write(List.of(new PrintPage(215.9, 279.4, "title " + LONG, "subtitle " + LONG, (canvas, area) -> { })), file);
        }
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            List<Texts.Text> texts = Texts.of(document, 1);
            assertThat(texts).allMatch(text -> text.box().maxX() <= RIGHT_MM + 0.01, "on the paper");
            return texts;
        }
    }

    @Test
    void aShortNameIsWhole() throws IOException {
        assertThat(head(new JobTag("Kiln", "B", "0123abcd", List.of()))).extracting(Texts.Text::words)
                .contains("Kiln, revision B, stamp 0123abcd");
    }

    @Test
    void aLongNameIsShortenedTheStampIsNot() throws IOException {
        assertThat(head(new JobTag(LONG, LONG, "0123abcd", List.of()))).extracting(Texts.Text::words)
                .anyMatch(text -> text.matches("Exhaust of .*\u2026, revision Exhaust of .*\u2026, stamp 0123abcd"))
                .anyMatch(text -> text.matches("Title Exhaust of .*\u2026"))
                        .anyMatch(text -> text.matches("subtitle Exhaust.*\u2026"))
                .contains("page 1 of 1");
    }

    @Test
    void foulsComeFirstAndAreNeverLeftOut() throws IOException {
        assertThat(head(new JobTag(LONG, "", "0123abcd", List.of("leaf 1 to hood " + LONG, "two", "three"))))
                .extracting(Texts.Text::words)
                .anyMatch(text -> text.matches("FOUL: leaf 1 to hood .*\u2026; and 2 more\\. Exhaust .*\u2026, stamp 0123abcd"));
        assertThat(head(new JobTag("Kiln", "", "0123abcd", List.of("one", "two")))).extracting(Texts.Text::words)
                .contains("FOUL: one; two. Kiln, stamp 0123abcd");
    }

    @Test
    void linesOfANameAreOneLine() throws IOException {
        assertThat(head(new JobTag("Kiln\nroom", "", "0123abcd", List.of()))).extracting(Texts.Text::words)
                .contains("Kiln room, stamp 0123abcd");
    }
}

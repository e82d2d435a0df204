package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.export.JobTag;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.store.JobStamp;

/** A templates file written and read back. */
record Book(Cap cap, List<Blank> blanks, JobTag tag, List<Sheet> sheets) {
    private static final double MM_PER_POINT = 25.4 / 72;

    /** A page read back. */
    record Sheet(int number, double widthMm, double heightMm, String text, List<PageStrokes.Piece> pieces) {
        /** The title, the first line of the page. */
        String title() {
            return text.lines().findFirst().orElse("");
        }
    }

    static Book kiln(Path folder, Paper paper, boolean whole, Map<String, String> typed) throws IOException {
        return of(folder, Cap.solve(Jobs.kilnWith(typed)), paper, whole);
    }

    static Book of(Path folder, Cap cap, Paper paper, boolean whole) throws IOException {
        List<Blank> blanks = Blanks.of(cap);
        JobTag tag = JobTag.of(cap.job(), JobStamp.of(cap.job().text()), List.of());
        Path file = folder.resolve("templates-" + paper + ".pdf");
        TemplateBook.write(file, blanks, paper, whole, tag, Writing.of(cap).format());
        return new Book(cap, blanks, tag, read(file));
    }

    static List<Sheet> read(Path file) throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(false);
                stripper.setStartPage(i + 1);
                stripper.setEndPage(i + 1);
                var box = document.getPage(i).getMediaBox();
                sheets.add(new Sheet(i + 1, box.getWidth() * MM_PER_POINT, box.getHeight() * MM_PER_POINT,
                        stripper.getText(document), PageStrokes.pieces(document.getPage(i))));
            }
        }
        return sheets;
    }

    Blank blank(String id) {
        return blanks.stream().filter(blank -> blank.id().equals(id)).findFirst().orElseThrow();
    }

    List<Sheet> titled(String beginning) {
        return sheets.stream().filter(sheet -> sheet.title().startsWith(beginning)).toList();
    }
}

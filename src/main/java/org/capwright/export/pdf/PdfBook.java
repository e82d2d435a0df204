package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.capwright.export.JobTag;

/** A PDF file in the making. */
final class PdfBook implements AutoCloseable {
    private static final double POINTS_PER_MM = 72 / 25.4;

    private final PDDocument document = new PDDocument();
    private final JobTag tag;
    private final PrinterScale scale;
    private final Typeface typeface;

    PdfBook(String title, JobTag tag) throws IOException {
        this(title, tag, PrinterScale.NONE);
    }

    PdfBook(String title, JobTag tag, PrinterScale scale) throws IOException {
        this.tag = tag;
        this.scale = scale;
        this.typeface = new Typeface(document);
        document.getDocumentInformation().setTitle(title + ", " + tag.name());
        document.getDocumentInformation().setSubject("stamp " + tag.stamp());
        document.getDocumentInformation().setCreator("Capwright");
    }

    Typeface typeface() {
        return typeface;
    }

    /** Draws all pages and saves the file. */
    void write(List<PrintPage> pages, Path file) throws IOException {
        for (int i = 0; i < pages.size(); i++) {
            write(pages.get(i), i + 1, pages.size());
        }
        // pages are compressed by themselves; packing the few objects between them costs more time than it saves space
        document.save(file.toFile(), CompressParameters.NO_COMPRESSION);
    }

    private void write(PrintPage page, int number, int count) throws IOException {
        PDPage sheet = new PDPage(new PDRectangle(points(page.widthMm()), points(page.heightMm())));
        document.addPage(sheet);
        try (Canvas canvas = new Canvas(new PDPageContentStream(document, sheet), typeface)) {
            canvas.scale(scale.x(page.widthMm(), page.heightMm()), scale.y(page.widthMm(), page.heightMm()),
                    page.widthMm() / 2, page.heightMm() / 2);
            PageFrame.paint(canvas, page, tag, scale, number, count);
            page.painting().paint(canvas, PageFrame.area(page.widthMm(), page.heightMm(), page.bars()));
        }
    }

    private static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}

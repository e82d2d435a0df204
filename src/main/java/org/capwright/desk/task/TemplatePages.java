package org.capwright.desk.task;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.capwright.desk.session.Solved;
import org.capwright.export.JobTag;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.TemplateBook;

/** The pages of the templates as they will print: written for real, each drawn when it is looked at. For one thread. */
public final class TemplatePages implements AutoCloseable {
    private static final float DOTS_PER_INCH = 96;

    private final PDDocument document;

    private TemplatePages(PDDocument document) {
        this.document = document;
    }

    /**
     * Writes the templates of a cap.
     *
     * @param solved the cap
     * @param paper the paper to print on
     * @return their pages
     */
    public static TemplatePages of(Solved solved, Paper paper) {
        try {
            Path file = Files.createTempFile("capwright-pages", ".pdf");
            try {
                JobTag tag = JobTag.of(solved.cap().job(), solved.stamp(), solved.checks());
                TemplateBook.write(file, solved.blanks(), paper, false, tag, solved.format());
                return new TemplatePages(Loader.loadPDF(Files.readAllBytes(file)));
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * How many pages.
     *
     * @return the number
     */
    public int count() {
        return document.getNumberOfPages();
    }

    /**
     * Draws a page.
     *
     * @param index which, from 0
     * @return the page
     */
    public Image image(int index) {
        try {
            return image(new PDFRenderer(document).renderImageWithDPI(index, DOTS_PER_INCH));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Image image(BufferedImage page) {
        int width = page.getWidth();
        int height = page.getHeight();
        WritableImage image = new WritableImage(width, height);
        int[] pixels = page.getRGB(0, 0, width, height, null, 0, width);
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] |= 0xff000000;
        }
        image.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        return image;
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

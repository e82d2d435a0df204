package org.capwright.desk.task;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.concurrent.Task;
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

/** Draws the pages of the templates as they will print: writes them for real and looks at the result. */
public final class PageTask extends Task<List<Image>> {
    private static final float DOTS_PER_INCH = 90;

    private final Solved solved;
    private final Paper paper;
    private final boolean whole;

    /**
     * The task.
     *
     * @param solved the cap
     * @param paper the paper to print on
     * @param whole whether long parts are drawn at true size as a whole too
     */
    public PageTask(Solved solved, Paper paper, boolean whole) {
        this.solved = solved;
        this.paper = paper;
        this.whole = whole;
    }

    @Override
    protected List<Image> call() throws IOException {
        Path file = Files.createTempFile("capwright-pages", ".pdf");
        try {
            JobTag tag = JobTag.of(solved.cap().job(), solved.stamp(), solved.checks());
            TemplateBook.write(file, solved.blanks(), paper, whole, tag, solved.format());
            return images(file);
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private List<Image> images(Path file) throws IOException {
        List<Image> images = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            int pages = document.getNumberOfPages();
            for (int i = 0; i < pages && !isCancelled(); i++) {
                updateProgress(i, pages);
                images.add(image(renderer.renderImageWithDPI(i, DOTS_PER_INCH)));
            }
        }
        return images;
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
}

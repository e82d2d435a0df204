package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.capwright.geom.Bounds;

/** Lines of writing on a page as they were shown, with their boxes in millimetres from the lower left corner. */
final class Words extends PDFTextStripper {
    private static final double MM_PER_POINT = 25.4 / 72;

    /** Height of capitals as a share of the size of type. */
    private static final double CAPITALS = 0.729;

    /** A line of writing. */
    record Line(String text, Bounds box, boolean upright) {
    }

    private final List<List<TextPosition>> shown = new ArrayList<>();
    private List<TextPosition> current;

    private Words() {
    }

    static List<List<Line>> of(Path file) throws IOException {
        List<List<Line>> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                Words words = new Words();
                words.setSuppressDuplicateOverlappingText(false);
                words.setStartPage(page);
                words.setEndPage(page);
                words.getText(document);
                pages.add(words.shown.stream().filter(line -> !line.isEmpty()).map(Words::line).toList());
            }
        }
        return pages;
    }

    @Override
    public void beginText() throws IOException {
        super.beginText();
        current = new ArrayList<>();
        shown.add(current);
    }

    @Override
    protected void processTextPosition(TextPosition text) {
        current.add(text);
        super.processTextPosition(text);
    }

    private static Line line(List<TextPosition> letters) {
        StringBuilder text = new StringBuilder();
        Bounds box = null;
        boolean upright = false;
        for (TextPosition letter : letters) {
            text.append(letter.getUnicode());
            Matrix m = letter.getTextMatrix();
            upright = Math.abs(m.getShearY()) > Math.abs(m.getScaleX());
            double x = m.getTranslateX() * MM_PER_POINT;
            double y = m.getTranslateY() * MM_PER_POINT;
            double wide = letter.getWidthDirAdj() * MM_PER_POINT;
            double high = CAPITALS * Math.hypot(m.getScaleY(), m.getShearX()) * MM_PER_POINT;
            Bounds one = upright ? new Bounds(x - high, y, x, y + wide) : new Bounds(x, y, x + wide, y + high);
            box = box == null ? one : box.union(one);
        }
        return new Line(text.toString(), box, upright);
    }
}

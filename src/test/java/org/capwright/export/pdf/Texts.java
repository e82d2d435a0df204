package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/** Lines of writing on a page as they were shown, in millimetres from the lower left corner, whichever way they run. */
final class Texts extends PDFTextStripper {
    private static final double MM = 25.4 / 72;
    /** Height of capitals as a share of the size of type: Liberation Sans, 1409 of 2048 in the font's own table OS/2. */
    private static final double CAPITALS = 1409 / 2048.0;

    /** A line of writing: where it begins, which way it runs (length 1), its length, the height of its capitals. */
    record Text(String words, Vec2 at, Vec2 along, double length, double height) {
        /** A point in the frame of the writing: along it, above its base line. */
        Vec2 local(Vec2 p) {
            Vec2 off = p.minus(at);
            return new Vec2(off.dot(along), off.dot(along.left()));
        }

        /** The upright rectangle round it. */
        Bounds box() {
            List<Vec2> corners = corners(0);
            return new Bounds(corners.stream().mapToDouble(Vec2::x).min().orElseThrow(),
                    corners.stream().mapToDouble(Vec2::y).min().orElseThrow(),
                    corners.stream().mapToDouble(Vec2::x).max().orElseThrow(),
                    corners.stream().mapToDouble(Vec2::y).max().orElseThrow());
        }

        /** Whether another begins on the same base line so near behind this one that both read as one. */
        boolean runsInto(Text other, double gapMm) {
            Vec2 begins = local(other.at);
            return along.distance(other.along) < 1e-6 && Math.abs(begins.y()) < height / 2 && begins.x() > length / 2
                    && begins.x() < length + gapMm;
        }

        List<Vec2> corners(double shrink) {
            Vec2 a = at.plus(along.times(shrink)).plus(along.left().times(shrink));
            Vec2 across = along.times(length - 2 * shrink);
            Vec2 up = along.left().times(height - 2 * shrink);
            return List.of(a, a.plus(across), a.plus(across).plus(up), a.plus(up));
        }

        /** Whether two boxes share room: no side of either separates them. */
        boolean overlaps(Text other, double shrink) {
            return !separates(other, shrink) && !other.separates(this, shrink);
        }

        private boolean separates(Text other, double shrink) {
            List<Vec2> corners = other.corners(shrink).stream().map(this::local).toList();
            return corners.stream().allMatch(p -> p.x() <= shrink) || corners.stream().allMatch(p -> p.x() >= length - shrink)
                    || corners.stream().allMatch(p -> p.y() <= shrink) || corners.stream()
                            .allMatch(p -> p.y() >= height - shrink);
        }

        /** Whether a straight line runs through the box. */
        boolean crossedBy(Vec2 from, Vec2 to, double shrink) {
            Vec2 a = local(from);
            Vec2 b = local(to);
            return new java.awt.geom.Rectangle2D.Double(shrink, shrink, length - 2 * shrink, height - 2 * shrink)
                    .intersectsLine(a.x(), a.y(), b.x(), b.y());
        }
    }

    private final List<List<TextPosition>> shown = new ArrayList<>();

    private Texts() {
    }

    static List<Text> of(PDDocument document, int page) throws IOException {
        Texts texts = new Texts();
        texts.setSuppressDuplicateOverlappingText(false);
        texts.setStartPage(page);
        texts.setEndPage(page);
        texts.getText(document);
        return texts.shown.stream().filter(line -> !line.isEmpty()).map(Texts::text).toList();
    }

    @Override
    public void beginText() throws IOException {
        super.beginText();
        shown.add(new ArrayList<>());
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
        shown.get(shown.size() - 1).add(letter);
        super.processTextPosition(letter);
    }

    private static Text text(List<TextPosition> letters) {
        StringBuilder words = new StringBuilder();
        letters.forEach(letter -> words.append(letter.getUnicode()));
        Matrix first = letters.get(0).getTextMatrix();
        double size = Math.hypot(first.getScaleX(), first.getShearY());
        Vec2 along = new Vec2(first.getScaleX() / size, first.getShearY() / size);
        Vec2 at = new Vec2(first.getTranslateX() * MM, first.getTranslateY() * MM);
        TextPosition last = letters.get(letters.size() - 1);
        Vec2 end = new Vec2(last.getTextMatrix().getTranslateX() * MM, last.getTextMatrix().getTranslateY() * MM);
        double wide = last.getWidthDirAdj() * MM;
        return new Text(words.toString(), at, along, end.minus(at).dot(along) + wide, CAPITALS * size * MM);
    }
}

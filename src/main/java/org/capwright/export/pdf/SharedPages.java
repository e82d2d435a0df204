package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/** Small patterns at true size, several on a page, in rows. */
final class SharedPages {
    private static final double GAP_MM = 8;
    private static final double TEXT_MM = 2.4;
    private static final double LINE_MM = 4;

    private SharedPages() {
    }

    /**
     * A small pattern.
     *
     * @param captions lines above it
     * @param drawing the drawing it is a part of
     * @param window which part
     */
    record Item(List<String> captions, Drawing drawing, Bounds window) {
        double heightMm() {
            return window.height() + captions.size() * LINE_MM + 2;
        }
    }

    private record Placed(Item item, double x, double top) {
    }

    /** A row: items side by side below a height, none taller than the first. */
    private static final class Row {
        private final List<Placed> placed = new ArrayList<>();
        private final double top;
        private final double heightMm;
        private double x;

        Row(double left, double top, double heightMm) {
            this.x = left;
            this.top = top;
            this.heightMm = heightMm;
        }

        boolean add(Item item, double widthMm, double right) {
            if (item.heightMm() > heightMm || !placed.isEmpty() && x + widthMm > right) {
                return false;
            }
            placed.add(new Placed(item, x, top));
            x += widthMm + GAP_MM;
            return true;
        }
    }

    /** Whether a pattern fits on a page. */
    static boolean fits(Bounds window, Paper paper) {
        Bounds area = PageFrame.area(paper.widthMm(), paper.heightMm());
        return window.width() <= area.width() && window.height() + 4 * LINE_MM <= area.height();
    }

    /** The pages: the tallest first, each in the first row that has room for it. */
    static List<PrintPage> pages(List<Item> items, Paper paper, Typeface typeface) throws IOException {
        return pages(items, paper, typeface, "small patterns, true size",
                "each with its part, number to cut, metal, thickness and the face that is up");
    }

    /** The same under a title of their own. */
    static List<PrintPage> pages(List<Item> items, Paper paper, Typeface typeface, String title,
            String subtitle) throws IOException {
        Bounds area = PageFrame.area(paper.widthMm(), paper.heightMm());
        List<List<Row>> pages = new ArrayList<>();
        for (Item item : items.stream().sorted(Comparator.comparingDouble(Item::heightMm).reversed()).toList()) {
            double width = width(item, typeface);
            boolean placed = pages.stream().flatMap(List::stream).anyMatch(row -> row.add(item, width, area.maxX()));
            if (!placed) {
                newRow(pages, item, area).add(item, width, area.maxX());
            }
        }
        return pages.stream().map(rows -> page(rows.stream().flatMap(row -> row.placed.stream()).toList(), paper, title,
                subtitle)).toList();
    }

    private static Row newRow(List<List<Row>> pages, Item item, Bounds area) {
        for (List<Row> rows : pages) {
            Row last = rows.get(rows.size() - 1);
            double top = last.top - last.heightMm - GAP_MM;
            if (top - item.heightMm() >= area.minY()) {
                Row row = new Row(area.minX(), top, item.heightMm());
                rows.add(row);
                return row;
            }
        }
        Row row = new Row(area.minX(), area.maxY(), item.heightMm());
        pages.add(new ArrayList<>(List.of(row)));
        return row;
    }

    private static double width(Item item, Typeface typeface) throws IOException {
        double width = item.window().width();
        for (String caption : item.captions()) {
            width = Math.max(width, typeface.widthMm(TEXT_MM, caption));
        }
        return width;
    }

    private static PrintPage page(List<Placed> placed, Paper paper, String title, String subtitle) {
        return new PrintPage(paper.widthMm(), paper.heightMm(), title, subtitle, (canvas, area) -> {
                    for (Placed one : placed) {
                        paint(canvas, one);
                    }
                });
    }

    private static void paint(Canvas canvas, Placed placed) throws IOException {
        Item item = placed.item();
        double y = placed.top() - TEXT_MM;
        for (String caption : item.captions()) {
            canvas.text(placed.x(), y, TEXT_MM, caption);
            y -= LINE_MM;
        }
        double top = placed.top() - item.captions().size() * LINE_MM - 1;
        Bounds window = item.window();
        Bounds onPage = new Bounds(placed.x(), top - window.height(), placed.x() + window.width(), top);
        Placement placement = Placement.trueSize(new Vec2(window.minX(), window.minY()), new Vec2(onPage.minX(), onPage.minY()));
        canvas.within(onPage.grown(0.3));
        DrawingPainter.lines(canvas, item.drawing(), placement);
        List<Label> labels = item.drawing().labels().stream().filter(label -> window.contains(label.at())).toList();
        DrawingPainter.writing(canvas, labels, placement, onPage);
        canvas.everywhere();
    }
}

package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.capwright.drawing.Drawing;
import org.capwright.drawing.Label;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/** Small patterns at true size, several on a page: in rows, and under each other where a row has room. */
final class SharedPages {
    private static final double GAP_MM = 8;
    private static final double TEXT_MM = 2.4;
    private static final double LINE_MM = 4;

    private SharedPages() {
    }

    /**
     * A small pattern.
     *
     * @param part name of the part it belongs to
     * @param captions lines above it
     * @param drawing the drawing it is a part of
     * @param window which part
     */
    record Item(String part, List<String> captions, Drawing drawing, Bounds window) {
        double heightMm() {
            return window.height() + captions.size() * LINE_MM + 2;
        }
    }

    /**
     * A page and what is on it.
     *
     * @param page the page
     * @param parts names of the parts whose patterns are on it
     */
    record Shared(PrintPage page, Set<String> parts) {
    }

    private record Placed(Item item, double x, double top) {
    }

    /** Items under each other, none wider than the first. */
    private static final class Column {
        private final double x;
        private final double widthMm;
        private double top;

        Column(double x, double top, double widthMm) {
            this.x = x;
            this.top = top;
            this.widthMm = widthMm;
        }
    }

    /** A row of columns side by side below a height, none taller than its first item. */
    private static final class Row {
        private final List<Placed> placed = new ArrayList<>();
        private final List<Column> columns = new ArrayList<>();
        private final double top;
        private final double heightMm;
        private double x;

        Row(double left, double top, double heightMm) {
            this.x = left;
            this.top = top;
            this.heightMm = heightMm;
        }

        boolean add(Item item, double widthMm, double right) {
            Column column = columns.stream().filter(one -> widthMm <= one.widthMm && one.top - item.heightMm() >= top - heightMm)
                    .findFirst().orElse(null);
            if (column == null) {
                if (item.heightMm() > heightMm || !columns.isEmpty() && x + widthMm > right) {
                    return false;
                }
                column = new Column(x, top, widthMm);
                columns.add(column);
                x += widthMm + GAP_MM;
            }
            placed.add(new Placed(item, column.x, column.top));
            column.top -= item.heightMm() + GAP_MM;
            return true;
        }
    }

    /** Whether a pattern fits on a page. */
    static boolean fits(Bounds window, Paper paper) {
        Bounds area = PageFrame.area(paper.widthMm(), paper.heightMm());
        return window.width() <= area.width() && window.height() + 4 * LINE_MM <= area.height();
    }

    /** The pages: the tallest first, each in the first row that has room for it. */
    static List<Shared> pages(List<Item> items, Paper paper, Typeface typeface) throws IOException {
        return pages(items, paper, typeface, "small patterns, true size",
                "each with its part, number to cut, metal, thickness and the face that is up");
    }

    /** The same under a title of their own. */
    static List<Shared> pages(List<Item> items, Paper paper, Typeface typeface, String title,
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
        return pages.stream().map(rows -> rows.stream().flatMap(row -> row.placed.stream()).toList())
                .map(placed -> new Shared(page(placed, paper, title, subtitle),
                        placed.stream().map(one -> one.item().part()).collect(Collectors.toSet()))).toList();
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

package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.capwright.drawing.Drawing;
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

    /** Whether a pattern fits on a page. */
    static boolean fits(Bounds window, Paper paper) {
        Bounds area = PageFrame.area(paper.widthMm(), paper.heightMm());
        return window.width() <= area.width() && window.height() + 4 * LINE_MM <= area.height();
    }

    /** The pages: the tallest first, row after row. */
    static List<PrintPage> pages(List<Item> items, Paper paper, Typeface typeface) throws IOException {
        Bounds area = PageFrame.area(paper.widthMm(), paper.heightMm());
        List<Item> tallestFirst = items.stream().sorted(Comparator.comparingDouble(Item::heightMm).reversed()).toList();
        List<PrintPage> pages = new ArrayList<>();
        List<Placed> page = new ArrayList<>();
        double x = area.minX();
        double top = area.maxY();
        double rowHeight = 0;
        for (Item item : tallestFirst) {
            double width = width(item, typeface);
            if (x > area.minX() && x + width > area.maxX()) {
                x = area.minX();
                top -= rowHeight + GAP_MM;
                rowHeight = 0;
            }
            if (top - item.heightMm() < area.minY()) {
                pages.add(page(List.copyOf(page), paper));
                page.clear();
                x = area.minX();
                top = area.maxY();
            }
            page.add(new Placed(item, x, top));
            rowHeight = Math.max(rowHeight, item.heightMm());
            x += width + GAP_MM;
        }
        if (!page.isEmpty()) {
            pages.add(page(List.copyOf(page), paper));
        }
        return pages;
    }

    private static double width(Item item, Typeface typeface) throws IOException {
        double width = item.window().width();
        for (String caption : item.captions()) {
            width = Math.max(width, typeface.widthMm(TEXT_MM, caption));
        }
        return width;
    }

    private static PrintPage page(List<Placed> placed, Paper paper) {
        return new PrintPage(paper.widthMm(), paper.heightMm(), "small patterns, true size",
                "each with its part, number to cut, metal, thickness and the face that is up", (canvas, area) -> {
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
        DrawingPainter.writing(canvas, item.drawing(), placement);
        canvas.everywhere();
    }
}

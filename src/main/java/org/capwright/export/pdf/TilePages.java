package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/** A blank at true size, on one page or on tiles that overlap. */
final class TilePages {
    private static final double CROSS_MM = 4;
    private static final double TEXT_MM = 2.2;
    private static final double BESIDE_MM = 1;

    private TilePages() {
    }

    /** The tiling with the fewest pages, paper upright or lying. */
    static Tiling tiling(Blank blank, Paper paper) {
        Tiling upright = tiling(blank, PageFrame.area(paper.widthMm(), paper.heightMm()));
        Tiling lying = tiling(blank, PageFrame.area(paper.heightMm(), paper.widthMm()));
        return lying.tiles().size() < upright.tiles().size() ? lying : upright;
    }

    /** One tile as large as the blank, as long as a PDF page can be that large. */
    static Tiling onePage(Blank blank) {
        Bounds bounds = blank.drawing().bounds().grown(1);
        Bounds least = PageFrame.area(Paper.ONE.widthMm(), Paper.ONE.heightMm());
        Bounds frame = PageFrame.paperAround(0, 0);
        return Tiling.of(blank.drawing(), size(bounds.width(), least.width(), frame.width()),
                size(bounds.height(), least.height(), frame.height()));
    }

    /**
     * ISO 32000-1 lets a page be 14 400 units of 1/72 in: 5080 mm. The paper is a whole number of units: some readers round it,
     * and then shrink what is on it to fit.
     */
    private static double size(double mm, double leastMm, double frameMm) {
        double most = 5000;
        double unit = 25.4 / 72;
        double paper = Math.min(Math.max(mm, leastMm), most) + frameMm;
        return Math.ceil(paper / unit - 1e-6) * unit - frameMm;
    }

    private static Tiling tiling(Blank blank, Bounds area) {
        return Tiling.of(blank.drawing(), area.width(), area.height());
    }

    /** The pages of the tiles. */
    static List<PrintPage> pages(Blank blank, Tiling tiling, String subtitle) {
        Bounds paper = PageFrame.paperAround(tiling.widthMm(), tiling.heightMm());
        List<PrintPage> pages = new ArrayList<>();
        for (Tiling.Tile tile : tiling.tiles()) {
            String title = tiling.tiles().size() == 1 ? blank.name() : blank.name() + ", tile " + tile.name();
            pages.add(new PrintPage(paper.width(), paper.height(), title + ", true size", subtitle,
                    (canvas, area) -> paint(canvas, area, blank, tiling, tile)));
        }
        return pages;
    }

    private static void paint(Canvas canvas, Bounds area, Blank blank, Tiling tiling, Tiling.Tile tile) throws IOException {
        Placement placement = Placement.trueSize(corner(tile.window()), corner(area));
        canvas.within(area);
        DrawingPainter.lines(canvas, blank.drawing(), placement);
        List<Tiling.Cross> crosses = tiling.crosses().stream().filter(cross -> tile.window().contains(cross.at())).toList();
        for (Tiling.Cross cross : crosses) {
            cross(canvas, placement.apply(cross.at()));
        }
        LabelPlacer placer = new LabelPlacer(canvas, area);
        for (Tiling.Cross cross : crosses) {
            Vec2 at = placement.apply(cross.at());
            placer.write(at.plus(new Vec2(BESIDE_MM, BESIDE_MM)), TEXT_MM, 0, Integer.toString(cross.number()));
        }
        DrawingPainter.writing(canvas, blank.drawing().labels().stream().filter(label -> tiling.owner(label.at()).equals(tile))
                .toList(),
                placement, area);
        canvas.everywhere();
        if (tiling.tiles().size() > 1) {
            canvas.pen(0.1, 0.6f, 2, 2);
            canvas.box(area);
        }
    }

    private static Vec2 corner(Bounds bounds) {
        return new Vec2(bounds.minX(), bounds.minY());
    }

    private static void cross(Canvas canvas, Vec2 at) throws IOException {
        canvas.pen(0.13, 0);
        canvas.line(at.x() - CROSS_MM, at.y(), at.x() + CROSS_MM, at.y());
        canvas.line(at.x(), at.y() - CROSS_MM, at.x(), at.y() + CROSS_MM);
    }
}

package org.capwright.export.pdf;

import java.io.IOException;
import java.util.Optional;
import org.capwright.blank.Blank;
import org.capwright.drawing.Station;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.units.ShopFormat;

/** A page with a whole blank, not to scale, its running dimensions, and where its tiles lie if it has any. */
final class DimensionedPage {
    private static final double BELOW_NOTES_MM = 6;
    private static final double TEXT_MM = 2.6;
    private static final double LINE_MM = 4.6;
    private static final double NAME_MM = 3;

    private final Blank blank;
    private final Optional<Tiling> tiling;
    private final ShopFormat format;
    private final double leftMm;
    private final double belowMm;

    private DimensionedPage(Blank blank, Optional<Tiling> tiling, ShopFormat format, Typeface typeface) {
        this.blank = blank;
        this.tiling = tiling;
        this.format = format;
        this.leftMm = RunningDimensions.roomMm(blank.drawing(), Station.Side.LEFT, typeface, format);
        this.belowMm = RunningDimensions.roomMm(blank.drawing(), Station.Side.BOTTOM, typeface, format);
    }

    /** The page, on the side of the paper that shows the blank larger. */
    static PrintPage of(Blank blank, Optional<Tiling> tiling, Paper paper, Typeface typeface, ShopFormat format,
            String subtitle) {
        DimensionedPage page = new DimensionedPage(blank, tiling, format, typeface);
        boolean wide = page.scale(paper.heightMm(), paper.widthMm()) > page.scale(paper.widthMm(), paper.heightMm());
        return new PrintPage(wide ? paper.heightMm() : paper.widthMm(), wide ? paper.widthMm() : paper.heightMm(),
                blank.name() + ": dimensions" + (tiling.isPresent() ? " and tiles" : "") + ", not to scale", subtitle,
                        page::paint);
    }

    private double scale(double widthMm, double heightMm) {
        return Placement.fitting(whole(), box(PageFrame.area(widthMm, heightMm))).scale();
    }

    /** What must fit: the blank, and its tiles. */
    private Bounds whole() {
        Bounds drawing = blank.drawing().bounds();
        return tiling.map(t -> t.tiles().stream().map(Tiling.Tile::window).reduce(drawing, Bounds::union)).orElse(drawing);
    }

    private Bounds box(Bounds area) {
        return new Bounds(area.minX() + leftMm, area.minY() + belowMm, area.maxX() - 4,
                area.maxY() - (blank.notes().size() + (tiling.isPresent() ? 2 : 1)) * LINE_MM - BELOW_NOTES_MM);
    }

    private void paint(Canvas canvas, Bounds area) throws IOException {
        notes(canvas, area);
        Placement placement = Placement.fitting(whole(), box(area));
        if (tiling.isPresent()) {
            tiles(canvas, tiling.get(), placement, false);
        }
        RunningDimensions.paint(canvas, blank.drawing(), whole(), placement, format);
        DrawingPainter.lines(canvas, blank.drawing(), placement);
        if (tiling.isPresent()) {
            tiles(canvas, tiling.get(), placement, true);
        }
    }

    private void notes(Canvas canvas, Bounds area) throws IOException {
        double y = area.maxY() - LINE_MM;
        for (String note : blank.notes()) {
            canvas.text(area.minX(), y, TEXT_MM, note);
            y -= LINE_MM;
        }
        canvas.text(area.minX(), y, TEXT_MM, "Distances run from the left edge and from the lower edge.");
        if (tiling.isPresent()) {
            canvas.text(area.minX(), y - LINE_MM, TEXT_MM,
                    "Lay the tiles by their crosses: crosses with the same number lie on each other.");
        }
    }

    private static void tiles(Canvas canvas, Tiling tiling, Placement placement, boolean names) throws IOException {
        for (int row = 0; row < tiling.rows(); row++) {
            for (int column = 0; column < tiling.columns(); column++) {
                if (names) {
                    name(canvas, tiling, placement, row, column);
                } else {
                    tile(canvas, tiling, placement, row, column);
                }
            }
        }
    }

    private static void tile(Canvas canvas, Tiling tiling, Placement placement, int row, int column) throws IOException {
        Tiling.Tile tile = tiling.at(row, column);
        Bounds core = placement.apply(tiling.core(tile));
        boolean printed = tiling.printed(row, column);
        if (!printed) {
            canvas.fill(core, 0.93f);
        }
        canvas.pen(0.15, 0.6f, 1.5f, 1.5f);
        canvas.box(core);
    }

    /** Its name, and whether it is printed, off everything else. */
    private static void name(Canvas canvas, Tiling tiling, Placement placement, int row, int column) throws IOException {
        Tiling.Tile tile = tiling.at(row, column);
        Bounds core = placement.apply(tiling.core(tile));
        LabelPlacer placer = new LabelPlacer(canvas, core);
        double width = canvas.width(NAME_MM, tile.name());
        placer.write(new Vec2(core.maxX() - 1.5 - width, core.minY() + 1.5), NAME_MM, 0, tile.name());
        if (!tiling.printed(row, column)) {
            String words = "empty, not printed";
            Vec2 middle = core.center();
            placer.write(new Vec2(middle.x() - canvas.width(2, words) / 2, middle.y()), 2, 0, words);
        }
    }
}

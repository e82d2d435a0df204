package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.capwright.blank.StationStrip;
import org.capwright.export.JobTag;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/**
 * Writes station strips at true size, cut into tiles, several tiles one above the other on a page, upright or lying,
 * whichever takes fewer pages.
 */
public final class StripBook {
    /** Length of a station's line. */
    static final double TICK_MM = 10;
    private static final double LEADER_MM = 6;
    private static final double TEXT_MM = 2.1;
    private static final double PITCH_MM = 3.7;
    private static final double TITLE_MM = 5;
    private static final double CROSS_MM = 2.5;
    private static final double CROSS_CLEAR_MM = CROSS_MM + 0.7;
    private static final double CROSS_STEP_MM = 0.5;
    private static final double AROUND_MM = 12;
    private static final double NUMBER_MM = 1.8;
    private static final double GAP_MM = 4;
    private static final double OVERLAP_MM = Tiling.OVERLAP_MM;

    private final double widthMm;
    private final double heightMm;
    private final ShopFormat format;
    private final Bounds area;

    private StripBook(double widthMm, double heightMm, ShopFormat format) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.format = format;
        this.area = PageFrame.area(widthMm, heightMm);
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param strips what to draw
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, List<StationStrip> strips, PrintSetup setup, JobTag tag,
            ShopFormat format) throws IOException {
        try (PdfBook book = new PdfBook("Station strips", tag, setup.scale())) {
            List<PrintPage> upright = new StripBook(setup.paper().widthMm(), setup.paper().heightMm(), format)
                    .pages(strips, book.typeface());
            List<PrintPage> lying = new StripBook(setup.paper().heightMm(), setup.paper().widthMm(), format)
                    .pages(strips, book.typeface());
            book.write(lying.size() < upright.size() ? lying : upright, file);
        }
    }

    /** A tile: its number and what of the strip it shows. */
    private record Tile(int number, int count, double fromMm, double toMm) {
        boolean owns(double atMm) {
            return (number == 1 || atMm >= fromMm + OVERLAP_MM / 2) && (number == count || atMm < toMm - OVERLAP_MM / 2);
        }
    }

    /** A tile of a strip on its row: the row's upper edge and height. */
    private record Row(StationStrip strip, Tile tile, double top, double heightMm) {
    }

    private List<PrintPage> pages(List<StationStrip> strips, Typeface typeface) {
        List<PrintPage> pages = new ArrayList<>();
        List<Row> page = new ArrayList<>();
        double top = area.maxY();
        for (StationStrip strip : strips) {
            for (Tile tile : tiles(strip)) {
                double height = rowMm(strip, tile, typeface);
                if (top - height < area.minY() && !page.isEmpty()) {
                    pages.add(page(List.copyOf(page)));
                    page.clear();
                    top = area.maxY();
                }
                page.add(new Row(strip, tile, top, height));
                top -= height + GAP_MM;
            }
        }
        pages.add(page(List.copyOf(page)));
        return pages;
    }

    private List<Tile> tiles(StationStrip strip) {
        double room = area.width() - 2;
        int count = Math.max(1, (int) Math.ceil((strip.lengthMm() - OVERLAP_MM) / (room - OVERLAP_MM)));
        List<Tile> tiles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double from = i * (room - OVERLAP_MM);
            tiles.add(new Tile(i + 1, count, from, Math.min(from + room, strip.lengthMm())));
        }
        return tiles;
    }

    private double rowMm(StationStrip strip, Tile tile, Typeface typeface) {
        double longest = owned(strip, tile).stream().mapToDouble(mark -> typeface.widthMm(TEXT_MM, words(mark))).max().orElse(0);
        return TITLE_MM + TICK_MM + LEADER_MM + longest + 1;
    }

    /** The marks that are named on a tile. */
    private static List<StationStrip.Mark> owned(StationStrip strip, Tile tile) {
        return strip.marks().stream().filter(mark -> tile.owns(mark.atMm())).toList();
    }

    private String words(StationStrip.Mark mark) {
        return format.length(Length.ofMm(mark.atMm())) + "  " + mark.what();
    }

    private PrintPage page(List<Row> rows) {
        return new PrintPage(widthMm, heightMm, "Station strips, true size",
                "lay tiles by their crosses; distances run from each strip's"
                + " left end; paper adds about 0.3 mm to a whole turn", (canvas, box) -> {
                    for (Row row : rows) {
                        paint(canvas, row.strip(), row.tile(), box.minX() + 1, row.top(), row.heightMm());
                    }
                });
    }

    private void paint(Canvas canvas, StationStrip strip, Tile tile, double left, double top, double rowMm) throws IOException {
        double base = top - rowMm;
        double x = left - tile.fromMm();
        canvas.text(left, top - TEXT_MM, TEXT_MM, strip.name() + ", " + strip.face().words() + ", tile " + tile.number()
                + " of " + tile.count() + ", whole strip "
                + format.length(Length.ofMm(strip.lengthMm())));
        canvas.pen(DrawingStyle.WIDE_MM, 0);
        canvas.line(x + tile.fromMm(), base, x + tile.toMm(), base);
        ticks(canvas, strip, tile, x, base);
        labels(canvas, strip, tile, x, base);
        if (tile.number() > 1) {
            cross(canvas, x + crossMm(strip, tile.fromMm() + OVERLAP_MM / 2), base + TICK_MM / 2, tile.number() - 1);
        }
        if (tile.number() < tile.count()) {
            cross(canvas, x + crossMm(strip, tile.toMm() - OVERLAP_MM / 2), base + TICK_MM / 2, tile.number());
        }
    }

    /** Where a cross stands: in the middle of an overlap, or as near to it as keeps it off the stations' lines. */
    private static double crossMm(StationStrip strip, double middleMm) {
        double best = middleMm;
        double most = OVERLAP_MM / 2 - CROSS_MM;
        for (double off = 0; off <= most && room(strip, best) < CROSS_CLEAR_MM; off += CROSS_STEP_MM) {
            for (double at : new double[] {middleMm - off, middleMm + off}) {
                best = room(strip, at) > room(strip, best) + 1e-9 ? at : best;
            }
        }
        return best;
    }

    private static double room(StationStrip strip, double atMm) {
        return strip.marks().stream().mapToDouble(mark -> Math.abs(mark.atMm() - atMm)).min().orElse(Double.MAX_VALUE);
    }

    private static void ticks(Canvas canvas, StationStrip strip, Tile tile, double x, double base) throws IOException {
        canvas.pen(DrawingStyle.NARROW_MM, 0);
        for (StationStrip.Mark mark : strip.marks()) {
            if (mark.atMm() >= tile.fromMm() - 1e-6 && mark.atMm() <= tile.toMm() + 1e-6) {
                canvas.line(x + mark.atMm(), base, x + mark.atMm(), base + TICK_MM);
            }
        }
    }

    private void labels(Canvas canvas, StationStrip strip, Tile tile, double x, double base) throws IOException {
        List<StationStrip.Mark> marks = owned(strip, tile);
        List<Double> wanted = marks.stream().map(mark -> x + mark.atMm()).toList();
        List<Double> placed = LabelSpread.within(LabelSpread.spread(wanted, PITCH_MM), PITCH_MM, area.minX() + PITCH_MM / 2,
                area.maxX() - PITCH_MM / 2);
        canvas.pen(DrawingStyle.NARROW_MM, DrawingStyle.PALE);
        for (int i = 0; i < marks.size(); i++) {
            canvas.line(wanted.get(i), base + TICK_MM, placed.get(i), base + TICK_MM + LEADER_MM - 1);
            canvas.text(placed.get(i) + TEXT_MM / 2, base + TICK_MM + LEADER_MM, TEXT_MM, Math.PI / 2, words(marks.get(i)));
        }
    }

    private static void cross(Canvas canvas, double x, double y, int number) throws IOException {
        canvas.pen(DrawingStyle.NARROW_MM, 0);
        canvas.line(x - CROSS_MM, y, x + CROSS_MM, y);
        canvas.line(x, y - CROSS_MM, x, y + CROSS_MM);
        new LabelPlacer(canvas, new Bounds(x - AROUND_MM, y - TICK_MM / 2, x + AROUND_MM, y + TICK_MM / 2 + LEADER_MM))
                .write(new Vec2(x + 1, y + 1), NUMBER_MM, 0, Integer.toString(number));
    }
}

package org.capwright.export.pdf;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import org.capwright.geom.Bounds;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;
import org.capwright.stock.nest.ShearCut;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** A page with one nested sheet to a round scale: its parts with number and name, its remnant, its size, its shear cuts. */
final class SheetPage {
    private static final List<Integer> SCALES = List.of(1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 24, 25, 30, 32, 40, 50, 60, 80,
            100);
    private static final List<Double> LETTERS_MM = List.of(2.5, 2.1, 1.8);
    private static final double SIZE_ROOM_MM = 7;
    private static final double PAST_MM = 3;
    private static final float REST_GREY = 0.45f;

    private final SheetLayout layout;
    private final ShopFormat format;
    private final int scale;
    private Placement placement;
    private Bounds sheet;

    private SheetPage(SheetLayout layout, ShopFormat format, int scale) {
        this.layout = layout;
        this.format = format;
        this.scale = scale;
    }

    /** The page, paper lying. */
    static PrintPage of(SheetLayout layout, String title, Paper paper, ShopFormat format, Typeface typeface) {
        Bounds area = PageFrame.area(paper.heightMm(), paper.widthMm());
        double need = Math.max(layout.size().lengthMm() / (area.width() - SIZE_ROOM_MM - PAST_MM),
                layout.size().widthMm() / (area.height() - SIZE_ROOM_MM - PAST_MM));
        int scale = SCALES.stream().filter(one -> one >= need).findFirst().orElse((int) Math.ceil(need));
        SheetPage page = new SheetPage(layout, format, scale);
        return new PrintPage(paper.heightMm(), paper.widthMm(), title, "scale 1:" + scale + ", not true size; "
                + SheetWords.of(layout, format), page::paint);
    }

    /** The pieces in the order of their numbers: from the left, then from below. */
    static List<org.capwright.stock.nest.Placement> numbered(SheetLayout layout) {
        return layout.placements().stream().sorted(Comparator
                .comparingDouble((org.capwright.stock.nest.Placement one) -> Math.rint(one.outline().bounds().minX()))
                .thenComparingDouble(one -> one.outline().bounds().minY())).toList();
    }

    private void paint(Canvas canvas, Bounds area) throws IOException {
        Bounds whole = new Bounds(0, 0, layout.size().lengthMm(), layout.size().widthMm());
        Vec2 corner = new Vec2(area.minX() + SIZE_ROOM_MM, area.maxY() - PAST_MM - whole.height() / scale);
        placement = new Placement(1.0 / scale, corner);
        sheet = placement.apply(whole);
        canvas.pen(DrawingStyle.WIDE_MM, 0);
        canvas.box(sheet);
        pieces(canvas);
        cuts(canvas);
        rest(canvas);
        names(canvas);
        size(canvas);
    }

    private void pieces(Canvas canvas) throws IOException {
        canvas.pen(DrawingStyle.NARROW_MM, 0);
        for (org.capwright.stock.nest.Placement piece : layout.placements()) {
            canvas.path(piece.outline(), placement);
            for (Path hole : piece.holes()) {
                canvas.path(hole, placement);
            }
        }
    }

    private void cuts(Canvas canvas) throws IOException {
        canvas.pen(DrawingStyle.NARROW_MM / 2, DrawingStyle.PALE, 2, 1);
        for (ShearCut cut : layout.cuts()) {
            Vec2 from = placement.apply(cut.from());
            Vec2 to = placement.apply(cut.to());
            canvas.line(from.x(), from.y(), to.x(), to.y());
        }
    }

    private void rest(Canvas canvas) throws IOException {
        if (layout.remnant().isPresent()) {
            canvas.pen(DrawingStyle.NARROW_MM, REST_GREY, 5, 1.5f);
            canvas.box(placement.apply(layout.remnant().get()).grown(-0.6));
        }
    }

    /** Numbers and names of pieces; numbers of cuts beside their middles. */
    private void names(Canvas canvas) throws IOException {
        List<org.capwright.stock.nest.Placement> pieces = numbered(layout);
        for (int i = 0; i < pieces.size(); i++) {
            Bounds box = placement.apply(pieces.get(i).outline().bounds());
            String number = Integer.toString(i + 1);
            if (!inside(canvas, box, number + "  " + pieces.get(i).piece().name()) && !inside(canvas, box, number)) {
                beside(canvas, new Vec2(box.maxX() + 0.8, box.center().y()), number);
            }
        }
        for (int i = 0; i < layout.cuts().size(); i++) {
            ShearCut cut = layout.cuts().get(i);
            Vec2 middle = placement.apply(cut.from().plus(cut.to()).times(0.5));
            beside(canvas, middle.plus(new Vec2(0.8, 0.8)), "C" + (i + 1));
        }
        if (layout.remnant().isPresent()) {
            inside(canvas, placement.apply(layout.remnant().get()), "remnant");
        }
    }

    /** In the middle, along the longer side, as large as there is room for. */
    private boolean inside(Canvas canvas, Bounds box, String text) throws IOException {
        boolean upright = box.height() > box.width();
        for (double letters : LETTERS_MM) {
            double back = canvas.width(letters, text) / 2;
            Vec2 at = box.center().plus(upright ? new Vec2(letters / 2, -back) : new Vec2(-back, -letters / 2));
            if (2 * back < Math.max(box.width(), box.height())
                    && new LabelPlacer(canvas, box).writeIfRoom(at, letters, upright ? Math.PI / 2 : 0, text)) {
                return true;
            }
        }
        return false;
    }

    private void beside(Canvas canvas, Vec2 at, String text) throws IOException {
        double letters = LETTERS_MM.get(LETTERS_MM.size() - 1);
        new LabelPlacer(canvas, sheet).writeIfRoom(at.minus(new Vec2(0, letters / 2)), letters, 0, text);
    }

    private void size(Canvas canvas) throws IOException {
        double letters = DrawingStyle.TEXT_MM;
        canvas.textAround(sheet.center().x(), sheet.minY() - letters - 2, letters,
                format.length(Length.ofMm(layout.size().lengthMm())) + ", along the grain");
        String width = format.length(Length.ofMm(layout.size().widthMm()));
        canvas.text(sheet.minX() - 2, sheet.center().y() - canvas.width(letters, width) / 2, letters, Math.PI / 2, width);
    }
}

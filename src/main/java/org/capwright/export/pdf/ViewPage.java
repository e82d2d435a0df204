package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.layout.View;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/**
 * A page with one view at the largest standard scale that fits, its dimensions below and on the left, its references in columns
 * beside it.
 */
final class ViewPage {
    private static final double TOP_MM = 4;

    private final View view;
    private final ShopFormat format;
    private final Typeface typeface;

    private ViewPage(View view, ShopFormat format, Typeface typeface) {
        this.view = view;
        this.format = format;
        this.typeface = typeface;
    }

    /** The page, paper lying. */
    static PrintPage of(View view, Paper paper, ShopFormat format, Typeface typeface) {
        ViewPage page = new ViewPage(view, format, typeface);
        Frame frame = page.frame(PageFrame.area(paper.heightMm(), paper.widthMm()));
        String remark = view.remark().isEmpty() ? "" : view.remark() + "; ";
        return new PrintPage(paper.heightMm(), paper.widthMm(), "Layout: " + view.title() + ", " + frame.scale().words(),
                remark + "written dimensions hold; bends drawn sharp", (canvas, area) -> page.paint(canvas, area, frame));
    }

    /** Where the view lies and at which scale, its dimensions placed, and the room left for it. */
    private record Frame(DrawingScale scale, Placement placement, List<SpanTiers.Placed> below, List<SpanTiers.Placed> left,
            Bounds room) {
        boolean fits(View view) {
            Bounds outline = placement.apply(view.bounds());
            return outline.width() <= room.width() && outline.height() <= room.height();
        }
    }

    private Frame frame(Bounds area) {
        for (DrawingScale scale : DrawingScale.standard(format.system())) {
            Frame frame = settled(area, scale);
            if (frame.fits(view)) {
                return frame;
            }
        }
        Bounds room = room(area, spans(View.Side.BELOW).size(), spans(View.Side.LEFT).size());
        return settled(area, DrawingScale.odd(Placement.fitting(view.bounds(), room).scale()));
    }

    /** The first guess gives every dimension a tier of its own; then it is known how many there are. */
    private Frame settled(Bounds area, DrawingScale scale) {
        Frame guess = frame(area, scale, spans(View.Side.BELOW).size(), spans(View.Side.LEFT).size());
        return frame(area, scale, tiers(guess.below()), tiers(guess.left()));
    }

    private Frame frame(Bounds area, DrawingScale scale, int tiersBelow, int tiersLeft) {
        Bounds room = room(area, tiersBelow, tiersLeft);
        Placement placement = new Placement(scale.factor(), room.center().minus(view.bounds().center().times(scale.factor())));
        return new Frame(scale, placement, place(View.Side.BELOW, placement, area), place(View.Side.LEFT, placement, area), room);
    }

    private Bounds room(Bounds area, int tiersBelow, int tiersLeft) {
        double left = Math.max(widthMm(tiersLeft), NoteColumn.widthMm(view, false, typeface));
        double right = NoteColumn.widthMm(view, true, typeface);
        return new Bounds(area.minX() + left, area.minY() + widthMm(tiersBelow), area.maxX() - right, area.maxY() - TOP_MM);
    }

    private static double widthMm(int tiers) {
        return tiers == 0 ? 2 : DrawingStyle.FIRST_MM + (tiers - 1) * DrawingStyle.TIER_MM + DrawingStyle.TEXT_MM + 2;
    }

    private void paint(Canvas canvas, Bounds area, Frame frame) throws IOException {
        for (View.Line line : view.lines()) {
            DrawingPainter.pen(canvas, line.kind());
            canvas.path(line.path(), frame.placement());
        }
        SpanPainter painter = new SpanPainter(canvas, frame.placement(), frame.placement().apply(view.bounds()));
        painter.paint(spans(View.Side.BELOW), frame.below(), View.Side.BELOW, this::words);
        painter.paint(spans(View.Side.LEFT), frame.left(), View.Side.LEFT, this::words);
        for (boolean right : new boolean[] {true, false}) {
            new NoteColumn(canvas, frame.placement(), area, view, right).paint();
        }
    }

    private static int tiers(List<SpanTiers.Placed> placed) {
        return placed.stream().mapToInt(one -> one.tier() + 1).max().orElse(0);
    }

    private List<View.Span> spans(View.Side side) {
        return view.spans().stream().filter(span -> span.side() == side).toList();
    }

    private List<SpanTiers.Placed> place(View.Side side, Placement placement, Bounds area) {
        List<SpanTiers.Wanted> wanted = new ArrayList<>();
        List<View.Span> spans = spans(side);
        boolean below = side == View.Side.BELOW;
        for (int i = 0; i < spans.size(); i++) {
            View.Span span = spans.get(i);
            Vec2 from = placement.apply(new Vec2(span.fromMm(), span.fromMm()));
            Vec2 to = placement.apply(new Vec2(span.toMm(), span.toMm()));
            wanted.add(new SpanTiers.Wanted(i, below ? from.x() : from.y(), below ? to.x() : to.y(),
                    typeface.widthMm(DrawingStyle.TEXT_MM, words(span))));
        }
        return SpanTiers.place(wanted, below ? area.minX() : area.minY(), below ? area.maxX() : area.maxY());
    }

    private String words(View.Span span) {
        return span.prefix() + format.length(Length.ofMm(span.mm()));
    }
}

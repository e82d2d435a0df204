package org.capwright.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.layout.View;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** A page with one view as large as fits, its dimensions below and on the left, its references in a column on the right. */
final class ViewPage {
    private static final double LEADER_MM = 10;
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
        return new PrintPage(paper.heightMm(), paper.widthMm(), "Layout: " + view.title(),
                "not to scale, written dimensions hold; bends drawn sharp", page::paint);
    }

    /** Room beside the view, and how large the view is in it. */
    private record Frame(Placement placement, List<SpanTiers.Placed> below, List<SpanTiers.Placed> left) {
    }

    private void paint(Canvas canvas, Bounds area) throws IOException {
        Frame frame = frame(area, count(View.Side.BELOW), count(View.Side.LEFT));
        // the first guess gave every dimension a tier of its own; now it is known how many there are
        frame = frame(area, tiers(frame.below()), tiers(frame.left()));
        for (View.Line line : view.lines()) {
            DrawingPainter.pen(canvas, line.kind());
            canvas.path(line.path(), frame.placement());
        }
        SpanPainter painter = new SpanPainter(canvas, frame.placement(), frame.placement().apply(view.bounds()));
        painter.paint(spans(View.Side.BELOW), frame.below(), View.Side.BELOW, this::words);
        painter.paint(spans(View.Side.LEFT), frame.left(), View.Side.LEFT, this::words);
        notes(canvas, area, frame.placement());
    }

    private int count(View.Side side) {
        return spans(side).size();
    }

    private static int tiers(List<SpanTiers.Placed> placed) {
        return placed.stream().mapToInt(one -> one.tier() + 1).max().orElse(0);
    }

    private List<View.Span> spans(View.Side side) {
        return view.spans().stream().filter(span -> span.side() == side).toList();
    }

    private Frame frame(Bounds area, int tiersBelow, int tiersLeft) throws IOException {
        double column = 0;
        for (View.Note note : view.notes()) {
            column = Math.max(column, typeface.widthMm(DrawingStyle.TEXT_MM, note.words()));
        }
        Bounds box = new Bounds(area.minX() + room(tiersLeft), area.minY() + room(tiersBelow),
                area.maxX() - column - LEADER_MM - 2,
                area.maxY() - TOP_MM);
        Placement placement = Placement.fitting(view.bounds(), box);
        return new Frame(placement, place(View.Side.BELOW, placement, area), place(View.Side.LEFT, placement, area));
    }

    private static double room(int tiers) {
        return tiers == 0 ? 2 : DrawingStyle.FIRST_MM + (tiers - 1) * DrawingStyle.TIER_MM + DrawingStyle.TEXT_MM + 2;
    }

    private List<SpanTiers.Placed> place(View.Side side, Placement placement, Bounds area) throws IOException {
        List<SpanTiers.Wanted> wanted = new ArrayList<>();
        List<View.Span> spans = spans(side);
        for (int i = 0; i < spans.size(); i++) {
            View.Span span = spans.get(i);
            Vec2 from = placement.apply(new Vec2(span.fromMm(), span.fromMm()));
            Vec2 to = placement.apply(new Vec2(span.toMm(), span.toMm()));
            boolean across = side == View.Side.BELOW;
            wanted.add(new SpanTiers.Wanted(i, across ? from.x() : from.y(), across ? to.x() : to.y(),
                    typeface.widthMm(DrawingStyle.TEXT_MM, words(span))));
        }
        boolean below = side == View.Side.BELOW;
        return SpanTiers.place(wanted, below ? area.minX() : area.minY(), below ? area.maxX() : area.maxY());
    }

    private String words(View.Span span) {
        return span.prefix() + format.length(Length.ofMm(span.mm()));
    }

    private void notes(Canvas canvas, Bounds area, Placement placement) throws IOException {
        List<View.Note> sorted = view.notes().stream().sorted(Comparator.comparingDouble((View.Note note) -> note.at().y())
                .thenComparingDouble(note -> -note.at().x())).toList();
        List<Double> wanted = sorted.stream().map(note -> placement.apply(note.at()).y()).toList();
        List<Double> placed = LabelSpread.within(LabelSpread.spread(wanted, DrawingStyle.ROW_MM), DrawingStyle.ROW_MM,
                area.minY() + DrawingStyle.TEXT_MM, area.maxY() - DrawingStyle.TEXT_MM);
        double x = placement.apply(view.bounds()).maxX() + LEADER_MM;
        for (int i = 0; i < sorted.size(); i++) {
            Vec2 at = placement.apply(sorted.get(i).at());
            canvas.pen(DrawingStyle.NARROW_MM / 2, DrawingStyle.PALE);
            canvas.line(at.x(), at.y(), x - 1, placed.get(i));
            canvas.dot(at, 0.5);
            canvas.text(x, placed.get(i) - DrawingStyle.TEXT_MM / 2, DrawingStyle.TEXT_MM, sorted.get(i).words());
        }
    }
}

package org.capwright.export.pdf;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.capwright.layout.View;

/** Draws placed dimensions: extension lines, dimension line, arrowheads, value. */
final class SpanPainter {
    private final Canvas canvas;
    private final Placement placement;
    private final Bounds outline;

    SpanPainter(Canvas canvas, Placement placement, Bounds outline) {
        this.canvas = canvas;
        this.placement = placement;
        this.outline = outline;
    }

    void paint(List<View.Span> spans, List<SpanTiers.Placed> placed, View.Side side, Function<View.Span,
            String> words) throws IOException {
        for (SpanTiers.Placed one : placed) {
            View.Span span = spans.get(one.wanted().index());
            if (side == View.Side.BELOW) {
                below(span, one, words.apply(span));
            } else {
                left(span, one, words.apply(span));
            }
        }
    }

    private static double off(SpanTiers.Placed placed) {
        return DrawingStyle.FIRST_MM + placed.tier() * DrawingStyle.TIER_MM;
    }

    private void below(View.Span span, SpanTiers.Placed placed, String words) throws IOException {
        double y = outline.minY() - off(placed);
        SpanTiers.Wanted ends = placed.wanted();
        canvas.pen(DrawingStyle.NARROW_MM / 2, DrawingStyle.PALE);
        canvas.line(ends.from(), reachY(span.fromReachMm()), ends.from(), y - DrawingStyle.PASS_MM);
        canvas.line(ends.to(), reachY(span.toReachMm()), ends.to(), y - DrawingStyle.PASS_MM);
        canvas.pen(DrawingStyle.NARROW_MM, 0);
        canvas.line(placed.lineFrom(), y, placed.lineTo(), y);
        Vec2 out = new Vec2(ends.tight() ? -1 : 1, 0);
        canvas.arrow(new Vec2(ends.to(), y), out);
        canvas.arrow(new Vec2(ends.from(), y), out.times(-1));
        canvas.text(placed.textFrom(), y + DrawingStyle.OVER_MM, DrawingStyle.TEXT_MM, words);
    }

    private double reachY(double y) {
        return placement.apply(new Vec2(0, y)).y() - DrawingStyle.GAP_MM;
    }

    private void left(View.Span span, SpanTiers.Placed placed, String words) throws IOException {
        double x = outline.minX() - off(placed);
        SpanTiers.Wanted ends = placed.wanted();
        canvas.pen(DrawingStyle.NARROW_MM / 2, DrawingStyle.PALE);
        canvas.line(reachX(span.fromReachMm()), ends.from(), x - DrawingStyle.PASS_MM, ends.from());
        canvas.line(reachX(span.toReachMm()), ends.to(), x - DrawingStyle.PASS_MM, ends.to());
        canvas.pen(DrawingStyle.NARROW_MM, 0);
        canvas.line(x, placed.lineFrom(), x, placed.lineTo());
        Vec2 out = new Vec2(0, ends.tight() ? -1 : 1);
        canvas.arrow(new Vec2(x, ends.to()), out);
        canvas.arrow(new Vec2(x, ends.from()), out.times(-1));
        canvas.text(x - DrawingStyle.OVER_MM, placed.textFrom(), DrawingStyle.TEXT_MM, Math.PI / 2, words);
    }

    private double reachX(double x) {
        return placement.apply(new Vec2(x, 0)).x() - DrawingStyle.GAP_MM;
    }
}

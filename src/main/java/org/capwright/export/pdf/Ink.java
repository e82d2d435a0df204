package org.capwright.export.pdf;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/** What has been drawn on a page so far, as straight lines, so that writing can keep off it. */
final class Ink {
    private static final double WORD_SPACE_MM = 1;

    private final List<Vec2> from = new ArrayList<>();
    private final List<Vec2> to = new ArrayList<>();

    void line(Vec2 a, Vec2 b) {
        from.add(a);
        to.add(b);
    }

    void polyline(List<Vec2> points) {
        for (int i = 1; i < points.size(); i++) {
            line(points.get(i - 1), points.get(i));
        }
    }

    void box(Bounds box) {
        Vec2 low = new Vec2(box.minX(), box.minY());
        Vec2 right = new Vec2(box.maxX(), box.minY());
        Vec2 high = new Vec2(box.maxX(), box.maxY());
        Vec2 left = new Vec2(box.minX(), box.maxY());
        polyline(List.of(low, right, high, left, low));
    }

    /** Writing, with a word space at its ends: its edges and its diagonals, so that nothing small slips in. */
    void writing(Vec2 begin, double lengthMm, double heightMm, double turnRad) {
        Vec2 at = begin.minus(Vec2.polar(WORD_SPACE_MM, turnRad));
        Vec2 across = Vec2.polar(lengthMm + 2 * WORD_SPACE_MM, turnRad);
        Vec2 up = Vec2.polar(heightMm, turnRad + Math.PI / 2);
        polyline(List.of(at, at.plus(across), at.plus(across).plus(up), at.plus(up), at, at.plus(across).plus(up)));
        line(at.plus(across), at.plus(up));
    }

    /** The ink near a box, as it looks in a frame that begins at a point and runs in a direction. */
    List<Vec2[]> near(Bounds box, Vec2 origin, double turnRad) {
        List<Vec2[]> near = new ArrayList<>();
        Rectangle2D frame = new Rectangle2D.Double(box.minX(), box.minY(), box.width(), box.height());
        for (int i = 0; i < from.size(); i++) {
            if (frame.intersectsLine(from.get(i).x(), from.get(i).y(), to.get(i).x(), to.get(i).y())) {
                near.add(new Vec2[] {from.get(i).minus(origin).rotated(-turnRad), to.get(i).minus(origin).rotated(-turnRad)});
            }
        }
        return near;
    }
}

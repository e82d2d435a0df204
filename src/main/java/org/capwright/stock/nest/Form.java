package org.capwright.stock.nest;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;
import org.locationtech.jts.geom.Polygon;

/** A piece in one of its turns, covered, grown by half the spacing and moved so that its bounds begin at the origin. */
final class Form {
    /** Its number among all forms of a nest. */
    final int index;
    final int turns;
    final List<Convex> parts;
    /** Size of its bounds. */
    final double width;
    final double height;
    /** From its bounds' corner to the piece's own origin. */
    final Vec2 origin;

    private Form(int index, int turns, List<List<Vec2>> parts) {
        Bounds bounds = Bounds.of(parts.stream().flatMap(List::stream).toList());
        Vec2 corner = new Vec2(bounds.minX(), bounds.minY());
        this.index = index;
        this.turns = turns;
        this.parts = parts.stream().map(part -> Convex.of(part.stream().map(p -> p.minus(corner)).toList())).toList();
        this.width = bounds.width();
        this.height = bounds.height();
        this.origin = corner.times(-1);
    }

    /** The forms of a covered piece, one for each turn that it may lie in. */
    static List<Form> of(Polygon grown, List<Integer> turns, AtomicInteger next) {
        List<List<Vec2>> parts = ConvexParts.of(grown);
        return turns.stream().map(turn -> new Form(next.getAndIncrement(), turn, parts.stream()
                .map(part -> part.stream().map(p -> turned(p, turn)).toList()).toList())).toList();
    }

    /** A point turned by quarter turns, without rounding. */
    private static Vec2 turned(Vec2 p, int turns) {
        Vec2 turned = p;
        for (int i = 0; i < turns; i++) {
            turned = turned.left();
        }
        return turned;
    }
}

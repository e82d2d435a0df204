package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Vec3;
import org.capwright.part.Leaf;
import org.capwright.part.Standoff;

/**
 * The lip over the standoffs' tops: how far it is above them, wherever it is over one. Outboard of the rod axis the lip only
 * rises; inboard of it it first sinks, and moves outwards, perhaps over a standoff that it was beside. Along either edge of
 * the lip azimuth falls and height grows with u, so over a standoff the lowest point is the first.
 */
final class StandoffClearance {
    private final double topMm;
    private final Motion motion;
    private final List<LeafShape.ArcEdge> lips;
    private final List<LeafShape.Point> hingeEnds;
    private final List<Span> spans;

    /** Azimuths that a standoff, or a mirror image of it, takes up, in [0, pi/2]. */
    private record Span(Turn from, Turn to) {
        boolean holds(Vec3 place) {
            return place.y() * from.cosine() >= place.x() * from.sine() && place.y() * to.cosine() <= place.x() * to.sine();
        }
    }

    private StandoffClearance(Leaf leaf, Standoff standoff) {
        LeafShape shape = LeafShape.of(leaf);
        this.topMm = standoff.topZMm();
        this.motion = shape.motion();
        this.lips = List.of(LeafShape.outerLip(leaf), LeafShape.innerLip(leaf));
        this.hingeEnds = List.of(shape.hingeEnd(1), shape.hingeInnerLip());
        this.spans = spans(standoff);
    }

    static Clearance of(Leaf leaf, Standoff standoff, double stopRad) {
        return Clearance.search(Pair.LIP_STANDOFF, leaf.number(), stopRad, new StandoffClearance(leaf, standoff)::at,
                OpeningSearch.KINKED);
    }

    /** A bracket spans from its web to the farther edge of its wider flange. The leaves' mirror images are as good as its own. */
    private static List<Span> spans(Standoff standoff) {
        List<Span> spans = new ArrayList<>();
        double width = 2 * Math.max(standoff.outerHalfRad(), standoff.innerHalfRad());
        for (int i = 0; i < standoff.count(); i++) {
            double from = standoff.azimuthRad(i) - standoff.outerHalfRad();
            for (double first : new double[] {from, -from - width, Math.PI - from - width, from - Math.PI}) {
                double turned = first - 2 * Math.PI * Math.floor((first + Math.PI) / (2 * Math.PI));
                if (turned <= Math.PI / 2 && turned + width >= 0) {
                    spans.add(new Span(Turn.of(Math.max(0, turned)), Turn.of(Math.min(Math.PI / 2, turned + width))));
                }
            }
        }
        return spans;
    }

    private Nearness at(double openRad) {
        Turn open = Turn.of(openRad);
        Nearness nearest = Nearness.NONE;
        for (Span span : spans) {
            for (LeafShape.ArcEdge lip : lips) {
                nearest = nearest.orNearer(over(span, lip, open));
            }
            for (LeafShape.Point end : hingeEnds) {
                Vec3 where = motion.at(end.u(), end.w(), end.y(), open);
                nearest = span.holds(where) ? nearest.orNearer(above(where)) : nearest;
            }
        }
        return nearest;
    }

    private Nearness over(Span span, LeafShape.ArcEdge lip, Turn open) {
        double u = Math.max(lip.fromU(), uAt(span.to(), lip, open));
        if (u > Math.min(lip.toU(), uAt(span.from(), lip, open))) {
            return Nearness.NONE;
        }
        double x = motion.axisMm() + u;
        return above(motion.at(u, lip.w(), Math.sqrt(Math.max(0, lip.radiusMm() * lip.radiusMm() - x * x)), open));
    }

    private Nearness above(Vec3 where) {
        return new Nearness(where.z() - topMm, where);
    }

    /**
     * The u that has come to an azimuth A: {@code sqrt(R^2 - a^2) cos A = (a C + k) sin A} with {@code a = x_r + u} and
     * {@code k = x_r (1 - C) - w S}.
     */
    private double uAt(Turn azimuth, LeafShape.ArcEdge lip, Turn open) {
        double c = azimuth.cosine();
        double s = azimuth.sine();
        double k = motion.axisMm() * (1 - open.cosine()) - lip.w() * open.sine();
        double m = c * c + s * s * open.cosine() * open.cosine();
        double root = lip.radiusMm() * lip.radiusMm() * m - s * s * k * k;
        // every point of the lip has a smaller azimuth
        return root < 0 ? Double.NEGATIVE_INFINITY
                : (c * Math.sqrt(root) - s * s * open.cosine() * k) / m - motion.axisMm();
    }
}

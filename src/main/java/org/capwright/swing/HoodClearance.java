package org.capwright.swing;

import java.util.List;
import java.util.function.DoubleFunction;
import org.capwright.geom.GoldenSection;
import org.capwright.geom.Vec3;
import org.capwright.part.Hood;
import org.capwright.part.Leaf;
import org.capwright.part.PlacedBead;

/**
 * A leaf and the hood's inside. Along an arc of the leaf the squared distance from the stack's axis is {@code R^2 - u^2 S^2
 * + h^2 S^2 - 2 x_r u (1 - C) + 2 x_r h S + 2 u h C S} (h = -w below the rod axis; S, C sine and cosine of the opening):
 * concave in u, so the farthest u is closed-form. Where the hood ends below the leaf's tip only what is below its top
 * counts. An inward bead takes from the bore where it is.
 */
final class HoodClearance {
    private static final int LEVELS = 12;
    private static final double ENOUGH = 1e-5;
    private static final double ENOUGH_MM = 1e-4;

    private final LeafShape shape;
    private final double insideMm;
    private final double topMm;
    private final double footMm;
    private final List<PlacedBead> inwardBeads;

    private HoodClearance(Leaf leaf, Hood hood) {
        this.shape = LeafShape.of(leaf);
        this.insideMm = hood.insideRadiusMm();
        this.topMm = hood.aboveRimMm();
        this.footMm = -hood.belowRimMm();
        this.inwardBeads = hood.flat().beads().stream().filter(PlacedBead::inward).toList();
    }

    static Clearance of(Leaf leaf, Hood hood, double stopRad) {
        return Clearance.search(Pair.LEAF_HOOD, leaf.number(), stopRad, new HoodClearance(leaf, hood)::at);
    }

    private Nearness at(double openRad) {
        Turn open = Turn.of(openRad);
        Nearness nearest = Nearness.NONE;
        for (LeafShape.ArcEdge arc : shape.arcs()) {
            nearest = nearest.orNearer(arc(arc, open));
        }
        nearest = nearest.orNearer(point(shape.hingeEnd(1), open));
        if (!inwardBeads.isEmpty()) {
            nearest = nearest.orNearer(along(share -> point(shape.hingeEnd(share), open)));
        }
        return inwardBeads.isEmpty() && tipBelowTop(open) ? nearest : nearest.orNearer(along(share -> level(share, open)));
    }

    private Nearness point(LeafShape.Point point, Turn open) {
        Vec3 where = shape.motion().at(point.u(), point.w(), point.y(), open);
        double bead = inwardBeads.stream().mapToDouble(b -> b.bead().depthAtMm(where.z() - footMm - b.aboveFootMm())).max().orElse(0);
        return where.z() > topMm ? Nearness.NONE : new Nearness(insideMm - bead - Math.hypot(where.x(), where.y()), where);
    }

    private Nearness arc(LeafShape.ArcEdge arc, Turn open) {
        double to = Math.min(arc.toU(), highestU(arc.w(), open));
        if (to < arc.fromU()) {
            return Nearness.NONE;
        }
        double u = Math.max(arc.fromU(), Math.min(to, farthestU(arc, open)));
        Vec3 where = place(arc, u, open);
        return new Nearness(insideMm - Math.hypot(where.x(), where.y()), where);
    }

    private Vec3 place(LeafShape.ArcEdge arc, double u, Turn open) {
        double x = shape.motion().axisMm() + u;
        double y = Math.sqrt(Math.max(0, arc.radiusMm() * arc.radiusMm() - x * x));
        return shape.motion().at(u, arc.w(), y, open);
    }

    /** Where the squared distance is greatest: {@code u = (h C S - x_r (1 - C)) / S^2}; beyond every end for a closed leaf. */
    private double farthestU(LeafShape.ArcEdge arc, Turn open) {
        double s = open.sine();
        double c = open.cosine();
        return s == 0 ? Double.POSITIVE_INFINITY : (-arc.w() * c * s - shape.motion().axisMm() * (1 - c)) / (s * s);
    }

    /** The u that is at the height of the hood's top. */
    private double highestU(double w, Turn open) {
        double s = open.sine();
        return s == 0 ? Double.POSITIVE_INFINITY : (topMm - shape.motion().axisZMm() - w * open.cosine()) / s;
    }

    private boolean tipBelowTop(Turn open) {
        return shape.arcs().stream().allMatch(arc -> arc.toU() <= highestU(arc.w(), open));
    }

    /** Between top and lip a flange is a straight wall: all its heights are searched where beads or the hood's top cut it. */
    private static Nearness along(DoubleFunction<Nearness> wall) {
        Nearness nearest = Nearness.NONE;
        double best = 0;
        for (int i = 0; i <= LEVELS; i++) {
            Nearness one = wall.apply((double) i / LEVELS);
            best = one.mm() < nearest.mm() ? (double) i / LEVELS : best;
            nearest = nearest.orNearer(one);
        }
        double share = GoldenSection.lowest(at -> wall.apply(at).mm(), Math.max(0, best - 1.0 / LEVELS),
                Math.min(1, best + 1.0 / LEVELS), ENOUGH);
        return nearest.orNearer(wall.apply(share));
    }

    private Nearness level(double share, Turn open) {
        LeafShape.ArcEdge top = shape.arcs().get(0);
        LeafShape.ArcEdge lip = shape.arcs().get(1);
        LeafShape.ArcEdge arc = new LeafShape.ArcEdge(mix(top.radiusMm(), lip.radiusMm(), share), mix(top.w(), lip.w(), share),
                mix(top.fromU(), lip.fromU(), share), mix(top.toU(), lip.toU(), share));
        Nearness nearest = arc(arc, open);
        for (PlacedBead bead : inwardBeads) {
            nearest = nearest.orNearer(bead(arc, bead, open));
        }
        return nearest;
    }

    /** Distance from the axis and bead depth are both concave along the arc, so their sum has one summit. */
    private Nearness bead(LeafShape.ArcEdge arc, PlacedBead bead, Turn open) {
        double s = open.sine();
        double middle = footMm + bead.aboveFootMm();
        double half = bead.bead().widthMm() / 2;
        double base = shape.motion().axisZMm() + arc.w() * open.cosine();
        double from = s == 0 ? arc.fromU() : Math.max(arc.fromU(), (middle - half - base) / s);
        double to = s == 0 ? arc.toU() : Math.min(arc.toU(), (middle + half - base) / s);
        if (to < from || s == 0 && Math.abs(base - middle) > half) {
            return Nearness.NONE;
        }
        double u = GoldenSection.lowest(at -> beadGap(arc, bead, middle, at, open), from, to, ENOUGH_MM);
        return new Nearness(beadGap(arc, bead, middle, u, open), place(arc, u, open));
    }

    private double beadGap(LeafShape.ArcEdge arc, PlacedBead bead, double middle, double u, Turn open) {
        Vec3 where = place(arc, u, open);
        return insideMm - bead.bead().depthAtMm(where.z() - middle) - Math.hypot(where.x(), where.y());
    }

    private static double mix(double a, double b, double share) {
        return a + (b - a) * share;
    }
}

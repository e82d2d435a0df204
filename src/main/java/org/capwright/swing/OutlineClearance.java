package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec3;
import org.capwright.part.Hood;
import org.capwright.part.Leaf;
import org.capwright.part.PlacedBead;

/**
 * A leaf and an outline that is not round, numerically: at each opening every edge of the leaf is searched on both its
 * +y and -y half, and the swing is searched for the worst opening. Good to a thousandth of a millimetre where no bead or edge
 * of the hood cuts in, and to a hundredth where one does.
 */
final class OutlineClearance {
    private static final int SAMPLES = 16;
    private static final int LEVELS = 12;
    private static final double ENOUGH_RAD = 1e-4;

    private final Leaf leaf;
    private final RodLine rod;
    private final Oval outline;
    private final boolean within;
    private final double topMm;
    private final double footMm;
    private final List<PlacedBead> beads;
    private final List<LeafShape.ArcEdge> arcs;
    private final List<LeafShape.Point> points;

    private OutlineClearance(Leaf leaf, RodLine rod, Oval outline, boolean within, double topMm, double footMm,
            List<PlacedBead> beads,
                             List<LeafShape.ArcEdge> arcs, List<LeafShape.Point> points) {
        this.leaf = leaf;
        this.rod = rod;
        this.outline = outline;
        this.within = within;
        this.topMm = topMm;
        this.footMm = footMm;
        this.beads = beads;
        this.arcs = arcs;
        this.points = points;
    }

    /** A leaf within the hood. */
    static Clearance within(Leaf leaf, RodLine rod, Hood hood, Oval inside, double stopRad) {
        LeafShape shape = LeafShape.of(leaf);
        List<PlacedBead> inward = hood.flat().beads().stream().filter(PlacedBead::inward).toList();
        boolean cut = !inward.isEmpty() || leaf.tipHeightMm(stopRad) + rod.heightMm() - leaf.rodAxisZMm() > hood.aboveRimMm();
        OutlineClearance clearance = new OutlineClearance(leaf, rod, inside, true, hood.aboveRimMm(), -hood.belowRimMm(), inward,
                cut ? levels(shape.arcs().get(0), shape.arcs().get(1)) : shape.arcs(), hingeEnd(shape, cut ? LEVELS : 1));
        return Clearance.search(Pair.LEAF_HOOD, leaf.number(), stopRad, clearance::at);
    }

    /** The inside of a leaf's curved flange round the sleeve, below the rim. */
    static Clearance around(Leaf leaf, RodLine rod, Oval sleeve, double stopRad) {
        OutlineClearance clearance = new OutlineClearance(leaf, rod, sleeve, false, SleeveClearance.AT_RIM_MM,
                Double.NEGATIVE_INFINITY,
                List.of(), SleeveClearance.inside(leaf), List.of());
        return Clearance.search(Pair.LEAF_SLEEVE, leaf.number(), stopRad, clearance::at);
    }

    private static List<LeafShape.ArcEdge> levels(LeafShape.ArcEdge top, LeafShape.ArcEdge lip) {
        List<LeafShape.ArcEdge> levels = new ArrayList<>();
        for (int i = 0; i <= LEVELS; i++) {
            double share = (double) i / LEVELS;
            levels.add(new LeafShape.ArcEdge(mix(top.radiusMm(), lip.radiusMm(), share), mix(top.w(), lip.w(), share),
                    mix(top.fromU(), lip.fromU(), share), mix(top.toU(), lip.toU(), share)));
        }
        return levels;
    }

    /** The end of the hinge flange: its lip, or all its heights where beads or the hood's top cut it. */
    private static List<LeafShape.Point> hingeEnd(LeafShape shape, int levels) {
        return IntStream.rangeClosed(1, levels).mapToObj(i -> shape.hingeEnd((double) i / levels)).toList();
    }

    private static double mix(double a, double b, double share) {
        return a + (b - a) * share;
    }

    private Nearness at(double openRad) {
        Placing placing = new Placing(leaf, rod, Turn.of(openRad));
        double shift = leaf.rodAxisMm() - Placing.axisMm(leaf, rod);
        Nearness nearest = Nearness.NONE;
        for (int half = -1; half <= 1; half += 2) {
            for (LeafShape.ArcEdge arc : arcs) {
                nearest = nearest.orNearer(arc(placing, arc, half, shift));
            }
            for (LeafShape.Point point : points) {
                nearest = nearest.orNearer(nearness(placing, point.u() + shift, half * point.y(), point.w()));
            }
        }
        return nearest;
    }

    private Nearness arc(Placing placing, LeafShape.ArcEdge arc, int half, double shift) {
        double axis = leaf.rodAxisMm();
        double from = Math.acos(Math.min(1, (axis + arc.toU()) / arc.radiusMm()));
        double to = Math.acos(Math.max(-1, (axis + arc.fromU()) / arc.radiusMm()));
        Nearness nearest = along(placing, arc, half, shift, from, to, SAMPLES);
        for (PlacedBead bead : beads) {
            nearest = nearest.orNearer(bead(placing, arc, half, shift, from, to, bead));
        }
        return nearest;
    }

    private Nearness along(Placing placing, LeafShape.ArcEdge arc, int half, double shift, double from, double to, int samples) {
        double offset = shift - leaf.rodAxisMm();
        double at = EdgeSearch.lowest(psi -> mm(placing, arc.radiusMm() * Math.cos(psi) + offset,
                half * arc.radiusMm() * Math.sin(psi),
                arc.w()), from, to, samples, ENOUGH_RAD);
        return nearness(placing, arc.radiusMm() * Math.cos(at) + offset, half * arc.radiusMm() * Math.sin(at), arc.w());
    }

    /** The stretch of the arc that passes a bead, searched by itself: a bead is narrower than a step along the arc. */
    private Nearness bead(Placing placing, LeafShape.ArcEdge arc, int half, double shift, double from, double to,
            PlacedBead bead) {
        double middle = footMm + bead.aboveFootMm();
        double reach = bead.bead().widthMm() / 2;
        double nearTip = placing.z(arc.radiusMm() * Math.cos(from) - leaf.rodAxisMm() + shift,
                half * arc.radiusMm() * Math.sin(from), arc.w());
        double nearHinge = placing.z(arc.radiusMm() * Math.cos(to) - leaf.rodAxisMm() + shift,
                half * arc.radiusMm() * Math.sin(to), arc.w());
        double rise = (nearTip - nearHinge) / (Math.cos(from) - Math.cos(to));
        if (Math.max(nearTip, nearHinge) < middle - reach || Math.min(nearTip, nearHinge) > middle + reach || !(rise > 0)) {
            return Nearness.NONE;
        }
        double low = Math.cos(to) + (middle - reach - nearHinge) / rise;
        double high = Math.cos(to) + (middle + reach - nearHinge) / rise;
        return along(placing, arc, half, shift, Math.max(from, Math.acos(Math.max(-1, Math.min(1, high)))),
                Math.min(to, Math.acos(Math.max(-1, Math.min(1, low)))), SAMPLES);
    }

    private Nearness nearness(Placing placing, double u, double y, double w) {
        double mm = mm(placing, u, y, w);
        return Double.isFinite(mm) ? new Nearness(mm, placing.at(u, y, w)) : new Nearness(mm, new Vec3(0, 0, 0));
    }

    private double mm(Placing placing, double u, double y, double w) {
        boolean whole = !within || beads.isEmpty() && arcs.size() == 2;
        double z = whole && within ? 0 : placing.z(u, y, w);
        if (z > topMm) {
            return Double.POSITIVE_INFINITY;
        }
        double inside = outline.insideMm(placing.x(u, y, w), placing.y(u, y, w));
        if (!within) {
            return -inside;
        }
        double bead = 0;
        for (PlacedBead placed : beads) {
            bead = Math.max(bead, placed.bead().depthAtMm(z - footMm - placed.aboveFootMm()));
        }
        return inside - bead;
    }
}

package org.capwright.fitup.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.capwright.check.SwingLimits;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.job.ToleranceInputs;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.HeelSweep;
import org.capwright.part.Leaf;
import org.capwright.swing.LeafSize;
import org.capwright.swing.MeasuredSwing;
import org.capwright.swing.MeasuredWork;
import org.capwright.swing.Pair;
import org.capwright.swing.QuickHood;
import org.capwright.swing.RodLine;
import org.capwright.swing.Swing;

/** Makes builds of a cap and finds their margins. */
final class Builder {
    private static final List<Pair> FOLLOWED = List.of(Pair.LEAF_HOOD, Pair.HEEL_WALL, Pair.HEEL_FLOOR, Pair.FLANGE_SPOUT,
            Pair.LIP_STANDOFF);

    private final Cap cap;
    private final boolean normal;
    private final boolean quick;
    private final Map<Source, Double> tolerances = new EnumMap<>(Source.class);
    private final List<Margin> margins = new ArrayList<>();
    private final List<QuickHood> hoods;
    private final double[] spoutMm;
    private final double[] standoffMm;

    Builder(Cap cap) {
        this.cap = cap;
        this.normal = cap.job().get(ToleranceInputs.SPREADING) == ToleranceInputs.Spreading.NORMAL;
        this.quick = QuickHood.holds(cap);
        for (Source source : Source.values()) {
            tolerances.put(source, cap.job().get(source.input()).mm());
        }
        for (Leaf leaf : cap.leaves()) {
            for (Pair pair : FOLLOWED) {
                margins.add(new Margin(SwingLimits.id(pair, leaf.number()), SwingLimits.words(pair, leaf.number()),
                        SwingLimits.of(cap.job(), pair).value(), pair == Pair.LEAF_HOOD));
            }
        }
        this.hoods = cap.leaves().stream().map(leaf -> new QuickHood(leaf, cap.stopRad())).toList();
        Swing drawn = Swing.of(cap);
        this.spoutMm = cap.leaves().stream().mapToDouble(leaf -> drawn.least(Pair.FLANGE_SPOUT,
                leaf.number()).leastMm()).toArray();
        this.standoffMm = cap.leaves().stream().mapToDouble(leaf -> drawn.least(Pair.LIP_STANDOFF,
                leaf.number()).leastMm()).toArray();
    }

    List<Margin> margins() {
        return margins;
    }

    /** Margins of one build; with one source only, all others as drawn. */
    double[] margins(long seed, int build, Source only) {
        Draw draw = new Draw(seed, build, normal);
        double radius = cap.hood().insideRadiusMm() + draw(draw, Source.HOOD_DIAMETER, only) / 2;
        double ovality = Math.abs(draw(draw, Source.OVALITY, only));
        Oval hood = Oval.of(radius, ovality, draw.halfTurn(), new Vec2(draw(draw, Source.SHIFT, only),
                draw(draw, Source.SHIFT, only)));
        double[] least = new double[margins.size()];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (int side = -1; side <= 1; side += 2) {
            for (Leaf leaf : cap.leaves()) {
                RodLine rod = rod(leaf, side, draw, only);
                one(leaf, hood, rod, draw(draw, Source.LEAF_RADIUS, only), draw(draw, Source.FLANGE_DEPTH, only), least);
            }
        }
        for (int i = 0; i < least.length; i++) {
            least[i] -= margins.get(i).limitMm();
        }
        return least;
    }

    private double draw(Draw draw, Source source, Source only) {
        double drawn = draw.deviation(tolerances.get(source));
        return only == null || only == source ? drawn : 0;
    }

    /** A rod that strays as a whole, and each end of it by itself. */
    private RodLine rod(Leaf leaf, int side, Draw draw, Source only) {
        double offset = leaf.rodAxisMm() - leaf.slab().hingeEdgeMm() + draw(draw, Source.ROD_POSITION, only);
        double height = leaf.rodAxisZMm() + draw(draw, Source.ROD_HEIGHT, only);
        return new RodLine(leaf.number(), side, offset + draw(draw, Source.ROD_END_POSITION, only),
                offset + draw(draw, Source.ROD_END_POSITION, only),
                height + draw(draw, Source.ROD_END_HEIGHT, only), height + draw(draw, Source.ROD_END_HEIGHT, only),
                cap.doublers().get(leaf.number() - 1).faceYMm());
    }

    /** As in the measured swing, all but the hood is taken in the section at the worse end of the rod. */
    private void one(Leaf leaf, Oval hood, RodLine rod, double wider, double deeper, double[] least) {
        int at = (leaf.number() - 1) * FOLLOWED.size();
        double lower = Math.min(rod.heightPlusMm(), rod.heightMinusMm()) - leaf.rodAxisZMm();
        keep(least, at, hoodMm(leaf, hood, rod, wider, deeper));
        heel(leaf, rod.offsetPlusMm(), rod.heightPlusMm(), deeper, least);
        heel(leaf, rod.offsetMinusMm(), rod.heightMinusMm(), deeper, least);
        keep(least, at + 3, spoutMm[leaf.number() - 1] + wider);
        keep(least, at + 4, standoffMm[leaf.number() - 1] + lower - deeper);
        if (leaf.number() < cap.leaves().size()) {
            double lip = leaf.lipDownMm(leaf.curveFlangeMm() + deeper) - leaf.sheet().thicknessMm() - lower;
            keep(least, at + FOLLOWED.size() + 2, cap.gutters().get(leaf.number()).depthMm() - lip);
        }
    }

    private void heel(Leaf leaf, double offset, double axisZ, double deeper, double[] least) {
        int at = (leaf.number() - 1) * FOLLOWED.size();
        Gutter gutter = cap.gutters().get(leaf.number() - 1);
        HeelSweep heel = HeelSweep.of(offset, leaf.rodRadiusMm(), leaf.hingeFlangeMm() + deeper, leaf.sheet().thicknessMm(),
                leaf.bend().turnRad(), axisZ);
        keep(least, at + 1, gutter.jointMm() + gutter.insideWidthMm() / 2 - leaf.slab().hingeEdgeMm() - offset - heel.farthest(cap.stopRad()).mm());
        keep(least, at + 2, gutter.depthMm() - heel.deepest(cap.stopRad()).mm());
    }

    private static void keep(double[] least, int at, double mm) {
        least[at] = Math.min(least[at], mm);
    }

    private double hoodMm(Leaf leaf, Oval hood, RodLine rod, double wider, double deeper) {
        double radius = leaf.slab().radiusMm() + wider;
        return quick ? hoods.get(leaf.number() - 1).leastMm(hood, rod, radius, deeper)
                : searched(leaf, hood, rod, radius, deeper);
    }

    /** The full search, for hoods with inward beads or lower than their leaves. */
    private double searched(Leaf leaf, Oval hood, RodLine rod, double radius, double deeper) {
        double free = leaf.slab().freeChord() ? leaf.slab().freeEdgeMm() : radius;
        MeasuredWork work = new MeasuredWork(hood, Oval.circle(cap.sleeve().outsideRadiusMm()), List.of(rod),
                List.of(new LeafSize(leaf.number(), rod.side(), new Leaf.Slab(leaf.slab().hingeEdgeMm(), free, radius))));
        return MeasuredSwing.hood(cap, work, deeper(leaf, deeper), rod.side()).leastMm();
    }
    private static Leaf deeper(Leaf leaf, double mm) {
        return new Leaf(leaf.number(), leaf.sheet(), leaf.slab(), leaf.rodAxisMm(), leaf.rodAxisZMm(), leaf.rodRadiusMm(),
                leaf.curveFlangeMm() + mm, leaf.hingeFlangeMm() + mm, leaf.bend(), leaf.hingeCorner(), leaf.freeCorner(),
                leaf.shrink(), leaf.hingeRelief(), leaf.freeRelief(), leaf.reliefHoleMm(), leaf.balance());
    }
}

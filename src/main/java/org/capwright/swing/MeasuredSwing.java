package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec3;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;

/**
 * The swing of what was really made: both leaves of each pair, since nothing is mirrored any more. Leaf to hood and leaf to
 * sleeve are searched against the measured outlines with the leaf on its skewed rod; every other pair is taken in the section at
 * either end of the rod, where a skew shows most, and the worse one counts.
 *
 * @param sides clearances of the +x side, then of the -x side
 */
public record MeasuredSwing(List<OneSide> sides) {
    /** Keeps its own copy. */
    public MeasuredSwing {
        sides = List.copyOf(sides);
    }

    /**
     * The clearances of one side.
     *
     * @param side +1 or -1
     * @param clearances every pair, with places in the cap's frame
     */
    public record OneSide(int side, List<Clearance> clearances) {
        /** Keeps its own copy. */
        public OneSide {
            clearances = List.copyOf(clearances);
        }
    }

    /**
     * The swing of measured work.
     *
     * @param cap the cap, solved with its measured sizes
     * @param work what is not round, central or straight
     * @return every clearance of both sides
     */
    public static MeasuredSwing of(Cap cap, MeasuredWork work) {
        Swing drawn = Swing.of(cap);
        return new MeasuredSwing(List.of(side(cap, work, 1, drawn), side(cap, work, -1, drawn)));
    }

    private static OneSide side(Cap cap, MeasuredWork work, int side, Swing drawn) {
        List<Clearance> all = new ArrayList<>(hood(cap, work, work.hood(), side));
        for (Leaf leaf : cap.leaves()) {
            all.add(OutlineClearance.around(work.leaf(leaf, side), work.rod(cap, leaf, side), work.sleeve(), cap.stopRad()));
        }
        boolean straight = work.rods().stream().noneMatch(rod -> rod.side() == side)
                && work.leaves().stream().noneMatch(leaf -> leaf.side() == side);
        all.addAll(straight ? others(drawn, work, side) : others(cap, work, side));
        return new OneSide(side, all);
    }

    /**
     * Leaves and hood on one side.
     *
     * @param cap the cap
     * @param work its rods
     * @param inside inside of the hood
     * @param side +1 or -1
     * @return the clearance of each leaf, from the middle outwards
     */
    public static List<Clearance> hood(Cap cap, MeasuredWork work, Oval inside, int side) {
        MeasuredWork with = work.withHood(inside);
        return cap.leaves().stream().map(leaf -> hood(cap, with, leaf, side)).toList();
    }

    /**
     * One leaf and the hood.
     *
     * @param cap the cap
     * @param work what was made
     * @param leaf the leaf as drawn
     * @param side +1 or -1
     * @return the clearance
     */
    public static Clearance hood(Cap cap, MeasuredWork work, Leaf leaf, int side) {
        return OutlineClearance.within(work.leaf(leaf, side), work.rod(cap, leaf, side), cap.hood(), work.hood(), cap.stopRad());
    }

    /** The worse end of each rod. */
    private static List<Clearance> others(Cap cap, MeasuredWork work, int side) {
        List<Clearance> plus = others(Swing.of(atEnd(cap, work, side, 1)), work, side);
        List<Clearance> minus = others(Swing.of(atEnd(cap, work, side, -1)), work, side);
        List<Clearance> worse = new ArrayList<>();
        for (int i = 0; i < plus.size(); i++) {
            worse.add(plus.get(i).leastMm() <= minus.get(i).leastMm() ? plus.get(i) : minus.get(i));
        }
        return worse;
    }

    private static Cap atEnd(Cap cap, MeasuredWork work, int side, int end) {
        List<Leaf> leaves = cap.leaves().stream().map(leaf -> atEnd(work.leaf(leaf, side), work.rod(cap, leaf, side),
                end)).toList();
        return new Cap(cap.job(), cap.stopRad(), cap.joints(), cap.sleeve(), cap.hood(), leaves, cap.rods(), cap.bushings(),
                cap.washer(), cap.doublers(), cap.gutters(), cap.stops(), cap.standoff());
    }

    private static Leaf atEnd(Leaf leaf, RodLine rod, int end) {
        double offset = end > 0 ? rod.offsetPlusMm() : rod.offsetMinusMm();
        double height = end > 0 ? rod.heightPlusMm() : rod.heightMinusMm();
        return MeasuredWork.resized(leaf, leaf.slab(), leaf.slab().hingeEdgeMm() + offset, height);
    }

    /** Everything but hood and sleeve; the bushings' ends move along y with the hood. */
    private static List<Clearance> others(Swing swing, MeasuredWork work, int side) {
        double along = Math.abs(work.hood().centre().y());
        return swing.clearances().stream().filter(one -> one.pair() != Pair.LEAF_HOOD && one.pair() != Pair.LEAF_SLEEVE)
                .map(one -> onSide(one, side, one.pair() == Pair.LEAF_BUSHING ? along : 0)).toList();
    }

    private static Clearance onSide(Clearance one, int side, double lessMm) {
        return new Clearance(one.pair(), one.number(), one.leastMm() - lessMm, one.openRad(), mirrored(one.where(), side),
                one.stopRad(),
                open -> {
                    Nearness there = one.curve().apply(open);
                    return new Nearness(there.mm() - lessMm, mirrored(there.where(), side));
                });
    }

    private static Vec3 mirrored(Vec3 at, int side) {
        return new Vec3(side * at.x(), at.y(), at.z());
    }

    /**
     * The clearance of a pair on one side.
     *
     * @param pair what and what
     * @param number number of the leaf
     * @param side +1 or -1
     * @return the clearance; the smaller one where there are two
     */
    public Clearance least(Pair pair, int number, int side) {
        return sides.stream().filter(one -> one.side() == side).flatMap(one -> one.clearances().stream())
                .filter(one -> one.pair() == pair && one.number() == number).min((a, b) -> Double.compare(a.leastMm(),
                b.leastMm())).orElseThrow();
    }

    /**
     * The least clearance of leaf and hood, of all leaves.
     *
     * @return where and when
     */
    public Clearance leastToHood() {
        return sides.stream().flatMap(one -> one.clearances().stream()).filter(one -> one.pair() == Pair.LEAF_HOOD)
                .min((a, b) -> Double.compare(a.leastMm(), b.leastMm())).orElseThrow();
    }
}

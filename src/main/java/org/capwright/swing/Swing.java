package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;

/**
 * The swing of a cap's leaves.
 *
 * @param clearances every pair that may meet, with its least clearance
 * @param stops how each leaf meets its bar
 * @param tipHeightMm height of the highest leaf's top face over the rim at the stop
 */
public record Swing(List<Clearance> clearances, List<StopContact> stops, double tipHeightMm) {
    /** Keeps its own copies. */
    public Swing {
        clearances = List.copyOf(clearances);
        stops = List.copyOf(stops);
    }

    /**
     * The swing of a cap.
     *
     * @param cap the cap
     * @return all clearances from closed to the stop
     */
    public static Swing of(Cap cap) {
        List<Clearance> all = new ArrayList<>();
        List<StopContact> stops = new ArrayList<>();
        for (Leaf leaf : cap.leaves()) {
            all.addAll(leaf(cap, leaf));
            stops.add(StopContact.of(leaf, cap.stops().get(leaf.number() - 1)));
        }
        double tip = cap.leaves().stream().mapToDouble(leaf -> leaf.tipHeightMm(cap.stopRad())).max().orElseThrow();
        return new Swing(all, stops, tip);
    }

    private static List<Clearance> leaf(Cap cap, Leaf leaf) {
        int i = leaf.number() - 1;
        double stop = cap.stopRad();
        List<Clearance> all = new ArrayList<>();
        all.add(HoodClearance.of(leaf, cap.hood(), stop));
        all.addAll(HeelClearance.of(leaf, cap.gutters().get(i), stop));
        all.add(SleeveClearance.of(leaf, cap.sleeve(), stop));
        all.add(StandoffClearance.of(leaf, cap.standoff(), stop));
        all.add(SpoutClearance.of(leaf, cap.gutters().get(i), stop));
        all.add(BushingClearance.of(leaf, cap.doublers().get(i), cap.bushings().get(i), stop));
        if (i == 0) {
            all.add(NeighbourClearance.opposite(leaf, stop));
        }
        if (i + 1 < cap.leaves().size()) {
            all.add(HeelClearance.ofFreeEdge(leaf, cap.gutters().get(i + 1), stop));
            all.add(NeighbourClearance.next(leaf, cap.leaves().get(i + 1), stop));
            all.add(NeighbourClearance.bar(leaf, cap.stops().get(i + 1), stop));
        }
        return all;
    }

    /**
     * The clearance of a pair; the smaller one where there are two.
     *
     * @param pair what and what
     * @param number number of the leaf
     * @return the clearance
     */
    public Clearance least(Pair pair, int number) {
        return clearances.stream().filter(one -> one.pair() == pair && one.number() == number)
                .min((a, b) -> Double.compare(a.leastMm(), b.leastMm())).orElseThrow();
    }
}

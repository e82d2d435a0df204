package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Oval;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Leaf;

/**
 * What was really rolled, and where its rods lie.
 *
 * @param hood inside of the hood
 * @param sleeve outside of the sleeve
 * @param rods rods that are not as drawn; the others need not be named
 * @param leaves leaves that are not as drawn, likewise
 */
public record MeasuredWork(Oval hood, Oval sleeve, List<RodLine> rods, List<LeafSize> leaves) {
    /** Keeps its own copies. */
    public MeasuredWork {
        rods = List.copyOf(rods);
        leaves = List.copyOf(leaves);
    }

    /**
     * A cap exactly as it is drawn.
     *
     * @param cap the cap
     * @return round, central, straight
     */
    public static MeasuredWork asDrawn(Cap cap) {
        return new MeasuredWork(Oval.circle(cap.hood().insideRadiusMm()), Oval.circle(cap.sleeve().outsideRadiusMm()),
                List.of(), List.of());
    }

    /**
     * The same with another hood.
     *
     * @param other inside of the hood
     * @return a new object
     */
    public MeasuredWork withHood(Oval other) {
        return new MeasuredWork(other, sleeve, rods, leaves);
    }

    /**
     * The same with one rod elsewhere.
     *
     * @param other where it lies
     * @return a new object
     */
    public MeasuredWork withRod(RodLine other) {
        List<RodLine> all = new ArrayList<>(rods);
        all.removeIf(rod -> rod.number() == other.number() && rod.side() == other.side());
        all.add(other);
        return new MeasuredWork(hood, sleeve, all, leaves);
    }

    /**
     * The same with one leaf of another size.
     *
     * @param other its size
     * @return a new object
     */
    public MeasuredWork withLeaf(LeafSize other) {
        List<LeafSize> all = new ArrayList<>(leaves);
        all.removeIf(leaf -> leaf.number() == other.number() && leaf.side() == other.side());
        all.add(other);
        return new MeasuredWork(hood, sleeve, rods, all);
    }

    /**
     * A leaf in its real size.
     *
     * @param drawn the leaf as drawn
     * @param side +1 or -1
     * @return the same with its measured slab, where it was measured
     */
    public Leaf leaf(Leaf drawn, int side) {
        return leaves.stream().filter(one -> one.number() == drawn.number() && one.side() == side).findFirst()
                .map(one -> resized(drawn, one.slab(), drawn.rodAxisMm(), drawn.rodAxisZMm())).orElse(drawn);
    }

    static Leaf resized(Leaf leaf, Leaf.Slab slab, double axisMm, double axisZMm) {
        return new Leaf(leaf.number(), leaf.sheet(), slab, axisMm, axisZMm, leaf.rodRadiusMm(), leaf.curveFlangeMm(),
                leaf.hingeFlangeMm(),
                leaf.bend(), leaf.hingeCorner(), leaf.freeCorner(), leaf.shrink(), leaf.hingeRelief(), leaf.freeRelief(),
                leaf.reliefHoleMm(), leaf.balance());
    }

    /**
     * The rod of a leaf.
     *
     * @param cap the cap
     * @param leaf the leaf
     * @param side +1 or -1
     * @return as measured, or as drawn
     */
    public RodLine rod(Cap cap, Leaf leaf, int side) {
        Doubler plate = cap.doublers().get(leaf.number() - 1);
        return rods.stream().filter(rod -> rod.number() == leaf.number() && rod.side() == side).findFirst()
                .orElseGet(() -> RodLine.asDrawn(leaf, side, plate.faceYMm()));
    }
}

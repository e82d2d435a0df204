package org.capwright.swing;

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
 */
public record MeasuredWork(Oval hood, Oval sleeve, List<RodLine> rods) {
    /** Keeps its own copy. */
    public MeasuredWork {
        rods = List.copyOf(rods);
    }

    /**
     * A cap exactly as it is drawn.
     *
     * @param cap the cap
     * @return round, central, straight
     */
    public static MeasuredWork asDrawn(Cap cap) {
        return new MeasuredWork(Oval.circle(cap.hood().insideRadiusMm()), Oval.circle(cap.sleeve().outsideRadiusMm()), List.of());
    }

    /**
     * The same with another hood.
     *
     * @param other inside of the hood
     * @return a new object
     */
    public MeasuredWork withHood(Oval other) {
        return new MeasuredWork(other, sleeve, rods);
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

package org.capwright.fitup.tolerance;

import org.capwright.job.Input;
import org.capwright.job.ToleranceInputs;
import org.capwright.units.Length;

/** What strays. */
public enum Source {
    /** Mean diameter of the hood. */
    HOOD_DIAMETER(ToleranceInputs.HOOD_DIAMETER),
    /** Ovality of the hood, in a random direction. */
    OVALITY(ToleranceInputs.OVALITY),
    /** Place of the hood, along x and along y. */
    SHIFT(ToleranceInputs.SHIFT),
    /** Offset of each rod. */
    ROD_POSITION(ToleranceInputs.ROD_POSITION),
    /** Height of each rod. */
    ROD_HEIGHT(ToleranceInputs.ROD_HEIGHT),
    /** Offset of each end of a rod by itself: skew. */
    ROD_END_POSITION(ToleranceInputs.ROD_END_POSITION),
    /** Height of each end of a rod by itself: tilt. */
    ROD_END_HEIGHT(ToleranceInputs.ROD_END_HEIGHT),
    /** Radius of each leaf. */
    LEAF_RADIUS(ToleranceInputs.LEAF_RADIUS),
    /** Depth of each leaf's flanges. */
    FLANGE_DEPTH(ToleranceInputs.FLANGE_DEPTH);

    private final Input<Length> input;

    Source(Input<Length> input) {
        this.input = input;
    }

    /**
     * Where its tolerance is typed.
     *
     * @return the input; its help says where the default comes from
     */
    public Input<Length> input() {
        return input;
    }
}

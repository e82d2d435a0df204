package org.capwright.job;

import org.capwright.units.Length;

/** The channels under the gaps between hinge edges. */
public final class GutterInputs {
    /** What they are made of. */
    public static final SheetInputs SHEET = SheetInputs.of("gutter", 22);
    /** Inside width. */
    public static final Input<Length> INSIDE_WIDTH = Input.length("gutter.insideWidth", "inside width")
            .between("1/2 in", "12 in").orAuto()
            .help("Inside width of the channel. Auto: just wide enough for the hinge flanges as they swing down.");
    /** Inside depth below the rim. */
    public static final Input<Length> DEPTH = Input.length("gutter.depth", "depth").between("1/4 in", "6 in").orAuto()
            .help("From the rim down to the channel's floor, inside. Auto: just deep enough for the hinge flanges.");
    /** Clearance that auto leaves. */
    public static final Input<Length> CLEARANCE = Input.length("gutter.clearance", "clearance for auto")
            .between("0 in", "1 in").or("1/8 in")
            .help("What an auto width or depth leaves free beside and under the swinging hinge flange.");
    /** How far the spouts reach beyond the sleeve's outside. */
    public static final Input<Length> SPOUT = Input.length("gutter.spout", "spout").between("1/16 in", "4 in").or("1/4 in")
            .help("How far the ends reach beyond the sleeve's outside. They must stop short of the curved drip flange.");
    /** How it is bent. */
    public static final BendInputs BEND = BendInputs.of("gutter");

    /** All of them, in order. */
    static final Group GROUP = Group.of("gutter", "Gutter", SHEET, INSIDE_WIDTH, DEPTH, CLEARANCE, SPOUT, BEND);

    private GutterInputs() {
    }
}

package org.capwright.job;

import org.capwright.units.Length;

/** How far a shop's work strays, for the tolerance run. All defaults are common practice of a good hand shop, no source. */
public final class ToleranceInputs {
    private static final String DEFAULT = " Default: common practice, no source; put in what your own shop measures.";

    /** Distribution. */
    public static final Input<Spreading> SPREADING = Input.choice("tolerance.spreading", "spreading", Spreading.class)
            .or(Spreading.NORMAL.word()).help("Normal: 19 builds in 20 lie within the tolerance. Uniform: all do, evenly.");
    /** Hood diameter. */
    public static final Input<Length> HOOD_DIAMETER = length("hoodDiameter", "hood diameter", "1/8 in",
            "Mean diameter of the rolled hood, either way.");
    /** Ovality of the hood. */
    public static final Input<Length> OVALITY = length("ovality", "ovality", "1/8 in",
            "Largest radius over the mean radius of the hood; its direction is random.");
    /** Shift of the hood. */
    public static final Input<Length> SHIFT = length("shift", "hood shift", "1/16 in",
            "Hood off the sleeve's centre, along x and along y.");
    /** Position of the rods. */
    public static final Input<Length> ROD_POSITION = length("rodPosition", "rod position", "1/32 in",
            "Whole rod from the hinge flange, either way, both ends alike.");
    /** Height of the rods. */
    public static final Input<Length> ROD_HEIGHT = length("rodHeight", "rod height", "1/32 in",
            "Whole rod above the rim, either way, both ends alike.");
    /** Position of each rod end. */
    public static final Input<Length> ROD_END_POSITION = length("rodEndPosition", "rod end position", "1/64 in",
            "Each end of a rod by itself, from the hinge flange: two ends that differ skew the rod.");
    /** Height of each rod end. */
    public static final Input<Length> ROD_END_HEIGHT = length("rodEndHeight", "rod end height", "1/64 in",
            "Each end of a rod by itself, above the rim: two ends that differ tilt the rod.");
    /** Leaf radius. */
    public static final Input<Length> LEAF_RADIUS = length("leafRadius", "leaf radius", "1/32 in",
            "Outside of the shrunk curved flange, either way.");
    /** Flange depth. */
    public static final Input<Length> FLANGE_DEPTH = length("flangeDepth", "flange depth", "1/32 in",
            "Both drip flanges, either way.");
    /** Share of builds wanted clear. */
    public static final Input<Double> SHARE = Input.number("tolerance.share", "share wanted").between("0.5", "0.9999").or("0.99")
            .help(
                "Share of builds that are wanted to clear; the tolerance run says which annulus it would take. More "
                    + "certainty costs a wider hood.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("tolerance", "Tolerances", SPREADING, HOOD_DIAMETER, OVALITY, SHIFT, ROD_POSITION,
            ROD_HEIGHT,
            ROD_END_POSITION, ROD_END_HEIGHT, LEAF_RADIUS, FLANGE_DEPTH, SHARE);

    private ToleranceInputs() {
    }

    /** How values lie about the drawn one. */
    public enum Spreading implements Word {
        /** Normal; the tolerance is two standard deviations. */
        NORMAL,
        /** Uniform between both ends of the tolerance. */
        UNIFORM
    }

    private static Input<Length> length(String name, String label, String fallback, String help) {
        return Input.length("tolerance." + name, label).between("0 in", "2 in").or(fallback).help(help + DEFAULT);
    }
}

package org.capwright.job;

/** Which parts have been cut: they keep their sizes, and the rest is derived from them. */
public final class HeldInputs {
    /** The sleeve. */
    public static final Input<Held> SLEEVE = held("sleeve", "sleeve");
    /** The hood. */
    public static final Input<Held> HOOD = held("hood", "hood");
    /** The leaves. */
    public static final Input<Held> LEAVES = held("leaves", "leaves");
    /** The gutters. */
    public static final Input<Held> GUTTER = held("gutter", "gutter");
    /** The rods. */
    public static final Input<Held> RODS = held("rods", "rods");
    /** The standoffs. */
    public static final Input<Held> STANDOFFS = held("standoffs", "standoffs");
    /** The stop bars. */
    public static final Input<Held> STOP = held("stop", "stop bar");

    /** All of them, in order. */
    static final Group GROUP = Group.of("held", "Parts already cut", SLEEVE, HOOD, LEAVES, GUTTER, RODS, STANDOFFS, STOP);

    private HeldInputs() {
    }

    /** Whether a part is cut. */
    public enum Held implements Word {
        /** Not cut yet: may still change. */
        OPEN,
        /** Cut: keeps its size, the measured one where there is one. */
        CUT
    }

    private static Input<Held> held(String name, String label) {
        return Input.choice("held." + name, label, Held.class).orAuto()
                .help(
                "Cut: the part exists and keeps its size, measured or drawn, and the rest follows it. Open: it may "
                    + "still change. Auto: cut where it has been measured, else open.");
    }
}

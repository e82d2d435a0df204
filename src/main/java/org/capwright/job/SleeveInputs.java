package org.capwright.job;

import org.capwright.metal.SeamKind;
import org.capwright.units.Length;

/** The lower cylinder that slips over the stack. */
public final class SleeveInputs {
    /** What it is made of. */
    public static final SheetInputs SHEET = SheetInputs.of("sleeve", 18);
    /** Height from foot to rim. */
    public static final Input<Length> HEIGHT = Input.length("sleeve.height", "height").between("3 in", "48 in")
            .or("10 in").help("From foot to rim.");
    /** Number of pieces round the girth. */
    public static final Input<Integer> PIECES = Input.count("sleeve.pieces", "pieces").between("1", "6").orAuto()
            .help("How many sheets make the girth. Auto: as few as the stock's length allows.");
    /** How it is closed. */
    public static final SeamInputs SEAM = SeamInputs.of("sleeve", SeamKind.BUTT);
    /** Whether there is a stop bead. */
    public static final Input<Presence> STOP_BEAD = Input.choice("sleeve.stopBead.kind", "stop bead", Presence.class)
            .or(Presence.BEAD.word()).help("An inward bead that rests on the stack's end.");
    /** Centre of the stop bead above the foot. */
    public static final Input<Length> STOP_BEAD_FROM_FOOT = Input.length("sleeve.stopBead.fromFoot", "bead from foot")
            .between("1 in", "47 in").orAuto()
            .help("Centre of the stop bead above the foot: how far the sleeve goes down over the stack. Auto: half the height.");
    /** Width of the stop bead. */
    public static final Input<Length> STOP_BEAD_WIDTH = Input.length("sleeve.stopBead.width", "bead width")
            .between("1/8 in", "2 in").or("1/2 in").help("Width of the bead across its mouth.");
    /** Depth of the stop bead. */
    public static final Input<Length> STOP_BEAD_DEPTH = Input.length("sleeve.stopBead.depth", "bead depth")
            .between("1/32 in", "1 in").or("3/16 in").help("How far the bead stands in. At most half its width.");
    /** Number of fastener holes near the foot. */
    public static final Input<Integer> HOLE_COUNT = Input.count("sleeve.fastenerHoles.count", "fastener holes")
            .between("0", "48").or("6").help("Holes near the foot for screws into the stack.");
    /** Diameter of the fastener holes. */
    public static final Input<Length> HOLE_DIAMETER = Input.length("sleeve.fastenerHoles.diameter", "hole diameter")
            .between("1/16 in", "1 in").or("3/16 in").help("Diameter of the fastener holes.");
    /** Height of the fastener holes above the foot. */
    public static final Input<Length> HOLE_FROM_FOOT = Input.length("sleeve.fastenerHoles.fromFoot", "holes from foot")
            .between("1/4 in", "24 in").or("1 in").help("Centre of the fastener holes above the foot.");
    /** Finish of the foot. */
    public static final EdgeInputs FOOT_EDGE = EdgeInputs.of("sleeve.footEdge", "foot edge");

    /** All of them, in order. */
    static final Group GROUP = Group.of("sleeve", "Sleeve", SHEET, HEIGHT, PIECES, SEAM, STOP_BEAD, STOP_BEAD_FROM_FOOT,
            STOP_BEAD_WIDTH, STOP_BEAD_DEPTH, HOLE_COUNT, HOLE_DIAMETER, HOLE_FROM_FOOT, FOOT_EDGE);

    private SleeveInputs() {
    }

    /** Whether the sleeve has a stop bead. */
    public enum Presence implements Word {
        /** An inward bead. */
        BEAD,
        /** No bead. */
        NONE
    }
}

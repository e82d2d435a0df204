package org.capwright.job;

import org.capwright.metal.SeamKind;
import org.capwright.units.Length;

/** The lower cylinder that slips over the stack. */
public final class SleeveInputs {
    /** What it is made of. */
    public static final SheetInputs SHEET = SheetInputs.of("sleeve", 18);
    /** Height from foot to rim. */
    public static final Input<Length> HEIGHT = Input.length("sleeve.height", "height").between("3 in", "48 in")
            .or("10 in").help(
                "Height of the sleeve from foot to rim, which carries everything else. Measure how much straight "
                    + "stack it can grip, and add what must stand above it.");
    /** Number of pieces round the girth. */
    public static final Input<Integer> PIECES = Input.count("sleeve.pieces", "pieces").between("1", "6").orAuto()
            .help(
                "How many sheets make the girth, a seam more for each. Auto: as few as the stock's length allows.");
    /** How it is closed. */
    public static final SeamInputs SEAM = SeamInputs.of("sleeve", SeamKind.BUTT);
    /** Whether there is a stop bead. */
    public static final Input<Presence> STOP_BEAD = Input.choice("sleeve.stopBead.kind", "stop bead", Presence.class)
            .or(Presence.BEAD.word()).help(
                "Whether an inward bead rests on the stack's end, which sets how deep the sleeve goes on and carries "
                    + "the cap. Without it the screws carry everything.");
    /** Centre of the stop bead above the foot. */
    public static final Input<Length> STOP_BEAD_FROM_FOOT = Input.length("sleeve.stopBead.fromFoot", "bead from foot")
            .between("1 in", "47 in").orAuto()
            .help("Centre of the stop bead above the foot: how far the sleeve goes down over the stack. Auto: half the height.");
    /** Width of the stop bead. */
    public static final Input<Length> STOP_BEAD_WIDTH = Input.length("sleeve.stopBead.width", "bead width")
            .between("1/8 in", "2 in").or("1/2 in").help(
                "Width of the bead across its mouth; it decides what the bead takes up of the sheet. Measure a bead "
                    + "that your own rolls made.");
    /** Depth of the stop bead. */
    public static final Input<Length> STOP_BEAD_DEPTH = Input.length("sleeve.stopBead.depth", "bead depth")
            .between("1/32 in", "1 in").or("3/16 in").help(
                "How far the bead stands in, at most half its width: it must catch the stack's end all round, slip "
                    + "included.");
    /** Number of fastener holes near the foot. */
    public static final Input<Integer> HOLE_COUNT = Input.count("sleeve.fastenerHoles.count", "fastener holes")
            .between("0", "48").or("6").help(
                "How many holes near the foot take screws into the stack; they hold the cap down in wind. Anchorage "
                    + "belongs to local codes.");
    /** Diameter of the fastener holes. */
    public static final Input<Length> HOLE_DIAMETER = Input.length("sleeve.fastenerHoles.diameter", "hole diameter")
            .between("1/16 in", "1 in").or("3/16 in").help(
                "Diameter of the fastener holes. Take the screw maker's drill size, and drill one in scrap first.");
    /** Height of the fastener holes above the foot. */
    public static final Input<Length> HOLE_FROM_FOOT = Input.length("sleeve.fastenerHoles.fromFoot", "holes from foot")
            .between("1/4 in", "24 in").or("1 in").help(
                "Centre of the fastener holes above the foot, at least two diameters so that they do not tear out. It "
                    + "must miss the stop bead and hit sound stack.");
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

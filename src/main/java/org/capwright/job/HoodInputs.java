package org.capwright.job;

import org.capwright.metal.SeamKind;
import org.capwright.units.Length;

/** The larger cylinder round the leaves. */
public final class HoodInputs {
    /** What it is made of. */
    public static final SheetInputs SHEET = SheetInputs.of("hood", 22);
    /** Gap between the sleeve's outside and the hood's inside. */
    public static final Input<Length> ANNULUS = Input.length("hood.annulus", "annulus").between("1/2 in", "12 in")
            .or("2 in").help("Gap all round between sleeve and hood, where the rain that the hood catches drains.");
    /** How far the hood hangs below the rim. */
    public static final Input<Length> BELOW_RIM = Input.length("hood.belowRim", "below rim").between("1 in", "36 in")
            .or("4 in").help(
                "How far the hood hangs below the sleeve's rim: it keeps driven rain from the joint and gives the "
                    + "standoffs their place. Measure from the rim down to the hood's foot.");
    /** How far the hood stands above the rim. */
    public static final Input<Length> ABOVE_RIM = Input.length("hood.aboveRim", "above rim").between("1 in", "72 in")
            .orAuto().help("How far the hood stands above the rim. Auto: just over the tips of the open leaves.");
    /** Number of pieces round the girth. */
    public static final Input<Integer> PIECES = Input.count("hood.pieces", "pieces").between("1", "6").orAuto()
            .help(
                "How many sheets make the girth, a seam more for each. Auto: as few as the stock's length allows.");
    /** How it is closed. */
    public static final SeamInputs SEAM = SeamInputs.of("hood", SeamKind.LAP);
    /** The path of the list of beads. */
    public static final String BEADS = "hood.beads";
    /** Centre of a bead below the top edge. */
    public static final Input<Length> BEAD_FROM_TOP = Input.length("hood.beads[].fromTop", "from top")
            .between("1/4 in", "108 in").help(
                "Centre of the bead below the hood's top edge. It stiffens the hood there and must keep off rivet "
                    + "holes and doubler plates.");
    /** Width of a bead. */
    public static final Input<Length> BEAD_WIDTH = Input.length("hood.beads[].width", "bead width")
            .between("1/8 in", "2 in").or("1/2 in").help(
                "Width of the bead across its mouth; it decides what the bead takes up of the sheet. Measure a bead "
                    + "that your own rolls made.");
    /** Depth of a bead. */
    public static final Input<Length> BEAD_DEPTH = Input.length("hood.beads[].depth", "bead depth")
            .between("1/32 in", "1 in").or("1/8 in").help(
                "How far the bead stands out or in, at most half its width: deeper stiffens more and takes up more of "
                    + "the sheet.");
    /** Side to which a bead stands. */
    public static final Input<BeadSide> BEAD_SIDE = Input.choice("hood.beads[].side", "bead side", BeadSide.class)
            .or(BeadSide.OUT.word()).help(
                "Outward, or inward, which narrows the bore there and may foul the leaves.");
    /** Finish of the top edge. */
    public static final EdgeInputs TOP_EDGE = EdgeInputs.of("hood.topEdge", "top edge");
    /** Finish of the foot. */
    public static final EdgeInputs FOOT_EDGE = EdgeInputs.of("hood.footEdge", "foot edge");

    /** All of them, in order. */
    static final Group GROUP = Group.of("hood", "Hood", SHEET, ANNULUS, BELOW_RIM, ABOVE_RIM, PIECES, SEAM,
            BEAD_FROM_TOP, BEAD_WIDTH, BEAD_DEPTH, BEAD_SIDE, TOP_EDGE, FOOT_EDGE);

    private HoodInputs() {
    }

    /** Side to which a bead stands. */
    public enum BeadSide implements Word {
        /** Outwards. */
        OUT,
        /** Inwards. */
        IN
    }
}

package org.capwright.job;

import java.util.List;
import org.capwright.units.Angle;
import org.capwright.units.Length;

/** The damper leaves. */
public final class LeafInputs {
    /** Number of leaves. */
    public static final Input<Integer> COUNT = Input.bare("leaves.count", "leaves",
            Kind.choice(List.of(2, 4, 6), String::valueOf)).or("2")
            .help("Two, back to back, is usual. Four or six for big stacks: lower hood and lighter leaves, more gutters.");
    /** What they are made of. */
    public static final SheetInputs SHEET = SheetInputs.of("leaves", 20);
    /** Inside face of the curved drip flange beyond the sleeve's outside. */
    public static final Input<Length> COVER = Input.length("leaves.cover", "cover").between("1/8 in", "4 in").or("1/2 in")
            .help("How far the inside of the curved drip flange stands beyond the sleeve's outside.");
    /** Gap between the hinge-flange outside faces of a pair. */
    public static final Input<Length> GAP = Input.length("leaves.gap", "gap").between("1/16 in", "3 in").or("1/2 in")
            .help(
                "Gap between the two hinge edges over a gutter: wide enough that the leaves never touch, narrow "
                    + "enough that the gutter catches all rain. Measure it with the leaves closed.");
    /** Drip flange depth on the curve. */
    public static final Input<Length> DRIP_FLANGE = Input.length("leaves.dripFlange", "drip flange")
            .between("1/8 in", "2 in").or("1/2 in").help(
                "Depth of the curved flange, outside, from the leaf's top face to the lip: deeper throws rain better "
                    + "off and is harder to shrink.");
    /** Drip flange depth on the hinge edge. */
    public static final Input<Length> HINGE_FLANGE = Input.length("leaves.hingeFlange", "hinge flange")
            .between("1/8 in", "2 in").or("0.3 in")
            .help("From the leaf's top face to the lip, outside, along the hinge edge. Deeper needs a wider gutter.");
    /** Turn of the flanges from flat. */
    public static final Input<Angle> FLANGE_ANGLE = Input.angle("leaves.flangeAngle", "flange angle")
            .between("30 deg", "90 deg").or("90 deg").help(
                "Turn of the drip flanges from flat; 90 is straight down. Less shrinks easier but stands out nearer "
                    + "to the hood.");
    /** How the flanges are bent. */
    public static final BendInputs BEND = BendInputs.of("leaves");
    /** Share of the growth that the shrunk flange really shows. */
    public static final Input<Double> KAPPA = Input.number("leaves.shrink.kappa", "kappa").between("0", "1").or("0.5")
            .help("0: all gathered in pleats, none of the metal pushed outwards; 1: gathered without any thickening.");
    /** The shop's own extra on the blank, trimmed after shrinking. */
    public static final Input<Length> TRIM = Input.length("leaves.shrink.trim", "trim").between("0 in", "1 in").or("0 in")
            .help(
                "Extra on the curved edge of the blank, trimmed after shrinking, for a shop whose shrinking comes out "
                    + "uneven.");
    /** Passes in which the curved flange is turned. */
    public static final Input<Integer> PASSES = Input.count("leaves.shrink.passes", "passes").between("1", "8").or("3")
            .help(
                "Passes in which the curved flange is turned and shrunk: more passes gather less at a time and pleat "
                    + "less.");
    /** Bite of one crimp along the lip. */
    public static final Input<Length> BITE = Input.length("leaves.shrink.bite", "crimp take-up")
            .between("0.005 in", "1/4 in").or("1/32 in")
            .help("How much one crimp takes up along the lip. Sets the number of crimps; try it on scrap.");
    /** Gap left for welding where two flanges meet. */
    public static final Input<Length> CORNER_GAP = Input.length("leaves.cornerGap", "corner gap")
            .between("0 in", "1/4 in").or("1/32 in").help(
                "Weld gap where two flanges meet at a corner: none at all and the flanges push each other out as they "
                    + "are bent. As wide as your welder likes to fill.");
    /** Diameter of the relief hole at a corner. */
    public static final Input<Length> RELIEF_HOLE = Input.length("leaves.reliefHole", "relief hole")
            .between("1/32 in", "1/2 in").orAuto()
            .help("Diameter of the hole drilled where two bend lines meet. Auto: twice the thickness, at least 1/8 in, and large enough to reach the ends of both flanges.");
    /** First joint from the axis. */
    public static final Input<Length> FIRST_JOINT = Input.length("leaves.firstJoint", "first joint")
            .between("1 in", "48 in").orAuto().help("Distance of the first joint from the stack's axis, for four or six leaves. Auto: equal leaf lengths.");
    /** Second joint from the axis. */
    public static final Input<Length> SECOND_JOINT = Input.length("leaves.secondJoint", "second joint")
            .between("1 in", "48 in").orAuto().help("Distance of the second joint from the stack's axis, for six leaves. Auto: equal leaf lengths.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("leaves", "Leaves", COUNT, SHEET, COVER, GAP, DRIP_FLANGE, HINGE_FLANGE,
            FLANGE_ANGLE, BEND, KAPPA, TRIM, PASSES, BITE, CORNER_GAP, RELIEF_HOLE, FIRST_JOINT, SECOND_JOINT);

    private LeafInputs() {
    }
}

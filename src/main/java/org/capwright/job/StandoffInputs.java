package org.capwright.job;

import org.capwright.units.Angle;
import org.capwright.units.Length;

/** The brackets that carry the hood from the sleeve. */
public final class StandoffInputs {
    /** What they are made of. */
    public static final SheetInputs SHEET = SheetInputs.of("standoffs", 16);
    /** Number of standoffs. */
    public static final Input<Integer> COUNT = Input.count("standoffs.count", "count").between("3", "24").orAuto()
            .help(
                "How many brackets carry the hood, evenly spaced. Auto: 4 up to a 12 in stack, 6 up to 30 in, 8 "
                    + "above.");
    /** Azimuth of the first standoff. */
    public static final Input<Angle> FIRST = Input.angle("standoffs.first", "first at").between("0 deg", "360 deg").orAuto()
            .help("Azimuth of the first. Auto: as far as possible from gutter mouths and bushing plates.");
    /** Height of a standoff. */
    public static final Input<Length> HEIGHT = Input.length("standoffs.height", "height").between("1/2 in", "24 in")
            .or("2 in").help(
                "Height of the bracket along the stack: taller holds the hood stiffer and leaves room for rivets. "
                    + "Measure along its flanges.");
    /** Top of the standoffs below the rim. */
    public static final Input<Length> BELOW_RIM = Input.length("standoffs.belowRim", "top below rim")
            .between("1/4 in", "36 in").orAuto()
            .help("How far their top edge is below the rim. Auto: drip flange depth and 3/8 in more.");
    /** Outside width of the flange on the sleeve. */
    public static final Input<Length> INNER_FLANGE = Input.length("standoffs.innerFlange", "inner flange")
            .between("1/4 in", "4 in").or("1 in").help(
                "Outside width of the flange that is welded to the sleeve: wider gives more weld, and leans farther "
                    + "off the round. Measure over the bend.");
    /** Outside width of the flange on the hood. */
    public static final Input<Length> OUTER_FLANGE = Input.length("standoffs.outerFlange", "outer flange")
            .between("1/4 in", "4 in").or("1 in").help(
                "Outside width of the flange that is riveted to the hood: two rivet diameters at least on each side "
                    + "of the hole. Measure over the bend.");
    /** Size of the rivets. */
    public static final Input<Length> RIVET = Input.length("standoffs.rivet", "rivet").between("3/32 in", "1/4 in")
            .or("3/16 in").help(
                "Nominal diameter of the blind rivets; it decides holes, edge distance and pitch. It stands on the "
                    + "box.");
    /** Rivets a standoff. */
    public static final Input<Integer> RIVETS_EACH = Input.count("standoffs.rivetsEach", "rivets each").between("1", "12")
            .or("2").help(
                "Rivets in each outer flange, one above the other: more hold better until their pitch becomes too "
                    + "small.");
    /** How it is bent. */
    public static final BendInputs BEND = BendInputs.of("standoffs");

    /** All of them, in order. */
    static final Group GROUP = Group.of("standoffs", "Standoffs", SHEET, COUNT, FIRST, HEIGHT, BELOW_RIM, INNER_FLANGE,
            OUTER_FLANGE, RIVET, RIVETS_EACH, BEND);

    private StandoffInputs() {
    }
}

package org.capwright.job;

import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.Temperature;

/** What the checks ask for. A shop's own limits can stand in its shop file; a job's in the job. */
public final class LimitInputs {
    /** Least slip on the diameter. */
    public static final Input<Length> SLIP = length("slip", "slip", "1/16 in",
                "Least slip of the sleeve over the stack, on the diameter: welds, dents and paint use it up. Compare "
                    + "both girths, divided by 3.1416.");
    /** Least cover. */
    public static final Input<Length> COVER = length("cover", "cover", "1/2 in",
            "Least distance of the curved drip flange's inside beyond the sleeve's outside.");
    /** Least clearance of leaf and hood. */
    public static final Input<Length> LEAF_HOOD = length("leafHood", "leaf to hood", "1/4 in",
                "Least clearance of a leaf and the hood's inside: it must take up an oval hood, dents and ice. Gauge "
                    + "it as the leaf swings.");
    /** Least clearance of heel and gutter, wall and floor. */
    public static final Input<Length> HEEL = length("heel", "heel to gutter", "1/16 in",
                "Least clearance of a leaf's heel and its gutter's wall and floor: dirt and ice gather there. Slide a "
                    + "feeler down beside the heel as the leaf swings.");
    /** Least clearance of curved lip and standoffs. */
    public static final Input<Length> LIP_STANDOFF = length("lipStandoff", "lip to standoffs", "1/4 in",
                "Least clearance of the curved lip over the standoffs' tops: a lip that lands on a bracket holds the "
                    + "leaf open. Measure straight down, leaf closed.");
    /** Least clearance of spout and curved flange. */
    public static final Input<Length> FLANGE_SPOUT = length("flangeSpout", "flange to spout", "1/8 in",
                "Least clearance of the spouts and the curved drip flange, so that water drips off and does not "
                    + "bridge. Gauge it at the spout's corner, leaf closed.");
    /** Least clearance of a leaf and anything else: sleeve, other leaves, rods, bars, bushings. */
    public static final Input<Length> OTHER = length("other", "leaf to anything else", "1/16 in",
            "Least clearance of a leaf and the sleeve, other leaves, rods, bars and bushing ends.");
    /** Smallest opening at the stop. */
    public static final Input<Angle> STOP_LEAST = Input.angle("limits.stopLeast", "stop, least").between("30 deg", "89.5 deg")
            .or("80 deg").help(
                "Smallest opening at the stop: less blocks the air. Lay an angle finder on the open leaf.");
    /** Largest opening at the stop. */
    public static final Input<Angle> STOP_MOST = Input.angle("limits.stopMost", "stop, most").between("30 deg", "89.5 deg")
            .or("88 deg").help(
                "Largest opening at the stop: more, and a leaf may not fall shut. Lay an angle finder on the open "
                    + "leaf.");
    /** Least length of leaf beyond the stop's contact. */
    public static final Input<Length> CONTACT = length("contact", "leaf beyond contact", "1/4 in",
                "Least length of leaf beyond where it meets the stop bar: a leaf that only just touches slips past. "
                    + "Measure from the contact to the free edge.");
    /** Least height of the hood over the open leaves' tips. */
    public static final Input<Length> TIP_COVER = length("tipCover", "hood over tips", "1/8 in",
                "Least height of the hood's top over the open leaves' tips, which keeps wind from getting under them. "
                    + "Measure down from a straightedge across the hood.");
    /** Least closing ratio. */
    public static final Input<Double> CLOSING_RATIO = Input.number("limits.closingRatio", "closing ratio").between("1", "100")
            .or("3").help(
                "Least ratio of closing moment to bushing friction: the spare that dirt, paint and age use up before "
                    + "a leaf hangs open.");
    /** Least float angle at the design flow, where the duty asks for no more. */
    public static final Input<Angle> FLOAT = Input.angle("limits.float", "float angle").between("0 deg", "89 deg").or("30 deg")
            .help("Least opening at the design flow. A spray booth's leaves must reach the stop instead.");
    /** Least free area as a share of the bore. */
    public static final Input<Double> FREE_AREA = Input.number("limits.freeArea", "free area").between("0.3", "1").or("0.8")
            .help(
                "Least free area as a share of the sleeve's bore: gutters that are too wide cost the fan pressure.");
    /** What bend radii are held to. */
    public static final Input<BendRadii> BEND_RADIUS = Input.choice("limits.bendRadius", "bend radii by", BendRadii.class)
            .or(BendRadii.ANNEALED.word())
            .help("Annealed: at least the sheet's thickness. Design table: tight below a conservative table's "
                    + "radius as well; take it for hard sheet, which cracks sooner.");
    /** Largest strain of the shrunk lip. */
    public static final Input<Double> SHRINK = Input.number("limits.shrink", "shrink at the lip").between("0.005",
            "0.3").or("0.06")
            .help(
                "Largest share of its length that the curved lip is shrunk by, before it pleats. Try it on scrap: the "
                    + "default is a guess.");
    /** Least distance from bead to hole. */
    public static final Input<Length> HOLE_BEAD = length("holeBead", "hole to bead", "1/8 in",
                "Least distance of a hole's edge from the edge of a bead: on a bead a rivet does not pull tight. "
                    + "Measure along the height.");
    /** Largest sag of a rod. */
    public static final Input<Length> SAG = length("sag", "rod sag", "1/32 in",
                "Largest sag of a pivot rod under its leaf: a sagging rod binds in its bushings. Stretch a string "
                    + "along the rod and measure in the middle.");
    /** Largest bending stress of a rod. */
    public static final Input<Double> STRESS = Input.number("limits.stress", "rod stress").between("5", "500").or("120")
            .help(
                "Largest bending stress of a pivot rod in MPa, well under what the metal bears. Take it from the "
                    + "bar's data sheet: a good half of the yield.");
    /** Least end play on each side. */
    public static final Input<Length> END_PLAY = length("endPlay", "end play", "1/32 in",
                "Least end play of a rod on each side; with less, heat or paint seizes it. Push the rod to one end, "
                    + "measure at the other, and halve it.");
    /** Least gap between the closed leaves' edge and the hood. */
    public static final Input<Length> DRAIN = length("drain", "annulus drain", "1/2 in",
            "Least gap between the closed leaves' edge and the hood, through which the annulus drains.");
    /** Least distance of a seam from anything else. */
    public static final Input<Length> SEAM = length("seam", "seam to features", "1/2 in",
                "Least distance of a cylinder's seam from holes, notches and plates, and never less than half of what "
                    + "the seam takes: a hole in a seam leaks.");
    /** Highest temperature of the bushings. */
    public static final Input<Temperature> BUSHING = Input.temperature("limits.bushing", "bushing temperature")
            .between("0 C", "400 C").or("75 C").help(
                "Highest temperature of oil-bronze bushings, before the oil leaves them and they seize. Ask the maker "
                    + "of the part in hand.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("limits", "Limits", SLIP, COVER, LEAF_HOOD, HEEL, LIP_STANDOFF, FLANGE_SPOUT, OTHER,
            STOP_LEAST, STOP_MOST, CONTACT, TIP_COVER, CLOSING_RATIO, FLOAT, FREE_AREA, BEND_RADIUS, SHRINK, HOLE_BEAD, SAG,
            STRESS, END_PLAY, DRAIN, SEAM, BUSHING);

    private LimitInputs() {
    }

    /** What bend radii are held to. */
    public enum BendRadii implements Word {
        /** The rule for annealed sheet. */
        ANNEALED,
        /** That rule, and a conservative design table. */
        DESIGN_TABLE
    }

    private static Input<Length> length(String name, String label, String fallback, String help) {
        return Input.length("limits." + name, label).between("0 in", "12 in").or(fallback).help(help);
    }
}

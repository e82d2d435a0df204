package org.capwright.job;

import org.capwright.units.Angle;
import org.capwright.units.Length;

/**
 * What was measured of a cap that is being made: apart from the design, which stays as it was drawn. A reading that was not
 * taken is left out. Each list holds any number of readings.
 */
public final class FitInputs {
    /** When it was measured. */
    public static final Input<String> DATE = Input.text("fit.date", "measured on").help(
                "Date of the readings, as the shop writes it: sheet moves as it is welded, so old readings may not "
                    + "hold.");
    /** Accuracy of a reading that states none of its own. */
    public static final Input<Length> ACCURACY = Input.length("fit.accuracy", "accuracy").between("0.001 in",
            "1/2 in").or("1/32 in")
            .help("How far off a reading may be, either way, 19 times in 20. Default: half a sixteenth on a tape (common practice, no source).");
    /** Girth of the stack. */
    public static final Input<Length> STACK_GIRTH = girth("fit.stackGirth", "stack girth",
                "Girth of the stack, with a tape round its outside, pulled snug and level. It gives the mean diameter "
                    + "even where the stack is oval.");
    /** The list of diameters of the stack. */
    public static final String STACK = "fit.stack";
    /** Azimuth of a diameter of the stack. */
    public static final Input<Angle> STACK_AZIMUTH = azimuth(STACK + "[].azimuth", "stack diameter at");
    /** A diameter of the stack. */
    public static final Input<Length> STACK_DIAMETER = large(STACK + "[].diameter", "stack diameter",
                "Outside diameter of the stack at that azimuth, with a large caliper or between two straightedges. "
                    + "Two that differ show how oval it is.");
    /** Girth of the sleeve. */
    public static final Input<Length> SLEEVE_GIRTH = girth("fit.sleeveGirth", "sleeve girth",
                "Girth of the rolled sleeve, with a tape round its outside near the rim, pulled snug and level. "
                    + "Leaves and gutters are derived from it.");
    /** The list of diameters of the sleeve. */
    public static final String SLEEVE = "fit.sleeve";
    /** Azimuth of a diameter of the sleeve. */
    public static final Input<Angle> SLEEVE_AZIMUTH = azimuth(SLEEVE + "[].azimuth", "sleeve diameter at");
    /** A diameter of the sleeve. */
    public static final Input<Length> SLEEVE_DIAMETER = large(SLEEVE + "[].diameter", "sleeve diameter",
                "Outside diameter of the sleeve at that azimuth, near the rim. Two that differ show how oval it is.");
    /** The list of readings of the hood's bore. */
    public static final String HOOD_BORE = "fit.hoodBore";
    /** Azimuth of a reading of the hood's bore. */
    public static final Input<Angle> HOOD_AZIMUTH = azimuth(HOOD_BORE + "[].azimuth", "bore at");
    /** Diameter of the hood's bore. */
    public static final Input<Length> HOOD_DIAMETER = large(HOOD_BORE + "[].diameter", "bore diameter",
            "Inside of the hood, right across. A diameter tells size and ovality, not where the hood stands.");
    /** Radius of the hood's bore. */
    public static final Input<Length> HOOD_RADIUS = large(HOOD_BORE + "[].radius", "bore radius",
            "From the stack's axis (the sleeve's centre) to the inside of the hood. Type this or the diameter.");
    /** Accuracy of a reading of the hood's bore. */
    public static final Input<Length> HOOD_ACCURACY = accuracy(HOOD_BORE);
    /** The list of gaps between sleeve and hood. */
    public static final String GAPS = "fit.gaps";
    /** Azimuth of a gap. */
    public static final Input<Angle> GAP_AZIMUTH = Input.angle(GAPS + "[].azimuth", "gap at").between("-360 deg",
            "360 deg").orAuto()
            .help("Auto: the first reading at the first standoff, the second at the second, and so on.");
    /** Gap between the sleeve's outside and the hood's inside. */
    public static final Input<Length> GAP = Input.length(GAPS + "[].gap", "gap").between("0 in", "24 in").orAuto()
            .help("From the outside of the sleeve to the inside of the hood, square to the sleeve.");
    /** Accuracy of a gap. */
    public static final Input<Length> GAP_ACCURACY = accuracy(GAPS);
    /** The list of rod ends. */
    public static final String RODS = "fit.rods";
    /** Number of the rod. */
    public static final Input<Integer> ROD_NUMBER = number(RODS);
    /** Side of the rod. */
    public static final Input<Side> ROD_SIDE = side(RODS, "side", "rod's side",
                "Whether the rod on the +x or on the -x side was measured: fit-up takes each side by itself. Mark +x "
                    + "on the hood before you start.");
    /** End of the rod. */
    public static final Input<Side> ROD_END = side(RODS, "end", "rod's end",
                "Which end of the rod was measured, towards +y or towards -y: two ends that differ skew the rod. Mark "
                    + "+y on the hood before you start.");
    /** Height of the rod's axis at that end. */
    public static final Input<Length> ROD_HEIGHT = Input.length(RODS + "[].height", "axis height").between("-1 in",
            "6 in").orAuto()
            .help(
                "Height of the rod's axis above the rim at that end, leaf closed. Measure from the rim to the bar's "
                    + "top at the bushing, less half the bar.");
    /** Offset of the rod's axis at that end. */
    public static final Input<Length> ROD_OFFSET = Input.length(RODS + "[].offset", "axis offset").between("0 in",
            "6 in").orAuto()
            .help(
                "Rod axis from the hinge flange's outside face at that end, into the leaf. Measure from the flange to "
                    + "the bar's near side, and add half the bar.");
    /** The list of leaf lengths. */
    public static final String LEAVES = "fit.leaves";
    /** Number of the leaf. */
    public static final Input<Integer> LEAF_NUMBER = number(LEAVES);
    /** Side of the leaf. */
    public static final Input<Side> LEAF_SIDE = side(LEAVES, "side", "leaf's side",
                "Whether the leaf on the +x or on the -x side was measured: fit-up takes each side by itself. Mark +x "
                    + "on the hood before you start.");
    /** Where along the hinge edge the leaf was measured. */
    public static final Input<Length> LEAF_AT = Input.length(LEAVES + "[].at", "measured at").between("-48 in",
            "48 in").or("0 in")
            .help(
                "Where along the hinge edge the length was measured, from its middle towards +y: the leaf is shorter "
                    + "towards its corners.");
    /** Length of the leaf there. */
    public static final Input<Length> LEAF_LENGTH = Input.length(LEAVES + "[].length", "leaf length").between("1/2 in",
            "96 in").orAuto()
            .help("From the hinge flange's outside face square across to the outside of the curved flange.");
    /** Accuracy of a leaf length. */
    public static final Input<Length> LEAF_ACCURACY = accuracy(LEAVES);
    /** The list of covers. */
    public static final String COVERS = "fit.covers";
    /** Azimuth of a cover. */
    public static final Input<Angle> COVER_AZIMUTH = azimuth(COVERS + "[].azimuth", "cover at");
    /** Cover there. */
    public static final Input<Length> COVER = Input.length(COVERS + "[].cover", "cover").between("-1 in", "6 in").orAuto()
            .help(
                "Inside of the curved drip flange beyond the sleeve's outside, leaf closed. Push a taper gauge or a "
                    + "stack of strips in between.");
    /** The list of gutters. */
    public static final String GUTTERS = "fit.gutters";
    /** Number of the gutter. */
    public static final Input<Integer> GUTTER_NUMBER = number(GUTTERS);
    /** Inside width of the gutter. */
    public static final Input<Length> GUTTER_WIDTH = Input.length(GUTTERS + "[].width", "gutter width").between("1/2 in",
            "12 in").orAuto()
            .help(
                "Inside width of the bent channel at its narrowest, which is what the heel swings through. Measure at "
                    + "both ends and in the middle.");
    /** Inside depth of the gutter. */
    public static final Input<Length> GUTTER_DEPTH = Input.length(GUTTERS + "[].depth", "gutter depth").between("1/4 in",
            "6 in").orAuto()
            .help(
                "Inside depth of the gutter, from the rim down to the channel's floor. Lay a straightedge across the "
                    + "rim and measure down, at the shallowest place.");
    /** End play. */
    public static final Input<Length> END_PLAY = Input.length("fit.endPlay", "end play").between("-1 in", "2 in").orAuto()
            .help(
                "Play of the rod along itself, both sides together; the smallest of all rods. Push the rod to one end "
                    + "and measure between flange and washer at the other.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("fit", "Fit-up", DATE, ACCURACY, STACK_GIRTH, STACK_AZIMUTH, STACK_DIAMETER, SLEEVE_GIRTH,
            SLEEVE_AZIMUTH, SLEEVE_DIAMETER, HOOD_AZIMUTH, HOOD_DIAMETER, HOOD_RADIUS, HOOD_ACCURACY, GAP_AZIMUTH, GAP,
            GAP_ACCURACY,
            ROD_NUMBER, ROD_SIDE, ROD_END, ROD_HEIGHT, ROD_OFFSET, LEAF_NUMBER, LEAF_SIDE, LEAF_AT, LEAF_LENGTH, LEAF_ACCURACY,
            COVER_AZIMUTH, COVER, GUTTER_NUMBER, GUTTER_WIDTH, GUTTER_DEPTH, END_PLAY);

    private FitInputs() {
    }

    /** One side of the middle, along x or y. */
    public enum Side implements Word {
        /** Towards + . */
        PLUS,
        /** Towards - . */
        MINUS;

        /**
         * Its sign.
         *
         * @return +1 or -1
         */
        public int sign() {
            return this == PLUS ? 1 : -1;
        }
    }

    private static Input<Length> girth(String path, String label, String help) {
        return Input.length(path, label).between("12 in", "400 in").orAuto().help(help);
    }

    private static Input<Length> large(String path, String label, String help) {
        return Input.length(path, label).between("1 in", "144 in").orAuto().help(help);
    }

    private static Input<Angle> azimuth(String path, String label) {
        return Input.angle(path, label).between("-360 deg", "360 deg").or("0 deg")
                .help("Azimuth from the direction across the rods (+x) towards +y, seen from above.");
    }

    private static Input<Length> accuracy(String list) {
        return Input.length(list + "[].accuracy", "accuracy").between("0.001 in", "1/2 in").orAuto()
                .help("How far off this reading may be, either way. Auto: the accuracy of all readings.");
    }

    private static Input<Integer> number(String list) {
        return Input.count(list + "[].number", "number").between("1", "3").or("1").help(
                "Which of them was measured: 1 is next to the middle, then outwards.");
    }

    private static Input<Side> side(String list, String name, String label, String help) {
        return Input.choice(list + "[]." + name, label, Side.class).or(Side.PLUS.word()).help(help);
    }
}

package org.capwright.job;

import org.capwright.metal.Metal;
import org.capwright.units.Length;

/** Pivot rods, their bushings, and the doubler plates that hold those. */
public final class RodInputs {
    /** Metal of the rods. */
    public static final Input<Metal> METAL = SheetInputs.metal("rods").or(Metal.STAINLESS_304.word());
    /** Diameter of the rods. */
    public static final Input<Length> DIAMETER = Input.length("rods.diameter", "diameter").between("1/8 in", "2 in")
            .or("1/2 in").help(
                "Diameter of the solid round bar welded on top of the leaf: thicker sags less but lifts the leaf's "
                    + "axis and widens the gutter. Measure the bar with a caliper.");
    /** Rod axis from the hinge-flange outside face. */
    public static final Input<Length> OFFSET = Input.length("rods.offset", "offset").between("1/16 in", "4 in").orAuto()
            .help("Rod axis from the hinge flange's outside face, into the leaf. Auto: half the rod's diameter.");
    /** End play on each side. */
    public static final Input<Length> END_PLAY = Input.length("rods.endPlay", "end play a side")
            .between("0 in", "1/2 in").or("1/16 in").help(
                "Free play between bushing flange and washer, on each side, so that heat and paint do not seize the "
                    + "rod. Push the rod to one end, measure at the other, and halve it.");
    /** Outside diameter of the washers. */
    public static final Input<Length> WASHER_OUTSIDE = Input.length("rods.washer.outside", "washer outside")
            .between("1/4 in", "4 in").orAuto().help(
                "Outside diameter of the end washers, which hold the rod in its bushings. Auto: twice the rod's "
                    + "diameter.");
    /** Thickness of the washers. */
    public static final Input<Length> WASHER_THICKNESS = Input.length("rods.washer.thickness", "washer thickness")
            .between("0.02 in", "1/2 in").or("0.0747 in").help(
                "Thickness of the washers welded to the rod's ends: it adds to the rod's length. Measure a few with a "
                    + "caliper.");
    /** Bore of the bushings. */
    public static final Input<Length> BUSHING_BORE = Input.length("bushings.bore", "bore").between("1/8 in", "2 in")
            .orAuto().help("Bore of the flanged bushings. Auto: the rod's diameter. Measure the part in hand.");
    /** Outside diameter of the bushings' body. */
    public static final Input<Length> BUSHING_OUTSIDE = Input.length("bushings.outside", "outside")
            .between("3/16 in", "3 in").orAuto().help("Outside diameter of the body, the size of its hole. Measure the part in hand.");
    /** Outside diameter of the bushings' flange. */
    public static final Input<Length> BUSHING_FLANGE_OUTSIDE = Input.length("bushings.flangeOutside", "flange outside")
            .between("1/4 in", "4 in").orAuto().help(
                "Outside diameter of the bushing's flange, which the doubler plate must be wider than. Measure the "
                    + "part in hand; the table is from memory.");
    /** Thickness of the bushings' flange. */
    public static final Input<Length> BUSHING_FLANGE_THICKNESS = Input.length("bushings.flangeThickness", "flange thickness")
            .between("1/32 in", "1/2 in").orAuto().help(
                "Thickness of the bushing's flange, which the washer runs against: it adds to the rod's length. "
                    + "Measure the part in hand; the table is from memory.");
    /** Length of the bushings under the flange. */
    public static final Input<Length> BUSHING_LENGTH = Input.length("bushings.length", "length under flange")
            .between("1/16 in", "4 in").orAuto()
            .help("Length of the body under the flange, at every joint. Auto: at each joint just long enough to end flush "
                    + "with the hood's inside.");
    /** Metal of the doubler plates. */
    public static final Input<Metal> DOUBLER_METAL = SheetInputs.metal("doublers").or(Metal.GALVANIZED.word());
    /** Thickness of the doubler plates. */
    public static final Input<Length> DOUBLER_THICKNESS = Input.length("doublers.thickness", "thickness")
            .between("1/32 in", "1/2 in").or("1/8 in").help(
                "Thickness of the flat plate outside the hood that holds the bushings: the hood's own sheet is too "
                    + "thin to. Measure the plate in hand.");
    /** Height of the doubler plates. */
    public static final Input<Length> DOUBLER_HEIGHT = Input.length("doublers.height", "height").between("1/2 in", "8 in")
            .or("2 in").help(
                "Height of the doubler plate, centred on the rod: taller spreads the load over more of the hood. It "
                    + "must keep off the beads.");
    /** Edge of the plate beyond the bushing flange. */
    public static final Input<Length> DOUBLER_MARGIN = Input.length("doublers.margin", "side margin")
            .between("0 in", "4 in").or("1/2 in").help(
                "How far the doubler plate reaches beyond the bushing flanges on each side, for the weld. Less than "
                    + "the torch needs is no help.");

    /** The rods, in order. */
    static final Group RODS = Group.of("rods", "Rods", METAL, DIAMETER, OFFSET, END_PLAY, WASHER_OUTSIDE, WASHER_THICKNESS);
    /** The bushings, in order. */
    static final Group BUSHINGS = Group.of("bushings", "Bushings", BUSHING_BORE, BUSHING_OUTSIDE,
            BUSHING_FLANGE_OUTSIDE, BUSHING_FLANGE_THICKNESS, BUSHING_LENGTH);
    /** The doublers, in order. */
    static final Group DOUBLERS = Group.of("doublers", "Doubler plates", DOUBLER_METAL, DOUBLER_THICKNESS,
            DOUBLER_HEIGHT, DOUBLER_MARGIN);

    private RodInputs() {
    }
}

package org.capwright.check;

import java.util.List;
import java.util.Map;
import org.capwright.job.GutterInputs;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.LeafInputs;
import org.capwright.job.RodInputs;
import org.capwright.job.SleeveInputs;
import org.capwright.job.StackInputs;
import org.capwright.job.StandoffInputs;
import org.capwright.job.StopInputs;

/** Which inputs a lead hand would reach for, check by check, the likeliest first. */
final class Levers {
    private static final Lever ANNULUS = Lever.raise(HoodInputs.ANNULUS, "widen the annulus");
    private static final Lever HINGE_SHALLOWER = Lever.lower(LeafInputs.HINGE_FLANGE, "narrow the hinge flange");
    private static final Lever WIDER_GUTTER = Lever.raise(GutterInputs.INSIDE_WIDTH, "widen the gutter");
    private static final Lever DEEPER_GUTTER = Lever.raise(GutterInputs.DEPTH, "deepen the gutter");
    private static final Lever COVER = Lever.raise(LeafInputs.COVER, "give the leaves cover, up");
    private static final Lever THINNER_LEAF = Lever.raise(LeafInputs.SHEET.gauge(), "take thinner leaves, gauge",
            LeafInputs.SHEET.thickness());
    private static final Lever THICKER_LEAF = Lever.lower(LeafInputs.SHEET.gauge(), "take thicker leaves, gauge",
            LeafInputs.SHEET.thickness());
    private static final Lever THICKER_ROD = Lever.raise(RodInputs.DIAMETER, "take thicker rods", RodInputs.BUSHING_BORE,
            RodInputs.BUSHING_OUTSIDE, RodInputs.BUSHING_FLANGE_OUTSIDE, RodInputs.BUSHING_FLANGE_THICKNESS,
            RodInputs.BUSHING_LENGTH,
            RodInputs.WASHER_OUTSIDE, GutterInputs.INSIDE_WIDTH);
    private static final Lever GAP = Lever.raise(LeafInputs.GAP, "widen the gap between hinge edges");
    private static final Lever LOWER_STANDOFFS = Lever.raise(StandoffInputs.BELOW_RIM,
            "set the standoffs lower, top below the rim");
    private static final Lever DEEPER_BAR = Lever.raise(StopInputs.DEPTH, "deepen the stop bar");
    private static final Lever LONGER_HOOD = Lever.raise(HoodInputs.BELOW_RIM, "lengthen the hood below the rim");
    private static final Map<String, List<Lever>> BY_CHECK = Map.ofEntries(
            Map.entry("leaf.N.hood", List.of(ANNULUS, Lever.lower(LeafInputs.DRIP_FLANGE, "narrow the drip flange"))),
            Map.entry("heel.N.wall", List.of(HINGE_SHALLOWER, WIDER_GUTTER)),
            Map.entry("heel.N.floor", List.of(DEEPER_GUTTER, HINGE_SHALLOWER)),
            Map.entry("leaf.N.sleeve", List.of(COVER)),
            Map.entry("lip.N.standoff", List.of(LOWER_STANDOFFS)),
            Map.entry("flange.N.spout", List.of(Lever.lower(GutterInputs.SPOUT, "shorten the spout"), COVER)),
            Map.entry("leaf.N.leaf", List.of(GAP)),
            Map.entry("leaf.N.next", List.of(GAP)),
            Map.entry("leaf.N.bar", List.of(Lever.lower(StopInputs.DEPTH, "make the stop bar shallower"))),
            Map.entry("leaf.N.bushing", List.of(Lever.lower(RodInputs.BUSHING_LENGTH, "shorten the bushings under the flange"),
            ANNULUS)),
            Map.entry("stop.N.contact", List.of(DEEPER_BAR)),
            Map.entry("hood.tips", List.of(Lever.raise(HoodInputs.ABOVE_RIM, "raise the hood above the rim"))),
            Map.entry("flange.hinge", List.of(Lever.raise(LeafInputs.HINGE_FLANGE, "deepen the hinge flange"))),
            Map.entry("flange.curve", List.of(Lever.raise(LeafInputs.DRIP_FLANGE, "deepen the drip flange"))),
            Map.entry("bend.leaves", List.of(Lever.raise(LeafInputs.BEND.insideRadius(),
            "bend the leaves rounder, inside radius up"))),
            Map.entry("bend.gutter", List.of(Lever.raise(GutterInputs.BEND.insideRadius(),
            "bend the gutter rounder, inside radius up"))),
            Map.entry("bend.stop", List.of(Lever.raise(StopInputs.BEND.insideRadius(),
            "bend the stop bar rounder, inside radius up"))),
            Map.entry("bend.standoffs", List.of(Lever.raise(StandoffInputs.BEND.insideRadius(),
            "bend the standoffs rounder, inside radius up"))),
            Map.entry("leaf.N.shrink", List.of(Lever.lower(LeafInputs.DRIP_FLANGE, "narrow the drip flange"))),
            Map.entry("sleeve.lap", List.of(Lever.raise(SleeveInputs.SEAM.width(), "widen the lap"))),
            Map.entry("hood.lap", List.of(Lever.raise(HoodInputs.SEAM.width(), "widen the lap"))),
            Map.entry("rivet.edge", List.of(Lever.raise(StandoffInputs.OUTER_FLANGE, "widen the outer flange"),
                    Lever.raise(StandoffInputs.HEIGHT, "make the standoffs taller"),
                    Lever.lower(StandoffInputs.RIVETS_EACH, "take fewer rivets each, down"))),
            Map.entry("rivet.pitch", List.of(Lever.lower(StandoffInputs.RIVETS_EACH, "take fewer rivets each, down"),
                    Lever.raise(StandoffInputs.HEIGHT, "make the standoffs taller"))),
            Map.entry("slip", List.of(Lever.raise(StackInputs.SLIP, "give the sleeve more slip, up"))),
            Map.entry("leaf.cover", List.of(COVER)),
            Map.entry("annulus.drain", List.of(ANNULUS)),
            Map.entry("rod.play", List.of(Lever.raise(RodInputs.END_PLAY, "give the rods more end play, up"))),
            Map.entry("hood.holes", List.of(LONGER_HOOD)),
            Map.entry("hood.rivetFoot", List.of(LONGER_HOOD)),
            Map.entry("sleeve.holes", List.of(Lever.lower(SleeveInputs.HOLE_FROM_FOOT,
            "drill the fastener holes lower, from the foot"),
                    Lever.raise(SleeveInputs.STOP_BEAD_FROM_FOOT, "raise the stop bead"))),
            Map.entry("sleeve.holeFoot", List.of(Lever.raise(SleeveInputs.HOLE_FROM_FOOT,
            "drill the fastener holes higher, from the foot"))),
            Map.entry("sleeve.seam", List.of(Lever.raise(SleeveInputs.SEAM.azimuth(), "turn the sleeve's seam"))),
            Map.entry("hood.seam", List.of(Lever.raise(HoodInputs.SEAM.azimuth(), "turn the hood's seam"))),
            Map.entry("stock.sleeve", List.of(Lever.raise(SleeveInputs.PIECES, "make the sleeve in more pieces, up"))),
            Map.entry("stock.hood", List.of(Lever.raise(HoodInputs.PIECES, "make the hood in more pieces, up"))),
            Map.entry("closing.N.ratio", List.of(THICKER_LEAF,
            Lever.lower(StopInputs.OPEN_ANGLE, "stop the leaves earlier", StopInputs.WIDTH))),
            Map.entry("lift.N", List.of(THINNER_LEAF)),
            Map.entry("float.N", List.of(THINNER_LEAF)),
            Map.entry("free.area", List.of(Lever.lower(GutterInputs.INSIDE_WIDTH, "narrow the gutter"),
                    Lever.lower(LeafInputs.HINGE_FLANGE, "narrow the hinge flange", GutterInputs.INSIDE_WIDTH))),
            Map.entry("rod.N.sag", List.of(THICKER_ROD)),
            Map.entry("rod.N.stress", List.of(THICKER_ROD)));

    private Levers() {
    }

    /** The levers for a check. */
    static List<Lever> of(Check check) {
        if (check.id().equals("stop.angle")) {
            Input<?> angle = StopInputs.OPEN_ANGLE;
            return List.of(check.limit().least() ? Lever.raise(angle, "let the leaves open further", StopInputs.WIDTH)
                    : Lever.lower(angle, "stop the leaves earlier", StopInputs.WIDTH));
        }
        return BY_CHECK.getOrDefault(general(check.id()), List.of());
    }

    /** The id with its number left out, of several pieces the part's. */
    private static String general(String id) {
        return id.startsWith("stock.") ? id.replaceAll("-\\d+$", "") : id.replaceAll("\\.\\d+(?=\\.|$)", ".N");
    }
}

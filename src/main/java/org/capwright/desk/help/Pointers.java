package org.capwright.desk.help;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.capwright.check.Check;
import org.capwright.check.Remedies;
import org.capwright.desk.sketch.Pointer;
import org.capwright.desk.sketch.Pointer.View;
import org.capwright.geom.Vec2;
import org.capwright.job.GutterInputs;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.LeafInputs;
import org.capwright.job.RodInputs;
import org.capwright.job.SleeveInputs;
import org.capwright.job.StackInputs;
import org.capwright.job.StandoffInputs;
import org.capwright.job.StopInputs;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.PlacedBead;
import org.capwright.part.StopBar;

/** Where on the cap each input and each check is: the one table behind the help sheet's drawings. */
final class Pointers {
    private static final double CHECK_AROUND_MM = 110;
    private static final Map<String, Function<Cap, Pointer>> SPANS = spans();
    /** Groups whose parts show in the plan only. */
    private static final List<String> IN_PLAN = List.of("doublers", "standoffs");
    /** Part that stands in for a group that is no part. */
    private static final Map<String, String> STAND_INS = Map.of("stack", "sleeve", "bushings", "rods", "air", "leaves", "stock",
            "hood", "fit", "hood",
            "tolerance", "hood", "limits", "leaves");
    private static final Map<String, String> LIMITS = Map.ofEntries(Map.entry("slip", "stack.slip"),
            Map.entry("cover", "leaves.cover"),
            Map.entry("leafHood", "hood.annulus"), Map.entry("heel", "gutter.insideWidth"),
            Map.entry("lipStandoff", "standoffs.belowRim"),
            Map.entry("flangeSpout", "gutter.depth"), Map.entry("other", "leaves.gap"), Map.entry("stopLeast", "stop.openAngle"),
            Map.entry("stopMost", "stop.openAngle"), Map.entry("contact", "stop.width"), Map.entry("tipCover", "hood.aboveRim"),
            Map.entry("closingRatio", "rods.offset"), Map.entry("float", "stop.openAngle"),
            Map.entry("freeArea", "stack.outsideDiameter"),
            Map.entry("shrink", "leaves.dripFlange"), Map.entry("holeBead", "hood.beads"), Map.entry("sag", "rods.diameter"),
            Map.entry("stress", "rods.diameter"), Map.entry("endPlay", "rods.endPlay"), Map.entry("drain", "hood.annulus"),
            Map.entry("seam", "sleeve.fastenerHoles.fromFoot"), Map.entry("bushing", "bushings.bore"));
    private static final Map<String, String> TOLERANCES = Map.of("hoodDiameter", "hood.annulus", "ovality", "hood.annulus",
            "shift", "hood.annulus",
            "rodPosition", "rods.offset", "rodHeight", "rods.diameter", "leafRadius", "leaves.cover", "flangeDepth",
            "leaves.dripFlange");

    private static final List<String> ABOUT_A_PART = List.of("bend", "stock", "duty");
    /** Parts by how the word for them begins in the ids of checks; the rest is about the leaves. */
    private static final Map<String, String> CHECKED = Map.ofEntries(Map.entry("sleeve", "sleeve"), Map.entry("hood", "hood"),
            Map.entry("gutter", "gutter"),
            Map.entry("stop", "stop"), Map.entry("standoff", "standoffs"), Map.entry("rivet", "standoffs"),
            Map.entry("doubler", "doublers"),
            Map.entry("rod", "rods"), Map.entry("bushing", "rods"), Map.entry("washer", "rods"), Map.entry("annulus", "hood"),
            Map.entry("metal", "hood"),
            Map.entry("free", "sleeve"));

    private Pointers() {
    }

    /** What an input's drawing points at; empty for inputs that are on no drawing, such as the job's name. */
    static Optional<Pointer> of(Input<?> input, Cap cap) {
        return of(input.path(), cap);
    }

    private static Optional<Pointer> of(String path, Cap cap) {
        if (SPANS.containsKey(path)) {
            return Optional.of(SPANS.get(path).apply(cap));
        }
        String group = path.contains(".") ? path.substring(0, path.indexOf('.')) : path;
        String name = path.substring(path.indexOf('.') + 1);
        return switch (group) {
            case "job", "capwright" -> Optional.empty();
            case "limits" -> of(LIMITS.getOrDefault(name, "leaves"), cap);
            case "tolerance" -> of(TOLERANCES.getOrDefault(name, "hood"), cap);
            case "held" -> part(name);
            case "fit" -> ofReading(name, cap);
            default -> part(STAND_INS.getOrDefault(group, group));
        };
    }

    private static Optional<Pointer> part(String part) {
        return Optional.of(Pointer.part(IN_PLAN.contains(part) ? View.PLAN : View.SECTION, part));
    }

    private static Optional<Pointer> ofReading(String name, Cap cap) {
        if (name.startsWith("stack")) {
            return of(StackInputs.OUTSIDE_DIAMETER.path(), cap);
        } else if (name.startsWith("sleeve")) {
            return Optional.of(plan("", cap.sleeve().outsideRadiusMm()));
        } else if (name.startsWith("hoodBore")) {
            return Optional.of(plan("", cap.hood().insideRadiusMm()));
        } else if (name.startsWith("gaps")) {
            return of(HoodInputs.ANNULUS.path(), cap);
        } else if (name.startsWith("rods")) {
            return of(RodInputs.OFFSET.path(), cap);
        } else if (name.startsWith("gutters")) {
            return of(GutterInputs.INSIDE_WIDTH.path(), cap);
        } else if (name.startsWith("covers")) {
            return of(LeafInputs.COVER.path(), cap);
        } else if (name.startsWith("endPlay")) {
            return of(RodInputs.END_PLAY.path(), cap);
        }
        return part(name.startsWith("leaves") ? "leaves" : "hood");
    }

    private static Pointer plan(String part, double radius) {
        return Pointer.span(View.PLAN, part, new Vec2(-radius, 0), new Vec2(radius, 0));
    }

    /** What a check's drawing points at: its place at its opening, else the first input that can change it. */
    static Optional<Pointer> of(Check check, Cap cap) {
        return check.place().map(place -> new Pointer(View.SECTION, place.openRad(), "", new Vec2(place.at().x(), place.at().z()),
                new Vec2(place.at().x(), place.at().z()), CHECK_AROUND_MM))
                .or(() -> Remedies.inputs(check).stream().findFirst().flatMap(input -> of(input, cap)))
                .or(() -> part(checked(check.id().split("\\."))));
    }

    /** The part that a check without a place is about; the second word of its id where the first says what is checked. */
    private static String checked(String[] id) {
        String word = id.length > 1 && ABOUT_A_PART.contains(id[0]) ? id[1] : id[0];
        return CHECKED.entrySet().stream().filter(one -> word.startsWith(one.getKey())).map(Map.Entry::getValue).findFirst().orElse("leaves");
    }

    private static Map<String, Function<Cap, Pointer>> spans() {
        Map<String, Function<Cap, Pointer>> all = new HashMap<>();
        sleeve(all);
        hood(all);
        leaves(all);
        rods(all);
        gutterAndStop(all);
        standoffs(all);
        return all;
    }

    private static Pointer level(String part, double from, double to, double z) {
        return Pointer.span(View.SECTION, part, new Vec2(from, z), new Vec2(to, z));
    }

    private static Pointer upright(String part, double x, double from, double to) {
        return Pointer.span(View.SECTION, part, new Vec2(x, from), new Vec2(x, to));
    }

    private static double low(Cap cap) {
        return -cap.hood().belowRimMm() * 0.75;
    }

    private static void sleeve(Map<String, Function<Cap, Pointer>> all) {
        all.put(StackInputs.OUTSIDE_DIAMETER.path(), cap -> level("", -cap.sleeve().insideRadiusMm(),
                cap.sleeve().insideRadiusMm(), low(cap)));
        all.put(StackInputs.SLIP.path(), cap -> level("sleeve", cap.job().get(StackInputs.OUTSIDE_DIAMETER).mm() / 2,
                cap.sleeve().insideRadiusMm(), low(cap)));
        all.put(SleeveInputs.HEIGHT.path(), cap -> upright("sleeve", cap.sleeve().outsideRadiusMm(),
                -Math.min(cap.sleeve().heightMm(), cap.hood().belowRimMm()), 0));
    }

    private static void hood(Map<String, Function<Cap, Pointer>> all) {
        all.put(HoodInputs.ANNULUS.path(), cap -> level("", cap.sleeve().outsideRadiusMm(), cap.hood().insideRadiusMm(),
                low(cap)));
        all.put(HoodInputs.BELOW_RIM.path(), cap -> upright("hood", cap.hood().outsideRadiusMm(), -cap.hood().belowRimMm(), 0));
        all.put(HoodInputs.ABOVE_RIM.path(), cap -> upright("hood", cap.hood().outsideRadiusMm(), 0, cap.hood().aboveRimMm()));
        for (String bead : List.of("hood.beads", "hood.beads[].fromTop", "hood.beads[].width", "hood.beads[].depth",
                "hood.beads[].side")) {
            all.put(bead, Pointers::bead);
        }
    }

    private static Pointer bead(Cap cap) {
        List<PlacedBead> beads = cap.hood().flat().beads();
        double z = beads.isEmpty() ? cap.hood().aboveRimMm() / 2
                : beads.get(beads.size() - 1).aboveFootMm() - cap.hood().belowRimMm();
        return new Pointer(View.SECTION, 0, "hood", new Vec2(cap.hood().outsideRadiusMm(), z),
                new Vec2(cap.hood().outsideRadiusMm(), cap.hood().aboveRimMm()), CHECK_AROUND_MM);
    }

    private static void leaves(Map<String, Function<Cap, Pointer>> all) {
        all.put(LeafInputs.COVER.path(), cap -> {
            Leaf leaf = outer(cap);
            return level("leaves", cap.sleeve().outsideRadiusMm(), leaf.slab().radiusMm() - leaf.sheet().thicknessMm(),
                    top(leaf) - leaf.lipDownMm(leaf.curveFlangeMm()) / 2);
        });
        all.put(LeafInputs.GAP.path(), cap -> level("leaves", -cap.leaves().get(0).slab().hingeEdgeMm(),
                cap.leaves().get(0).slab().hingeEdgeMm(), 0));
        all.put(LeafInputs.DRIP_FLANGE.path(), cap -> upright("leaves", outer(cap).slab().radiusMm(),
                top(outer(cap)) - outer(cap).lipDownMm(outer(cap).curveFlangeMm()), top(outer(cap))));
        all.put(LeafInputs.HINGE_FLANGE.path(), cap -> {
            Leaf leaf = cap.leaves().get(0);
            return upright("leaves", leaf.slab().hingeEdgeMm(), top(leaf) - leaf.lipDownMm(leaf.hingeFlangeMm()), top(leaf));
        });
    }

    private static Leaf outer(Cap cap) {
        return cap.leaves().get(cap.leaves().size() - 1);
    }

    private static double top(Leaf leaf) {
        return leaf.rodAxisZMm() - leaf.rodRadiusMm();
    }

    private static void rods(Map<String, Function<Cap, Pointer>> all) {
        all.put(RodInputs.DIAMETER.path(), cap -> {
            PivotRod rod = cap.rods().get(0);
            return level("rods", rod.axisMm() - rod.diameterMm() / 2, rod.axisMm() + rod.diameterMm() / 2, rod.axisZMm());
        });
        all.put(RodInputs.OFFSET.path(), cap -> level("", cap.leaves().get(0).slab().hingeEdgeMm(), cap.rods().get(0).axisMm(),
                cap.rods().get(0).axisZMm()));
        Function<Cap, Pointer> end = cap -> {
            Doubler plate = cap.doublers().get(0);
            double x = cap.rods().get(0).axisMm();
            return new Pointer(View.PLAN, 0, "rods", new Vec2(x, plate.faceYMm()), new Vec2(x, cap.rods().get(0).lengthMm() / 2),
                    CHECK_AROUND_MM);
        };
        for (String path : List.of(RodInputs.END_PLAY.path(), "rods.washer.outside", "rods.washer.thickness", "bushings.bore",
                "bushings.outside",
                "bushings.flangeOutside", "bushings.flangeThickness", "bushings.length")) {
            all.put(path, end);
        }
    }

    private static void gutterAndStop(Map<String, Function<Cap, Pointer>> all) {
        all.put(GutterInputs.INSIDE_WIDTH.path(), cap -> {
            Gutter gutter = cap.gutters().get(0);
            return level("gutter", gutter.jointMm() - gutter.insideWidthMm() / 2, gutter.jointMm() + gutter.insideWidthMm() / 2,
                    -gutter.depthMm() / 2);
        });
        all.put(GutterInputs.DEPTH.path(), cap -> {
            Gutter gutter = cap.gutters().get(0);
            return upright("gutter", gutter.jointMm(), -gutter.depthMm(), 0);
        });
        all.put(StopInputs.WIDTH.path(), cap -> {
            StopBar bar = cap.stops().get(0);
            return level("stop", bar.jointMm() - bar.halfWidthMm(), bar.jointMm() + bar.halfWidthMm(), bar.cornerZMm());
        });
        all.put(StopInputs.DEPTH.path(), cap -> {
            StopBar bar = cap.stops().get(0);
            return upright("stop", bar.jointMm() + bar.halfWidthMm(), bar.cornerZMm(), bar.cornerZMm() + bar.depthMm());
        });
        all.put(StopInputs.OPEN_ANGLE.path(), cap -> Pointer.part(View.SECTION, "leaves").open(cap.stopRad()));
    }

    private static void standoffs(Map<String, Function<Cap, Pointer>> all) {
        all.put(StandoffInputs.HEIGHT.path(), cap -> upright("standoffs", cap.sleeve().outsideRadiusMm(),
                cap.standoff().topZMm() - cap.standoff().heightMm(), cap.standoff().topZMm()));
        all.put(StandoffInputs.BELOW_RIM.path(), cap -> upright("standoffs", cap.sleeve().outsideRadiusMm(),
                cap.standoff().topZMm(), 0));
    }
}

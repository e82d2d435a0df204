package org.capwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.capwright.blank.Writing;
import org.capwright.job.RodInputs;
import org.capwright.job.StackInputs;
import org.capwright.metal.Metal;
import org.capwright.metal.SeamKind;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.PlacedBead;
import org.capwright.part.Sheet;
import org.capwright.part.Shrink;
import org.capwright.part.Standoff;
import org.capwright.part.StopBar;
import org.capwright.swing.Clearance;
import org.capwright.swing.Pair;
import org.capwright.swing.Swing;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** The order of work for a cap, with its own numbers: common practice of the trade, no source. */
public final class BuildSteps {
    private static final String EDGES = "Sheet edges cut: gloves, deburr before handling.";
    private static final String PINCH =
            "Leaves pinch: keep hands clear of hinge edges and stop; no fan near may be able to start.";

    private final Cap cap;
    private final ShopFormat format;
    private final List<BuildStep> steps = new ArrayList<>();

    private BuildSteps(Cap cap) {
        this.cap = cap;
        this.format = Writing.of(cap).format();
    }

    /**
     * The steps of a cap.
     *
     * @param cap the cap
     * @return in the order of the work
     */
    public static List<BuildStep> of(Cap cap) {
        BuildSteps build = new BuildSteps(cap);
        build.start();
        build.sleeve();
        build.hood();
        build.leaves();
        build.gutters();
        build.standoffs();
        build.rods();
        build.trialFit();
        build.stops();
        build.finish();
        return List.copyOf(build.steps);
    }

    private void start() {
        double stack = cap.job().get(StackInputs.OUTSIDE_DIAMETER).mm();
        step("Before cutting", List.of("The stamp on templates, cards and this sheet is the same.",
                "Scale bars of every true-size page measured, both ways.",
                "Tape round the stack reads " + length(Math.PI * stack) + " (diameter " + length(stack)
                        + "). If not: stop, change the job.",
                "Thickness of every sheet measured: a gauge number is not a thickness."), List.of(EDGES));
    }

    private void sleeve() {
        List<String> actions = new ArrayList<>();
        actions.add(cut(cap.sleeve().flat()));
        actions.add("Station strip laid along the lower edge; stations marked and checked against the template.");
        actions.add("Cut " + cap.sleeve().notches().size() + " notches for the gutter mouths, "
                + length(cap.sleeve().notches().get(0).depthMm()) + " deep from the rim.");
        if (cap.sleeve().holes().count() > 0) {
            actions.add("Punch " + cap.sleeve().holes().count() + " holes " + length(cap.sleeve().holes().diameterMm()) + ", "
                    + length(cap.sleeve().holes().aboveFootMm()) + " above the foot.");
        }
        rolled(actions, cap.sleeve().flat(), cap.sleeve().insideRadiusMm(), cap.sleeve().outsideRadiusMm());
        actions.add("Rim card slides along the rim without light under it.");
        step("Sleeve", actions, Welding.cautions(cap.sleeve().sheet().metal()));
    }

    private void hood() {
        List<String> actions = new ArrayList<>();
        actions.add(cut(cap.hood().flat()));
        Standoff standoff = cap.standoff();
        actions.add("Drill " + standoff.count() * standoff.rivets().each() + " rivet holes " + decimal(standoff.rivets().holeMm())
                + "; cut the bushing holes to the template: they are not round in the flat.");
        rolled(actions, cap.hood().flat(), cap.hood().insideRadiusMm(), cap.hood().outsideRadiusMm());
        step("Hood", actions, Welding.cautions(cap.hood().sheet().metal()));
    }

    private String cut(CylinderFlat flat) {
        return "Cut " + (flat.pieces() == 1 ? "" : flat.pieces() + " pieces ") + length(flat.lengthMm()) + " x "
                + length(flat.widthMm())
                + "; diagonals equal.";
    }

    private void rolled(List<String> actions, CylinderFlat flat, double insideMm, double outsideMm) {
        actions.add("Roll to inside diameter " + length(2 * insideMm) + ".");
        actions.add("Close " + seams(flat) + ": " + seam(flat) + ". Tape round the outside reads "
                + length(2 * Math.PI * outsideMm) + ".");
        for (PlacedBead bead : flat.beads()) {
            actions.add("Bead " + (bead.inward() ? "inwards" : "outwards") + ", " + length(bead.bead().widthMm()) + " wide, "
                    + length(bead.bead().depthMm()) + " deep, middle " + length(bead.aboveFootMm())
                            + " above the foot when formed.");
        }
    }

    private String seams(CylinderFlat flat) {
        String first = format.angle(Angle.ofRad(flat.seamAzimuthRad()));
        return flat.pieces() == 1 ? "the seam at " + first : flat.pieces() + " seams, the first at " + first + ", then every "
                + format.angle(Angle.ofRad(2 * Math.PI / flat.pieces()));
    }

    private String seam(CylinderFlat flat) {
        return flat.seam().kind() == SeamKind.BUTT ? "butt weld" : (flat.seam().kind() == SeamKind.LAP ? "lap "
                : "grooved lock, pockets ")
                + length(flat.seam().widthMm());
    }

    private void leaves() {
        for (Leaf leaf : cap.leaves()) {
            List<String> actions = new ArrayList<>();
            actions.add("Cut 2 to the template; drill relief holes " + length(leaf.reliefHoleMm()) + " where bend lines meet.");
            actions.add("Bend the hinge flange down " + format.angle(Angle.ofRad(leaf.bend().turnRad())) + ": "
                    + length(leaf.hingeFlangeMm())
                    + " outside" + (leaf.slab().freeChord() ? "; the free edge likewise, " + length(leaf.curveFlangeMm()) : "")
                            + ".");
            for (int i = 0; i < leaf.shrink().passes().size(); i++) {
                Shrink.Pass pass = leaf.shrink().passes().get(i);
                actions.add("Curve, pass " + (i + 1) + ": turn to " + format.angle(Angle.ofRad(pass.turnRad())) + ", its card fits;"
                        + " the lip then measures " + length(pass.lipArcMm()) + " along its arcs (estimate).");
            }
            actions.add("In all gather " + length(leaf.shrink().takeUpMm()) + ", about " + leaf.shrink().crimps()
                    + " crimps. Lip card fits.");
            actions.add("Weld the flange corners; grind flush.");
            step("Leaf " + leaf.number() + ", two alike", actions, Welding.cautions(leaf.sheet().metal()));
        }
    }

    private void gutters() {
        for (Gutter gutter : cap.gutters()) {
            step("Gutter " + gutter.number() + count(Cap.mirrored(gutter.number())),
                    List.of("Cut " + length(gutter.blankLengthMm()) + " x "
                    + length(gutter.flat().widthMm()) + "; bend both walls up: inside width " + length(gutter.insideWidthMm())
                            + ", depth inside "
                    + length(gutter.depthMm()) + ".", "Set it into the notches, walls level with the rim, "
                            + length(gutter.endRadiusMm()
                    - cap.sleeve().outsideRadiusMm()) + " past the sleeve on both sides.",
                            "Weld and seal round both mouths; pour water in: it leaves"
                    + " by the spouts only."), Welding.cautions(gutter.sheet().metal()));
        }
    }

    private void standoffs() {
        Standoff standoff = cap.standoff();
        double gap = standoff.hoodInsideMm() - standoff.sleeveOutsideMm();
        step("Standoffs, " + standoff.count() + " alike", List.of("Cut " + length(standoff.blankLengthMm()) + " x "
                + length(standoff.heightMm())
                + "; drill " + standoff.rivets().each() + " holes " + decimal(standoff.rivets().holeMm()) + " each.",
                "Bend inner " + format.angle(Angle.ofRad(standoff.innerBend().turnRad())) + ", outer "
                        + format.angle(Angle.ofRad(standoff.outerBend().turnRad()))
                        + "; check both with the angle cards; web outside " + length(standoff.webMm()) + ".",
                "Rivet to the hood, first at " + format.angle(Angle.ofRad(standoff.firstRad())) + ", rivets "
                        + length(standoff.rivets().diameterMm()) + ".",
                "Set the hood over the sleeve, its foot " + length(cap.hood().belowRimMm()) + " below the rim; gap " + length(gap)
                        + " at every standoff. Tack only: the trial fit comes first."), Welding.cautions(standoff.sheet().metal()));
    }

    private void rods() {
        List<String> actions = new ArrayList<>();
        for (Doubler plate : cap.doublers()) {
            int quantity = 2 * Cap.mirrored(plate.number());
            actions.add("Doubler " + plate.number() + ": cut " + quantity + " to the template; weld square to the rods, inner face "
                    + length(plate.faceYMm()) + " from the middle; fill the gaps at the ends. Press the bushings in, flanges outside.");
        }
        for (PivotRod rod : cap.rods()) {
            Leaf leaf = cap.leaves().get(rod.number() - 1);
            actions.add("Pivot rod " + rod.number() + ": cut 2 to " + length(rod.lengthMm()) + "; thread each through its bushings from"
                    + " outside. Axis " + length(leaf.rodAxisMm() - leaf.slab().hingeEdgeMm())
                    + " from the hinge edge, " + length(rod.axisZMm()) + " above the rim.");
        }
        actions.add("Lay the leaves closed on the rim under their rods, " + length(2 * cap.leaves().get(0).slab().hingeEdgeMm())
                + " between the hinge edges of the middle pair; tack each rod to its leaf.");
        actions.add("Slip the washers on; end play " + length(cap.job().get(RodInputs.END_PLAY).mm()) + " each side; tack them.");
        step("Doublers, bushings, rods", actions, pinchAndWelding(cap.doublers().get(0).metal(), cap.rods().get(0).metal(),
                cap.leaves().get(0).sheet().metal()));
    }

    private void trialFit() {
        Swing swing = Swing.of(cap);
        List<String> actions = new ArrayList<>();
        for (Leaf leaf : cap.leaves()) {
            Clearance hood = swing.least(Pair.LEAF_HOOD, leaf.number());
            actions.add(String.format(Locale.ROOT,
                    "Leaf %d to hood: least %s at %s opening, %s along the rods from their middle, %s the rim."
                    + " Feel it there.",
                    leaf.number(), length(hood.leastMm()), format.angle(Angle.ofRad(hood.openRad())),
                            length(Math.abs(hood.where().y())),
                    length(Math.abs(hood.where().z())) + (hood.where().z() < 0 ? " below" : " above")));
            actions.add("Leaf " + leaf.number() + ", heel to gutter wall: least " + length(swing.least(Pair.HEEL_WALL, leaf.number()).leastMm())
                    + "; to the floor: least "
                    + length(swing.least(Pair.HEEL_FLOOR, leaf.number()).leastMm()) + ".");
        }
        actions.add("Every leaf swings from closed past " + format.angle(Angle.ofRad(cap.stopRad()))
                + " without touching, and falls back by itself.");
        actions.add("Only now weld the standoffs out, stitch weld the rods along both sides, weld the washers, bushings kept cool.");
        actions.add("Swing every leaf once more: welds draw.");
        step("Trial fit, before tacks become welds", actions, pinchAndWelding(cap.standoff().sheet().metal(),
                cap.leaves().get(0).sheet().metal(), cap.rods().get(0).metal()));
    }

    private void stops() {
        for (StopBar bar : cap.stops()) {
            step("Stop bar " + bar.number() + count(Cap.mirrored(bar.number())),
                    List.of("Cut " + length(bar.blankLengthMm()) + " x " + length(bar.flat().widthMm())
                    + ", ends to the template. Bend legs down: outside width " + length(2 * bar.halfWidthMm())
                    + ", legs " + length(bar.depthMm()) + "; lower corners " + length(bar.cornerZMm()) + " above the rim.",
                    "Clamp, open each leaf against it: the stop card (" + format.angle(Angle.ofRad(cap.stopRad()))
                            + ") fits. Then weld to the hood."),
                    pinchAndWelding(bar.sheet().metal()));
        }
    }

    private void finish() {
        Stream<Metal> metals = Stream.of(cap.sleeve().sheet(), cap.hood().sheet(), cap.leaves().get(0).sheet()).map(Sheet::metal);
        step("Finish", List.of("Deburr and clean; " + Welding.after(metals) + ". Seal the laps.",
                "Weigh: about " + format.mass(cap.massKg())
                        + " and rivets, welds and sealant. Plan the lift by the weighed figure.",
                "Fill in the sign-off sheet; name, date."),
                List.of("Roof edge, lifting and wind need their own plan (29 CFR 1910.28, 1926.501).", "Lock the fan out before reaching in (29 CFR 1910.147).",
                        "Wind, snow, anchorage and fire rules: local codes and licensed practice."));
    }

    private static List<String> pinchAndWelding(Metal... metals) {
        return Stream.concat(Stream.of(PINCH), Welding.cautions(metals).stream()).toList();
    }

    private static String count(int quantity) {
        return quantity == 1 ? "" : quantity == 2 ? ", two alike" : ", " + quantity + " alike";
    }

    private void step(String title, List<String> actions, List<String> cautions) {
        steps.add(new BuildStep(title, actions, cautions));
    }

    private String length(double mm) {
        return format.length(Length.ofMm(mm));
    }

    private String decimal(double mm) {
        return format.thickness(Length.ofMm(mm));
    }
}

package org.capwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.capwright.job.RodInputs;
import org.capwright.metal.Metal;
import org.capwright.part.Cap;
import org.capwright.part.Doubler;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.Sheet;
import org.capwright.part.StopBar;
import org.capwright.swing.Clearance;
import org.capwright.swing.Pair;
import org.capwright.swing.Swing;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** The order of work from the rods to the finish: what is tacked, tried, and only then welded. */
final class AssemblySteps {
    private static final String PINCH =
            "Leaves pinch: keep hands clear of hinge edges and stop; no fan near may be able to start.";

    /** Nearer to the rim nobody tells it from the rim. */
    private static final double AT_RIM_MM = 0.5;

    private final Cap cap;
    private final ShopFormat format;
    private final List<BuildStep> steps = new ArrayList<>();

    private AssemblySteps(Cap cap, ShopFormat format) {
        this.cap = cap;
        this.format = format;
    }

    static List<BuildStep> of(Cap cap, ShopFormat format) {
        AssemblySteps assembly = new AssemblySteps(cap, format);
        assembly.rods();
        assembly.trialFit();
        assembly.stops();
        assembly.finish();
        return assembly.steps;
    }

    private void rods() {
        List<String> actions = new ArrayList<>();
        for (Doubler plate : cap.doublers()) {
            int quantity = 2 * Cap.mirrored(plate.number());
            actions.add("Doubler " + plate.number() + ": cut " + quantity
                    + " to the template; weld square to the rods, inner face "
                    + length(plate.faceYMm()) + " from the middle; fill the gaps at the ends. Press the bushings in, flanges outside.");
        }
        for (PivotRod rod : cap.rods()) {
            Leaf leaf = cap.leaves().get(rod.number() - 1);
            actions.add("Pivot rod " + rod.number() + ": cut 2 to " + length(rod.lengthMm())
                    + "; thread each through its bushings from"
                    + " outside. Axis " + length(leaf.rodAxisMm() - leaf.slab().hingeEdgeMm())
                    + " from the hinge edge, " + length(rod.axisZMm()) + " above the rim.");
        }
        actions.add("Lay the leaves closed on the rim under their rods, " + length(2 * cap.leaves().get(0).slab().hingeEdgeMm())
                + " between the hinge edges of the middle pair; " + (rodsWeld() ? "tack each rod to its leaf."
                : "clamp each rod to its leaf with straps: aluminium and steel can't be welded to each other."));
        actions.add("Slip the washers on; end play " + length(cap.job().get(RodInputs.END_PLAY).mm()) + " each side; tack them.");
        step("Doublers, bushings, rods", actions, pinchAndWelding(cap.doublers().get(0).metal(), cap.rods().get(0).metal(),
                cap.leaves().get(0).sheet().metal()));
    }

    private boolean rodsWeld() {
        return cap.leaves().get(0).sheet().metal().weldsTo(cap.rods().get(0).metal());
    }

    private void trialFit() {
        Swing swing = Swing.of(cap);
        List<String> actions = new ArrayList<>();
        for (Leaf leaf : cap.leaves()) {
            Clearance hood = swing.least(Pair.LEAF_HOOD, leaf.number());
            actions.add(String.format(Locale.ROOT,
                    "Leaf %d to hood: least %s at %s opening, %s along the rods from their middle, %s the rim."
                    + " Feel it there.", leaf.number(), length(hood.leastMm()), format.angle(Angle.ofRad(hood.openRad())),
                    length(Math.abs(hood.where().y())), fromRim(hood.where().z())));
            actions.add("Leaf " + leaf.number() + ", heel to gutter wall: least " + length(swing.least(Pair.HEEL_WALL,
                    leaf.number()).leastMm())
                    + "; to the floor: least "
                    + length(swing.least(Pair.HEEL_FLOOR, leaf.number()).leastMm()) + ".");
        }
        actions.add("Every leaf swings from closed past " + format.angle(Angle.ofRad(cap.stopRad()))
                + " without touching, and falls back by itself.");
        actions.add("Only now weld the standoffs out, " + (rodsWeld()
                ? "stitch weld the rods along both sides, " : "rivet the rods' straps, ")
                + "weld the washers, bushings kept cool.");
        actions.add("Swing every leaf once more: welds draw.");
        step("Trial fit, before tacks become welds", actions, pinchAndWelding(cap.standoff().sheet().metal(),
                cap.leaves().get(0).sheet().metal(), cap.rods().get(0).metal()));
    }

    private String fromRim(double z) {
        return Math.abs(z) < AT_RIM_MM ? "at" : length(Math.abs(z)) + (z < 0 ? " below" : " above");
    }

    private void stops() {
        for (StopBar bar : cap.stops()) {
            step("Stop bar " + bar.number() + BuildSteps.count(Cap.mirrored(bar.number())),
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
                List.of("Roof edge, lifting and wind need their own plan (29 CFR 1910.28, 1926.501).",
                        "Lock the fan out before reaching in (29 CFR 1910.147).",
                        "Wind, snow, anchorage and fire rules: local codes and licensed practice."));
    }

    private static List<String> pinchAndWelding(Metal... metals) {
        return Stream.concat(Stream.of(PINCH), Welding.cautions(metals).stream()).toList();
    }

    private void step(String title, List<String> actions, List<String> cautions) {
        steps.add(new BuildStep(title, actions, cautions));
    }

    private String length(double mm) {
        return format.length(Length.ofMm(mm));
    }
}

package org.capwright.fitup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Limit;
import org.capwright.check.Quantity;
import org.capwright.job.CapJob;
import org.capwright.job.FitInputs;
import org.capwright.job.GutterInputs;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.Kind;
import org.capwright.job.LeafInputs;
import org.capwright.job.RodInputs;
import org.capwright.job.StackInputs;
import org.capwright.job.StandoffInputs;
import org.capwright.job.StopInputs;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Standoff;
import org.capwright.part.StopBar;
import org.capwright.swing.LeafSize;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.UnitSystem;

/**
 * Turns each held part into the inputs that give its size: a sleeve into the slip, a hood into the annulus, leaves into the
 * cover, and so on. Where no input can give it, the held parts contradict each other.
 */
final class HeldSizes {
    /** What a standoff gives when it is pulled to the hood; common practice, no source. */
    private static final double STANDOFF_GIVES_MM = Length.MM_PER_INCH / 16;

    private final Cap drawn;
    private final CapJob job;
    private final OvalFit stack;
    private final OvalFit sleeve;
    private final OvalFit hood;
    private final List<LeafSize> leaves;
    private final Set<String> held;
    private final Map<String, String> typed = new LinkedHashMap<>();
    private final List<Contradiction> conflicts = new ArrayList<>();

    HeldSizes(Cap drawn, OvalFit stack, OvalFit sleeve, OvalFit hood, List<LeafSize> leaves, Set<String> held) {
        this.drawn = drawn;
        this.held = held;
        this.job = drawn.job();
        this.stack = stack;
        this.sleeve = sleeve;
        this.hood = hood;
        this.leaves = leaves;
    }

    /** Types everything but the rods, whose play depends on the cap that comes of it. */
    HeldSizes type() {
        double outside = cylinders();
        leaves(outside);
        gutter(outside);
        return this;
    }

    /** What is typed anew, by path. */
    Map<String, String> typed() {
        return typed;
    }

    /** What does not go together, or only just does. */
    List<Contradiction> conflicts() {
        return conflicts;
    }

    /** Stack, sleeve, standoffs and hood; returns the sleeve's outside radius. */
    private double cylinders() {
        double stackMm = stack.terms().radius() ? 2 * stack.outline().radiusMm() : job.get(StackInputs.OUTSIDE_DIAMETER).mm();
        if (stack.terms().radius()) {
            type("stack", StackInputs.OUTSIDE_DIAMETER, stackMm, "stack measured");
        }
        double thickness = drawn.sleeve().sheet().thicknessMm();
        double outside = stackMm / 2 + job.get(StackInputs.SLIP).mm() / 2 + thickness;
        if (held.contains("sleeve")) {
            outside = sleeve.terms().radius() ? sleeve.outline().radiusMm() : drawn.sleeve().outsideRadiusMm();
            type("sleeve", StackInputs.SLIP, 2 * (outside - thickness) - stackMm, "slip of the sleeve that is cut");
        }
        double annulus = job.get(HoodInputs.ANNULUS).mm();
        if (held.contains("standoffs") && !held.contains("hood")) {
            annulus = drawn.standoff().webMm() + Math.hypot(outside, drawn.standoff().innerFlangeMm() / 2) - outside;
            type("standoffs", HoodInputs.ANNULUS, annulus, "annulus of the standoffs that are cut");
        }
        if (held.contains("hood")) {
            annulus = (hood.terms().radius() ? hood.outline().radiusMm() : drawn.hood().insideRadiusMm()) - outside;
            type("hood", HoodInputs.ANNULUS, annulus, "annulus of the hood that is cut");
            type("hood", HoodInputs.ABOVE_RIM, drawn.hood().aboveRimMm(), "hood above the rim");
        }
        standoffs(outside, outside + annulus);
        stop(outside + annulus);
        return outside;
    }

    private void standoffs(double outside, double inside) {
        if (!held.contains("standoffs")) {
            return;
        }
        Standoff cut = drawn.standoff();
        type(StandoffInputs.COUNT, Integer.toString(cut.count()));
        type(StandoffInputs.FIRST, String.format(Locale.ROOT, "%.9f deg", Angle.ofRad(cut.firstRad()).degrees()));
        double needed = inside - Math.hypot(outside, cut.innerFlangeMm() / 2);
        Check check = check("held.standoffs", "web of the cut standoffs off what sleeve and hood ask for",
                Math.abs(cut.webMm() - needed),
                new Limit(STANDOFF_GIVES_MM, false, 0, "what a bracket gives when it is pulled in: common practice, no source"));
        conflicts.add(new Contradiction(check, List.of("sleeve", "hood", "standoffs"), "make the standoffs anew, web outside "
                + Quantity.LENGTH.words(needed, Writing.of(drawn).format())));
    }

    private void stop(double inside) {
        if (held.contains("stop")) {
            StopBar bar = drawn.stops().get(0);
            type("stop", StopInputs.WIDTH, 2 * bar.halfWidthMm(), "width of the stop bar that is cut");
            type("stop", StopInputs.END_GAP, inside - bar.endRadiusMm(), "gap at the ends of the stop bar that is cut");
        }
    }

    private void leaves(double outside) {
        if (held.contains("leaves")) {
            double radius = leaves.stream().mapToDouble(leaf -> leaf.slab().radiusMm()).average()
                    .orElse(drawn.leaves().get(0).slab().radiusMm());
            type("leaves", LeafInputs.COVER, radius - drawn.leaves().get(0).sheet().thicknessMm() - outside,
                    "cover of the leaves that are cut");
            type("leaves", RodInputs.OFFSET, drawn.leaves().get(0).rodAxisMm() - drawn.leaves().get(0).slab().hingeEdgeMm(),
                    "rod offset");
            if (drawn.joints().size() > 1) {
                type("leaves", LeafInputs.FIRST_JOINT, drawn.joints().get(1), "first joint");
            }
            if (drawn.joints().size() > 2) {
                type("leaves", LeafInputs.SECOND_JOINT, drawn.joints().get(2), "second joint");
            }
        }
    }

    /** The narrowest and shallowest of the gutters that were measured count for all. */
    private void gutter(double outside) {
        if (held.contains("gutter")) {
            Gutter cut = drawn.gutters().get(0);
            type("gutter", GutterInputs.INSIDE_WIDTH, least(FitInputs.GUTTER_WIDTH).orElse(cut.insideWidthMm()),
                    "width of the gutter that is cut");
            double depth = drawn.gutters().stream().mapToDouble(Gutter::depthMm).min().orElseThrow();
            type("gutter", GutterInputs.DEPTH, least(FitInputs.GUTTER_DEPTH).orElse(depth), "depth of the gutter that is cut");
            type("gutter", GutterInputs.SPOUT, cut.endRadiusMm() - outside, "spout of the gutter that is cut");
        }
    }

    private Optional<Double> least(Input<Length> input) {
        Optional<Double> least = Optional.empty();
        for (int i = 0; i < job.text().listSize(FitInputs.GUTTERS); i++) {
            Optional<Double> read = job.find(input.at(i)).map(Length::mm);
            least = read.isPresent() && (least.isEmpty() || read.get() < least.get()) ? read : least;
        }
        return least;
    }

    /** Play that the cut rods leave: {@code L/2 - y_p - doubler - flange - washer}; a measured one counts instead. */
    void rods(Cap cap) {
        double change = cap.doublers().get(0).faceYMm() - drawn.doublers().get(0).faceYMm();
        double play = job.find(FitInputs.END_PLAY).map(both -> both.mm() / 2).orElse(job.get(RodInputs.END_PLAY).mm() - change);
        type("rods", RodInputs.END_PLAY, play, "end play of the rods that are cut");
        if (drawn.bushings().stream().distinct().count() == 1) {
            type("rods", RodInputs.BUSHING_LENGTH, drawn.bushing().lengthMm(), "bushing length");
        }
    }

    private void type(Input<?> input, String text) {
        typed.put(input.path(), text);
    }

    /** Types a length; where it is out of the input's range, the held parts contradict each other. */
    private void type(String part, Input<Length> input, double mm, String words) {
        double least = bound(input.least());
        double most = bound(input.most());
        if (mm >= least && mm <= most) {
            type(input, String.format(Locale.ROOT, "%.9f mm", mm));
        } else {
            String source = "held parts must go together; " + input.path() + " is " + input.allowed();
            Check check = check("held." + input.path(), words, mm,
                    mm < least ? new Limit(least, true, 0, source) : new Limit(most, false, 0, source));
            conflicts.add(new Contradiction(check, List.of(part), "measure the " + part + " again"
                    + (part.equals("stack") ? "" : ", or make it anew (type held." + part + " open)")));
        }
    }

    private static double bound(Optional<String> text) {
        return text.map(one -> Kind.LENGTH.reader().read(one, UnitSystem.INCH).mm()).orElseThrow();
    }

    private static Check check(String id, String words, double mm, Limit limit) {
        return new Check(id, words, Quantity.LENGTH, mm, limit, Optional.empty(), false);
    }
}

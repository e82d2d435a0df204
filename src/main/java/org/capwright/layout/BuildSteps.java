package org.capwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.capwright.blank.Cards;
import org.capwright.blank.Writing;
import org.capwright.job.StackInputs;
import org.capwright.metal.SeamKind;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PlacedBead;
import org.capwright.part.Shrink;
import org.capwright.part.Sleeve;
import org.capwright.part.Standoff;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** The order of work for a cap, with its own numbers: common practice of the trade, no source. */
public final class BuildSteps {
    private static final String EDGES = "Sheet edges cut: gloves, deburr before handling.";

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
        build.steps.addAll(AssemblySteps.of(cap, build.format));
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
        for (Gutter gutter : cap.gutters()) {
            List<Sleeve.Notch> notches = cap.sleeve().notches().stream().filter(notch -> notch.gutter() == gutter.number())
                    .toList();
            actions.add("Cut " + notches.size() + " notches for the mouths of gutter " + gutter.number() + ", "
                    + length(notches.get(0).depthMm()) + " deep from the rim.");
        }
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
                actions.add("Curve, pass " + (i + 1) + ": turn to " + format.angle(Angle.ofRad(pass.turnRad()))
                        + (Cards.needed(pass.turnRad()) ? ", its card fits" : ", square") + "; the lip then measures "
                                + length(pass.lipArcMm()) + " along its arcs (estimate).");
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
                        + " at every standoff. Tack only: the trial fit comes first."), Welding.cautions(standoff.sheet()
                                .metal()));
    }

    /** How a title says that there are several. */
    static String count(int quantity) {
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

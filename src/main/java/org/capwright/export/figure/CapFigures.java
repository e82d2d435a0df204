package org.capwright.export.figure;

import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.PlacedBead;
import org.capwright.part.Standoff;
import org.capwright.part.StopBar;
import org.capwright.part.WallPassage;

/** The figures of a cap's parts and blanks. */
public final class CapFigures {
    private final Cap cap;
    private final FigureList list = new FigureList();

    private CapFigures(Cap cap) {
        this.cap = cap;
    }

    /**
     * The figures of a cap.
     *
     * @param cap the cap
     * @param blanks its blanks
     * @return all figures, in the order of the work
     */
    public static List<Figure> of(Cap cap, List<Blank> blanks) {
        CapFigures figures = new CapFigures(cap);
        figures.cylinders();
        cap.leaves().forEach(leaf -> figures.leaf(leaf, blanks));
        cap.rods().forEach(figures::rod);
        cap.doublers().forEach(figures::bushingHole);
        cap.gutters().forEach(figures::gutter);
        cap.stops().forEach(figures::stop);
        figures.standoff();
        figures.list.mm("cap.height", cap.heightMm()).mm("cap.width", cap.widthMm()).kg("cap.mass", cap.massKg());
        return figures.list.figures();
    }

    private void cylinders() {
        list.mm("sleeve.insideRadius", cap.sleeve().insideRadiusMm()).mm("sleeve.outsideRadius", cap.sleeve().outsideRadiusMm());
        cylinder("sleeve", cap.sleeve().flat());
        list.mm("hood.insideRadius", cap.hood().insideRadiusMm()).mm("hood.outsideRadius", cap.hood().outsideRadiusMm());
        cylinder("hood", cap.hood().flat());
        int number = 1;
        for (CylinderFlat flat : List.of(cap.sleeve().flat(), cap.hood().flat())) {
            for (PlacedBead bead : flat.beads()) {
                list.mm("bead." + number++ + ".takeUp", bead.bead().takeUpMm());
            }
        }
    }

    private void cylinder(String name, CylinderFlat flat) {
        list.mm(name + ".blank.length", flat.lengthMm()).mm(name + ".blank.width", flat.widthMm())
                .degrees(name + ".seam.azimuth", flat.seamAzimuthRad()).number(name + ".pieces", flat.pieces());
    }

    private void leaf(Leaf leaf, List<Blank> blanks) {
        String at = "leaf." + leaf.number() + ".";
        if (leaf.number() == 1) {
            list.mm("leaf.radius", leaf.slab().radiusMm());
        }
        list.mm(at + "hingeEdge", leaf.slab().hingeEdgeMm()).mm(at + "freeEdge", leaf.slab().freeEdgeMm())
                .mm(at + "rodAxis", leaf.rodAxisMm()).mm(at + "bend.allowance", leaf.bend().allowanceMm())
                .mm(at + "bend.deduction", leaf.bend().deductionMm()).mm(at + "blank.radius", leaf.shrink().blankRadiusMm())
                .mm(at + "blank.hingeEdge", leaf.blankHingeEdgeMm()).degrees(at + "corner.angle",
                leaf.hingeCorner().interiorRad())
                .degrees(at + "corner.cut", leaf.hingeCorner().cutRad()).mm(at + "shrink.growth", leaf.shrink().growthMm())
                .mm(at + "shrink.takeUp", leaf.shrink().takeUpMm()).number(at + "shrink.strain", leaf.shrink().strain())
                .add(at + "blank.area", area("leaf-" + leaf.number(), blanks), "mm2").kg(at + "mass", leaf.balance().massKg())
                .mm(at + "cg.outboard", leaf.balance().outboardMm()).mm(at + "cg.up", leaf.balance().upMm());
    }

    private static double area(String id, List<Blank> blanks) {
        return blanks.stream().filter(blank -> blank.id().equals(id)).mapToDouble(Blank::areaMm2).findFirst().orElseThrow();
    }

    private void rod(PivotRod rod) {
        list.mm("rod." + rod.number() + ".length", rod.lengthMm());
    }

    /** Stations of the outermost bore's hole from its doubler's centre line, outwards. */
    private void bushingHole(Doubler plate) {
        double axis = plate.boresMm().get(plate.boresMm().size() - 1);
        WallPassage hole = WallPassage.between(axis - plate.boreMm() / 2, axis + plate.boreMm() / 2,
                cap.hood().insideRadiusMm(), cap.hood().outsideRadiusMm());
        double middle = Math.asin(plate.middleMm() / cap.hood().outsideRadiusMm());
        double neutral = cap.hood().flat().neutralRadiusMm();
        list.mm("hood.bushingHole." + plate.number() + ".from", (hole.fromRad() - middle) * neutral)
                .mm("hood.bushingHole." + plate.number() + ".to", (hole.toRad() - middle) * neutral);
    }

    private void gutter(Gutter gutter) {
        String at = "gutter." + gutter.number() + ".";
        list.mm(at + "insideWidth", gutter.insideWidthMm()).mm(at + "depth", gutter.depthMm())
                .mm(at + "blank.width", gutter.flat().widthMm()).mm(at + "blank.length", gutter.blankLengthMm());
    }

    private void stop(StopBar bar) {
        list.mm("stop." + bar.number() + ".halfWidth", bar.halfWidthMm());
    }

    private void standoff() {
        Standoff standoff = cap.standoff();
        list.degrees("standoff.bend.inner", standoff.innerBend().turnRad()).degrees("standoff.bend.outer",
                standoff.outerBend().turnRad())
                .mm("standoff.web", standoff.webMm()).mm("standoff.blank.length", standoff.blankLengthMm())
                .degrees("standoff.azimuth.first", standoff.firstRad());
    }
}

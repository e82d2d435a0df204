package org.capwright.export.figure;

import java.util.List;
import org.capwright.air.Air;
import org.capwright.air.LeafAir;
import org.capwright.part.Leaf;
import org.capwright.swing.Clearance;
import org.capwright.swing.Pair;
import org.capwright.swing.Swing;

/** The figures of a cap's swing and air. The air's are estimates. */
final class MotionFigures {
    private final FigureList list = new FigureList();

    private MotionFigures() {
    }

    static List<Figure> of(List<Leaf> leaves, Swing swing, Air air) {
        MotionFigures figures = new MotionFigures();
        leaves.forEach(leaf -> figures.swing(leaf.number(), swing));
        figures.list.mm("swing.tip.height", swing.tipHeightMm());
        swing.stops().forEach(stop -> figures.list.mm("stop." + stop.number() + ".contactArm", stop.armMm()));
        figures.air(air);
        air.leaves().forEach(figures::leaf);
        air.rods().forEach(rod -> figures.list.mm("rod." + rod.number() + ".sag", rod.sagM() * 1e3)
                .add("rod." + rod.number() + ".stress", rod.stressPa() * 1e-6, "MPa"));
        return figures.list.figures();
    }

    private void swing(int leaf, Swing swing) {
        Clearance hood = swing.least(Pair.LEAF_HOOD, leaf);
        list.mm("swing.leaf." + leaf + ".hood.least", hood.leastMm()).degrees("swing.leaf." + leaf + ".hood.opening",
                hood.openRad())
                .mm("swing.heel." + leaf + ".wall.least", swing.least(Pair.HEEL_WALL, leaf).leastMm())
                .mm("swing.heel." + leaf + ".floor.least", swing.least(Pair.HEEL_FLOOR, leaf).leastMm());
    }

    private void air(Air air) {
        list.add("air.density", air.densityKgPerM3(), "kg/m3").add("air.velocity", air.velocityMPerS(), "m/s")
                .add("air.velocityPressure", air.velocityPressurePa(), "Pa").add("air.freeArea", air.freeAreaMm2() * 1e-6, "m2")
                .add("air.blockageLoss", air.blockageLossPa(), "Pa");
    }

    private void leaf(LeafAir leaf) {
        int n = leaf.number();
        list.add("air.liftPressure." + n, leaf.liftPressurePa(), "Pa").degrees("air.float." + n + ".jet",
                leaf.band().jet().openRad())
                .degrees("air.float." + n + ".drag", leaf.band().drag().openRad());
        leaf.band().jetStopM3PerS().ifPresent(flow -> list.add("air.flowToStop." + n, flow, "m3/s"));
        list.add("closing." + n + ".moment", leaf.closing().leastMomentNm(), "N m");
        leaf.closing().ratio().ifPresent(ratio -> list.number("closing." + n + ".ratio", ratio));
    }
}

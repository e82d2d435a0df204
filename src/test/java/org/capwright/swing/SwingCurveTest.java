package org.capwright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.capwright.geom.Vec3;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.junit.jupiter.api.Test;

/** Whole curves at openings a sixth of the swing apart, and the places that clearances point at. */
class SwingCurveTest {
    private static final long SEED = 71_000;
    private static final int SEEDS = 60;
    private static final int STEPS = 6;
    private static final int ALONG = 400;
    private static final double EXACT_MM = 0.0005 * 25.4;

    @Test
    void curvesAgreeWithSamples() {
        for (VariedCaps.Drawn drawn : VariedCaps.of(SEED, SEEDS)) {
            Swing swing = Swing.of(drawn.cap());
            for (Leaf leaf : drawn.cap().leaves()) {
                Sampler sampler = new Sampler(drawn.cap(), leaf);
                FormedLeaf formed = sampler.formed();
                HoodSampler hood = new HoodSampler(drawn.cap().hood());
                List<double[][]> curve = formed.curve(ALONG);
                double[][] end = formed.hingeEnd();
                List<double[][]> heel = formed.heel();
                compare(drawn, swing.least(Pair.LEAF_HOOD, leaf.number()), pose -> hood.least(pose, curve, end));
                compare(drawn, swing.least(Pair.HEEL_WALL, leaf.number()), pose -> sampler.wall(pose, heel));
                if (leaf.number() == 1) {
                    middle(drawn, swing, sampler);
                }
                if (leaf.number() < drawn.cap().leaves().size()) {
                    outward(drawn, swing, sampler);
                }
            }
        }
    }

    private static void middle(VariedCaps.Drawn drawn, Swing swing, Sampler sampler) {
        List<double[][]> heel = sampler.formed().heel();
        List<double[][]> skin = new ArrayList<>(heel);
        skin.addAll(sampler.formed().curve(ALONG));
        compare(drawn, swing.least(Pair.HEEL_FLOOR, 1), pose -> Sampler.floor(pose, heel, drawn.cap().gutters().get(0)));
        compare(drawn, swing.least(Pair.LEAF_LEAF, 1), pose -> sampler.opposite(pose, skin));
    }

    private static void outward(VariedCaps.Drawn drawn, Swing swing, Sampler sampler) {
        int number = sampler.leaf().number();
        compare(drawn, swing.least(Pair.LEAF_NEXT, number), sampler::next);
        compare(drawn, swing.least(Pair.LEAF_BAR, number), sampler::bar);
    }

    private static void compare(VariedCaps.Drawn drawn, Clearance clearance, ToDoubleFunction<Pose> sampled) {
        Leaf leaf = drawn.cap().leaves().get(clearance.number() - 1);
        List<Double> curve = clearance.samplesMm(STEPS);
        for (int i = 0; i <= STEPS; i++) {
            double found = curve.get(i);
            double there = sampled.applyAsDouble(Pose.of(leaf, clearance.stopRad() * i / STEPS));
            if (found != there) {
                assertThat(found).as("%s of leaf %d at step %d, %s", clearance.pair(), leaf.number(), i, drawn)
                        .isCloseTo(there, within(EXACT_MM));
            }
        }
    }

    /** The place of a clearance, turned back, lies on the closed leaf; and from there it is as far as the clearance says. */
    @Test
    void placesAreWhereItHappens() {
        for (VariedCaps.Drawn drawn : VariedCaps.of(SEED, SEEDS)) {
            Cap cap = drawn.cap();
            HoodSampler hood = new HoodSampler(cap.hood());
            for (Clearance one : Swing.of(cap).clearances()) {
                Vec3 at = one.where();
                double there = switch (one.pair()) {
                    case LEAF_HOOD -> hood.boreMm(at.z()) - Math.hypot(at.x(), at.y());
                    case LEAF_SLEEVE -> Math.hypot(at.x(), at.y()) - cap.sleeve().outsideRadiusMm();
                    case LIP_STANDOFF -> at.z() - cap.standoff().topZMm();
                    case HEEL_FLOOR -> at.z() + cap.gutters().get(one.number() - 1).depthMm();
                    case HEEL_WALL -> cap.joints().get(one.number() - 1)
                            + cap.gutters().get(one.number() - 1).insideWidthMm() / 2 - at.x();
                    case LEAF_LEAF -> 2 * at.x();
                    default -> one.leastMm();
                };
                if (Double.isFinite(one.leastMm())) {
                    assertThat(there).as("%s of leaf %d, %s", one.pair(), one.number(), drawn).isCloseTo(one.leastMm(), within(1e-6));
                }
            }
        }
    }

    /** A bar that is nearest to a leaf's face is pointed at there, not at the leaf's end. */
    @Test
    void placesOnBarsAreNearestToThem() {
        for (VariedCaps.Drawn drawn : VariedCaps.of(SEED, SEEDS)) {
            Swing swing = Swing.of(drawn.cap());
            for (int number = 1; number < drawn.cap().leaves().size(); number++) {
                Clearance one = swing.least(Pair.LEAF_BAR, number);
                double[] place = {one.where().x(), one.where().z()};
                Sampler sampler = new Sampler(drawn.cap(), drawn.cap().leaves().get(number - 1));
                if (one.leastMm() > 0) {
                    assertThat(sampler.bar(place)).as("leaf %d, %s", number, drawn).isCloseTo(one.leastMm(), within(1e-6));
                }
            }
        }
    }
}

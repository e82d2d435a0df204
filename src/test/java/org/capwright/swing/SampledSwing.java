package org.capwright.swing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;

/** Every clearance of one leaf over its swing, sampled. */
final class SampledSwing {
    private static final int SMOOTH = 90;
    private static final int KINKED = 240;
    private static final int FEW = 50;
    private static final int MANY = 320;
    private static final int LIP = 400;
    private static final double NEAR_RAD = 0.02;

    private final Cap cap;
    private final Leaf leaf;
    private final Sampler sampler;
    private final LowestOpening smooth;
    private final LowestOpening kinked;

    SampledSwing(Cap cap, Leaf leaf) {
        this.cap = cap;
        this.leaf = leaf;
        this.sampler = new Sampler(cap, leaf);
        this.smooth = new LowestOpening(leaf, cap.stopRad(), SMOOTH);
        this.kinked = new LowestOpening(leaf, cap.stopRad(), KINKED);
    }

    Map<Pair, Double> least() {
        Map<Pair, Double> least = new EnumMap<>(Pair.class);
        FormedLeaf formed = sampler.formed();
        List<double[][]> heel = formed.heel();
        least.put(Pair.LEAF_HOOD, hood());
        least.put(Pair.HEEL_WALL, smooth.least(pose -> sampler.wall(pose, heel)));
        least.put(Pair.HEEL_FLOOR, floor(heel));
        List<double[][]> inside = formed.inside(FEW);
        least.put(Pair.LEAF_SLEEVE, smooth.least(pose -> sampler.sleeve(pose, inside)));
        List<double[][]> few = formed.lips(FEW * 2);
        List<double[][]> many = formed.lips(LIP);
        least.put(Pair.LIP_STANDOFF, kinked.least(pose -> sampler.standoff(pose, few), pose -> sampler.standoff(pose, many)));
        least.put(Pair.FLANGE_SPOUT, spout());
        least.put(Pair.LEAF_BUSHING, sampler.bushing());
        if (leaf.number() == 1) {
            List<double[][]> rows = new ArrayList<>(heel);
            rows.addAll(formed.curve(FEW));
            least.put(Pair.LEAF_LEAF, smooth.least(pose -> sampler.opposite(pose, rows)));
        }
        if (leaf.number() < cap.leaves().size()) {
            outward(least);
        }
        return least;
    }

    /** The flange's inside round the outboard corner of the spout's end. */
    private double spout() {
        Gutter gutter = cap.gutters().get(leaf.number() - 1);
        double half = gutter.outsideWidthMm() / 2;
        double azimuth = Math.atan2(gutter.endMm(half), gutter.jointMm() + half);
        List<double[][]> inside = sampler.formed().insideNear(azimuth, NEAR_RAD, FEW);
        return smooth.least(pose -> sampler.spout(pose, inside));
    }

    private double hood() {
        HoodSampler hood = new HoodSampler(cap.hood());
        double[][] end = sampler.formed().hingeEnd();
        List<double[][]> few = sampler.formed().curve(FEW);
        List<double[][]> many = sampler.formed().curve(MANY);
        return smooth.least(pose -> hood.least(pose, few, end), pose -> hood.least(pose, many, end));
    }

    /** The gutter's floor under its own leaf's heel, and under the free edge of the leaf before it. */
    private double floor(List<double[][]> heel) {
        Gutter gutter = cap.gutters().get(leaf.number() - 1);
        double own = smooth.least(pose -> Sampler.floor(pose, heel, gutter));
        if (leaf.number() == 1) {
            return own;
        }
        Leaf before = cap.leaves().get(leaf.number() - 2);
        List<double[][]> free = new FormedLeaf(before).free();
        return Math.min(own, new LowestOpening(before, cap.stopRad(), SMOOTH).least(pose -> Sampler.floor(pose, free, gutter)));
    }

    private void outward(Map<Pair, Double> least) {
        least.put(Pair.LEAF_NEXT, kinked.least(sampler::next));
        least.put(Pair.LEAF_BAR, kinked.least(sampler::bar));
    }
}

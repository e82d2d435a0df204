package org.capwright.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.LeafInputs;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.units.Length;

/** Divides half the leaf circle into slabs: where the joints are, and the edges that follow from them. */
final class LeafSlabs {
    private final double radiusMm;
    private final double gapMm;
    private final int perHalf;

    private LeafSlabs(double radiusMm, double gapMm, int perHalf) {
        this.radiusMm = radiusMm;
        this.gapMm = gapMm;
        this.perHalf = perHalf;
    }

    /** The joints of a job's leaves, from the middle outwards; the first is the middle itself, 0. */
    static List<Double> joints(CapJob job, double radiusMm, double offsetMm) {
        int perHalf = job.get(LeafInputs.COUNT) / 2;
        LeafSlabs slabs = new LeafSlabs(radiusMm, job.get(LeafInputs.GAP).mm(), perHalf);
        List<Double> joints = new ArrayList<>(List.of(0.0));
        if (perHalf > 1) {
            joints.addAll(slabs.typedJoints(job).orElseGet(slabs::equalLengths));
        }
        slabs.refuseImpossible(job, joints, offsetMm);
        return joints;
    }

    /** The slabs between joints, from the middle outwards. */
    static List<Leaf.Slab> between(List<Double> joints, double radiusMm, double gapMm) {
        List<Leaf.Slab> slabs = new ArrayList<>();
        for (int i = 0; i < joints.size(); i++) {
            double free = i + 1 < joints.size() ? joints.get(i + 1) - gapMm / 2 : radiusMm;
            slabs.add(new Leaf.Slab(joints.get(i) + gapMm / 2, free, radiusMm));
        }
        return slabs;
    }

    private Optional<List<Double>> typedJoints(CapJob job) {
        Optional<Double> first = job.find(LeafInputs.FIRST_JOINT).map(Length::mm);
        Optional<Double> second = job.find(LeafInputs.SECOND_JOINT).map(Length::mm);
        return perHalf == 2 ? first.map(List::of) : first.flatMap(p -> second.map(q -> List.of(p, q)));
    }

    /** Equal lengths: n leaves of length L and their gaps fill the half, {@code n L + (n - 1/2) g = R}. */
    private List<Double> equalLengths() {
        double length = (radiusMm - (perHalf - 0.5) * gapMm) / perHalf;
        List<Double> joints = new ArrayList<>();
        for (int i = 1; i < perHalf; i++) {
            joints.add(i * (length + gapMm));
        }
        return joints;
    }

    private void refuseImpossible(CapJob job, List<Double> joints, double offsetMm) {
        List<Leaf.Slab> slabs = between(joints, radiusMm, gapMm);
        for (Leaf.Slab slab : slabs) {
            if (slab.freeEdgeMm() - slab.hingeEdgeMm() <= 2 * offsetMm) {
                String typed = job.text().at(LeafInputs.GAP.path()).or(LeafInputs.GAP::fallback).orElse("");
                throw new RefusedJobException(List.of(new Problem(LeafInputs.GAP.path(), typed,
                        "a leaf would be shorter than twice its rod offset",
                        "Take fewer leaves, a smaller gap or offset, or move the joints")));
            }
        }
    }
}

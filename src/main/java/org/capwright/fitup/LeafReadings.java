package org.capwright.fitup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.geom.Oval;
import org.capwright.job.CapJob;
import org.capwright.job.FitInputs;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.swing.LeafSize;
import org.capwright.swing.RodLine;

/** What readings say of leaves and rods. */
final class LeafReadings {
    private final Cap cap;
    private final CapJob job;

    private LeafReadings(Cap cap) {
        this.cap = cap;
        this.job = cap.job();
    }

    /** Sizes of the leaves that were measured; several readings of one leaf are averaged. */
    static List<LeafSize> sizes(Cap cap, Oval sleeve) {
        LeafReadings readings = new LeafReadings(cap);
        List<LeafSize> sizes = new ArrayList<>();
        for (Leaf leaf : cap.leaves()) {
            readings.size(leaf, 1, sleeve).ifPresent(sizes::add);
            readings.size(leaf, -1, sleeve).ifPresent(sizes::add);
        }
        return sizes;
    }

    /** A length is {@code sqrt(R_l^2 - y^2) - x_e}; a cover {@code R_l - t_l - R_so}; the length of an inner leaf ends at its chord. */
    private Optional<LeafSize> size(Leaf leaf, int side, Oval sleeve) {
        List<Double> radii = new ArrayList<>();
        List<Double> ends = new ArrayList<>();
        double hinge = leaf.slab().hingeEdgeMm();
        for (int i = 0; i < job.text().listSize(FitInputs.LEAVES); i++) {
            boolean ofThis = job.get(FitInputs.LEAF_NUMBER.at(i)) == leaf.number()
                    && job.get(FitInputs.LEAF_SIDE.at(i)).sign() == side;
            if (ofThis && job.find(FitInputs.LEAF_LENGTH.at(i)).isPresent()) {
                double end = hinge + job.get(FitInputs.LEAF_LENGTH.at(i)).mm();
                (leaf.slab().freeChord() ? ends : radii).add(leaf.slab().freeChord() ? end
                        : Math.hypot(end, job.get(FitInputs.LEAF_AT.at(i)).mm()));
            }
        }
        covers(leaf, side, sleeve, radii);
        if (radii.isEmpty() && ends.isEmpty()) {
            return Optional.empty();
        }
        double radius = radii.isEmpty() ? leaf.slab().radiusMm() : mean(radii);
        double free = leaf.slab().freeChord() ? ends.isEmpty() ? leaf.slab().freeEdgeMm() : mean(ends) : radius;
        return Optional.of(new LeafSize(leaf.number(), side, new Leaf.Slab(hinge, free, radius)));
    }

    private void covers(Leaf leaf, int side, Oval sleeve, List<Double> radii) {
        for (int i = 0; i < job.text().listSize(FitInputs.COVERS); i++) {
            double rad = job.get(FitInputs.COVER_AZIMUTH.at(i)).rad();
            double off = Math.acos(side * Math.cos(rad));
            boolean here = off <= leaf.slab().hingeAzimuthRad() && off >= leaf.slab().freeAzimuthRad();
            if (here && job.find(FitInputs.COVER.at(i)).isPresent()) {
                radii.add(sleeve.fromOriginMm(rad) + job.get(FitInputs.COVER.at(i)).mm() + leaf.sheet().thicknessMm());
            }
        }
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /** The rods that were measured at either end; an end that was not is as drawn. */
    static List<RodLine> rods(Cap cap) {
        LeafReadings readings = new LeafReadings(cap);
        List<RodLine> rods = new ArrayList<>();
        for (Leaf leaf : cap.leaves()) {
            readings.rod(leaf, 1).ifPresent(rods::add);
            readings.rod(leaf, -1).ifPresent(rods::add);
        }
        return rods;
    }

    private Optional<RodLine> rod(Leaf leaf, int side) {
        RodLine rod = RodLine.asDrawn(leaf, side, cap.doublers().get(leaf.number() - 1).faceYMm());
        boolean measured = false;
        for (int i = 0; i < job.text().listSize(FitInputs.RODS); i++) {
            if (job.get(FitInputs.ROD_NUMBER.at(i)) == leaf.number() && job.get(FitInputs.ROD_SIDE.at(i)).sign() == side) {
                rod = end(rod, i);
                measured = true;
            }
        }
        return measured ? Optional.of(rod) : Optional.empty();
    }

    private RodLine end(RodLine rod, int i) {
        boolean plus = job.get(FitInputs.ROD_END.at(i)) == FitInputs.Side.PLUS;
        double offset = job.find(FitInputs.ROD_OFFSET.at(i)).map(o -> o.mm()).orElse(plus ? rod.offsetPlusMm()
                : rod.offsetMinusMm());
        double height = job.find(FitInputs.ROD_HEIGHT.at(i)).map(z -> z.mm()).orElse(plus ? rod.heightPlusMm()
                : rod.heightMinusMm());
        return plus ? new RodLine(rod.number(), rod.side(), offset, rod.offsetMinusMm(), height, rod.heightMinusMm(), rod.endMm())
                : new RodLine(rod.number(), rod.side(), rod.offsetPlusMm(), offset, rod.heightPlusMm(), height, rod.endMm());
    }
}

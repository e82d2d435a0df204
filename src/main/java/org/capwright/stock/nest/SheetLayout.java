package org.capwright.stock.nest;

import java.util.List;
import java.util.Optional;
import org.capwright.geom.Bounds;

/**
 * A sheet and what is cut from it.
 *
 * @param size which sheet
 * @param placements what lies where, at least one
 * @param remnant largest upright rectangle that is left over, where it is usable
 * @param cuts order of the cuts for a shear; empty where a shear can't cut it
 */
public record SheetLayout(SheetSize size, List<Placement> placements, Optional<Bounds> remnant, List<ShearCut> cuts) {
    /** Keeps its own copies. */
    public SheetLayout {
        placements = List.copyOf(placements);
        cuts = List.copyOf(cuts);
    }

    /** A sheet with what is left of it, and with the order of its cuts where it has one. */
    static SheetLayout of(SheetSize size, List<Placement> placements, NestRules rules) {
        Optional<Bounds> remnant = remnant(size, placements, rules);
        return new SheetLayout(size, placements, remnant, ShearPlan.of(size, placements, remnant).orElse(List.of()));
    }

    /** Clear of all pieces by one spacing. */
    private static Optional<Bounds> remnant(SheetSize size, List<Placement> placements, NestRules rules) {
        List<Bounds> boxes = placements.stream().map(one -> one.outline().bounds().grown(rules.spacingMm())).toList();
        return LargestRest.of(new Bounds(0, 0, size.lengthMm(), size.widthMm()), boxes, rules.leastRemnantMm());
    }

    /**
     * Area of what is cut from it.
     *
     * @return mm2
     */
    public double usedMm2() {
        return placements.stream().mapToDouble(one -> one.piece().areaMm2()).sum();
    }

    /**
     * Area of the usable remnant.
     *
     * @return mm2; 0 where there is none
     */
    public double remnantMm2() {
        return remnant.map(rest -> rest.width() * rest.height()).orElse(0.0);
    }
}

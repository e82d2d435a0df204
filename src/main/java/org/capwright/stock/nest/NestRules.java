package org.capwright.stock.nest;

/**
 * What every layout keeps to.
 *
 * @param spacingMm least distance of two pieces
 * @param marginMm least distance of a piece and the sheet's edge
 * @param leastRemnantMm a rest of a sheet is usable from this size on, both ways
 */
public record NestRules(double spacingMm, double marginMm, double leastRemnantMm) {
    /** Refuses negative distances. */
    public NestRules {
        if (!(spacingMm >= 0 && marginMm >= 0 && leastRemnantMm >= 0)) {
            throw new IllegalArgumentException("spacing, margin and least remnant must be at least 0 mm");
        }
    }
}

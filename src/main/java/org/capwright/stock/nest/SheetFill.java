package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;

/**
 * What all ways to fill a sheet share. Pieces are grown by half the spacing, so the usable area is the sheet less its margins,
 * grown by as much.
 */
abstract class SheetFill implements Fill {
    /** What rounding may make of lengths that are the same. */
    static final double SAME_MM = 1e-6;

    final double usableX;
    final double usableY;
    final Shapes shapes;
    final Effort effort;
    private final SheetSize size;
    private final List<Put> puts = new ArrayList<>();

    SheetFill(SheetSize size, NestRules rules, Shapes shapes, Effort effort) {
        double lost = rules.spacingMm() - 2 * rules.marginMm();
        this.size = size;
        this.usableX = size.lengthMm() + lost;
        this.usableY = size.widthMm() + lost;
        this.shapes = shapes;
        this.effort = effort;
    }

    @Override
    public final SheetSize size() {
        return size;
    }

    @Override
    public final List<Put> puts() {
        return puts;
    }
}

package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts every piece down as far left as it goes, in the turn that reaches least far right. */
final class LeftmostFill implements Fill {
    private static final double SAME_MM = 1e-6;

    private final SheetSize size;
    private final double usableX;
    private final double usableY;
    private final Shapes shapes;
    private final Effort effort;
    private final List<Put> puts = new ArrayList<>();
    /** The sheet only fills up: what was not free for a form stays so. */
    private final Map<Integer, double[]> taken = new HashMap<>();
    private final Set<Integer> full = new HashSet<>();

    LeftmostFill(SheetSize size, NestRules rules, Shapes shapes, Effort effort) {
        this.size = size;
        this.shapes = shapes;
        this.effort = effort;
        double lost = rules.spacingMm() - 2 * rules.marginMm();
        this.usableX = size.lengthMm() + lost;
        this.usableY = size.widthMm() + lost;
    }

    @Override
    public SheetSize size() {
        return size;
    }

    @Override
    public List<Put> puts() {
        return puts;
    }

    @Override
    public boolean add(int demand) {
        Put best = null;
        for (Form form : shapes.forms(demand)) {
            double limit = best == null ? Double.MAX_VALUE : best.x() + best.form().width - form.width;
            if (full.contains(form.index) || limit <= 0 && best != null) {
                continue;
            }
            Put put = find(demand, form, limit);
            best = put == null ? best : put;
        }
        if (best != null) {
            puts.add(best);
            taken.put(best.form().index, new double[] {best.x(), best.y()});
        }
        return best != null;
    }

    /** The form's place, if it has one left of a limit. */
    private Put find(int demand, Form form, double limitX) {
        double frameX = usableX - form.width;
        double frameY = usableY - form.height;
        if (frameX < -SAME_MM || frameY < -SAME_MM) {
            full.add(form.index);
            return null;
        }
        double[] from = taken.getOrDefault(form.index, new double[] {-1, -1});
        LeftmostPlace place = new LeftmostPlace(frameX, frameY, from[0], from[1], limitX);
        for (Put put : puts) {
            for (Convex polygon : shapes.noFit(put.form(), form)) {
                place.block(polygon, put.x(), put.y());
            }
        }
        boolean found = place.search();
        effort.spend(place.steps() + 20);
        if (!found && limitX == Double.MAX_VALUE) {
            full.add(form.index);
        }
        return found ? new Put(demand, form, place.x(), place.y()) : null;
    }
}

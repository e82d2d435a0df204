package org.capwright.stock.nest;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts every piece down as far left as it goes, or as far down, in the turn that reaches least far to the right, or up. */
final class CornerFill extends SheetFill {
    private final boolean down;
    /** The sheet only fills up: what was not free for a form stays so. */
    private final Map<Integer, double[]> taken = new HashMap<>();
    private final Set<Integer> full = new HashSet<>();

    CornerFill(SheetSize size, NestRules rules, Shapes shapes, Effort effort, boolean down) {
        super(size, rules, shapes, effort);
        this.down = down;
    }

    @Override
    public boolean add(int demand) {
        Put best = null;
        for (Form form : shapes.forms(demand)) {
            double limit = best == null ? Double.MAX_VALUE : reach(best) - along(form);
            if (full.contains(form.index) || limit <= 0 && best != null) {
                continue;
            }
            Put put = find(demand, form, limit);
            best = put == null ? best : put;
        }
        if (best != null) {
            puts().add(best);
            taken.put(best.form().index, down ? new double[] {best.y(), best.x()} : new double[] {best.x(), best.y()});
        }
        return best != null;
    }

    private double along(Form form) {
        return down ? form.height : form.width;
    }

    private double reach(Put put) {
        return (down ? put.y() : put.x()) + along(put.form());
    }

    /** The form's place, if it has one before a limit. The search goes to the left; for down, all is mirrored at the diagonal. */
    private Put find(int demand, Form form, double limit) {
        double frameAlong = (down ? usableY : usableX) - along(form);
        double frameAcross = down ? usableX - form.width : usableY - form.height;
        if (frameAlong < -SAME_MM || frameAcross < -SAME_MM) {
            full.add(form.index);
            return null;
        }
        double[] from = taken.getOrDefault(form.index, new double[] {-1, -1});
        CornerPlace place = new CornerPlace(frameAlong, frameAcross, from[0], from[1], limit);
        for (Put put : puts()) {
            block(place, put, form);
        }
        boolean found = place.search();
        effort.spend(place.steps() + 20);
        if (!found && limit == Double.MAX_VALUE) {
            full.add(form.index);
        }
        return !found ? null : down ? new Put(demand, form, place.y(), place.x()) : new Put(demand, form, place.x(), place.y());
    }

    private void block(CornerPlace place, Put put, Form form) {
        List<Convex> noFit = down ? shapes.mirroredNoFit(put.form(), form) : shapes.noFit(put.form(), form);
        for (Convex polygon : noFit) {
            place.block(polygon, down ? put.y() : put.x(), down ? put.x() : put.y());
        }
    }
}

package org.capwright.stock.nest;

import java.util.List;
import java.util.Optional;
import org.capwright.geom.Vec2;

/** Turns filled sheets into layouts. */
final class Layouts {
    private Layouts() {
    }

    static SheetLayout of(NestTask task, Fill fill) {
        return SheetLayout.of(fill.size(), placements(task, fill), task.rules());
    }

    /** Whether a shear can cut it. */
    static boolean shearable(NestTask task, Fill fill) {
        return ShearPlan.of(fill.size(), placements(task, fill), Optional.empty()).isPresent();
    }

    private static List<Placement> placements(NestTask task, Fill fill) {
        double edge = task.rules().marginMm() - task.rules().spacingMm() / 2;
        return fill.puts().stream().map(put -> new Placement(task.demands().get(put.demand()).piece(), put.form().turns,
                new Vec2(put.x() + edge, put.y() + edge).plus(put.form().origin))).toList();
    }
}

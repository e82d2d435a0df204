package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/**
 * Lower bounds on sheets and cost. By area: pieces grown by half the spacing do not overlap and lie in the sheet less its
 * margins grown by as much. By pairs: pieces of which no two fit on one sheet need a sheet each; that holds for quarter turns.
 */
final class LowerBound {
    /** Chords and rounded corners make the area a little small; never too large. */
    private static final double CHORD_MM = 0.01;
    private static final int CLIQUE_MOST = 40;
    private static final int COUNTED_MOST = 30;

    private final NestTask task;
    private final Shapes shapes;

    private LowerBound(NestTask task) {
        this.task = task;
        this.shapes = Shapes.inner(task);
    }

    static NestBound of(NestTask task) {
        LowerBound bound = new LowerBound(task);
        double area = bound.grownArea();
        List<Integer> apart = bound.apart();
        double largest = task.sizes().stream().mapToDouble(bound::usable).max().orElseThrow();
        int byArea = Math.max(1, (int) Math.ceil(area / largest - 1e-9));
        boolean free = task.sizes().stream().anyMatch(SheetSize::first);
        double cost = free ? 0 : Math.max(bound.costOfArea(area), bound.costOfEach(apart));
        return apart.size() > byArea ? new NestBound(apart.size(), cost, apart.size()
                + " pieces of which no two share a sheet, in quarter turns")
                : new NestBound(byArea, cost, "area with spacing");
    }

    private double grownArea() {
        double half = task.rules().spacingMm() / 2;
        double smallest = Shapes.smallest(task.demands());
        return task.demands().stream().mapToDouble(demand -> {
            Polygon polygon = Cover.along(demand.piece().outline(), Cover.roomy(demand.piece(), smallest), CHORD_MM);
            double grown = half == 0 ? polygon.getArea() : polygon.buffer(half).getArea();
            // hollow arcs by chords are a little too large: half a hundredth of a millimetre along the edge
            return demand.quantity() * (grown - CHORD_MM * polygon.getLength());
        }).sum();
    }

    private double usable(SheetSize size) {
        double lost = task.rules().spacingMm() - 2 * task.rules().marginMm();
        return (size.lengthMm() + lost) * (size.widthMm() + lost);
    }

    /** Least cost of sheets with enough area: exact while there are few, else by the cheapest area. */
    private double costOfArea(double area) {
        double rate = task.sizes().stream().mapToDouble(size -> size.cost() / usable(size)).min().orElseThrow();
        double smallest = task.sizes().stream().mapToDouble(this::usable).min().orElseThrow();
        return area / smallest > COUNTED_MOST ? area * rate : counted(area, 0, rate, Double.MAX_VALUE);
    }

    private double counted(double area, int from, double rate, double most) {
        if (area <= 1e-6) {
            return 0;
        }
        double best = most;
        for (int i = from; i < task.sizes().size(); i++) {
            SheetSize size = task.sizes().get(i);
            if (Math.max(area, 0) * rate < best && size.cost() < best) {
                best = Math.min(best, size.cost() + counted(area - usable(size), i, rate, best - size.cost()));
            }
        }
        return best;
    }

    private double costOfEach(List<Integer> apart) {
        return apart.stream().mapToDouble(demand -> task.sizes().stream().filter(size -> alone(size, demand))
                .mapToDouble(SheetSize::cost).min().orElse(0)).sum();
    }

    private boolean alone(SheetSize size, int demand) {
        return new CornerFill(size, task.rules(), shapes, new Effort(1, 1, () -> false), false).add(demand);
    }

    /** Pieces of which no two share a sheet of any size, largest first, as many as are found by taking one after the other. */
    private List<Integer> apart() {
        List<Integer> all = IntStream.range(0, task.demands().size()).boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> shapes.areaMm2(i)).reversed()).toList();
        List<Integer> apart = new ArrayList<>();
        for (int demand : all) {
            for (int k = 0; k < task.demands().get(demand).quantity() && apart.size() < CLIQUE_MOST; k++) {
                if (apart.stream().anyMatch(other -> together(other, demand))) {
                    break;
                }
                apart.add(demand);
            }
        }
        return apart;
    }

    /** Whether two pieces can share a sheet: one moved along all corners of the other's no-fit polygon, in every turn. */
    private boolean together(int first, int second) {
        return task.sizes().stream().anyMatch(size -> shapes.forms(first).stream().anyMatch(a ->
                shapes.forms(second).stream().anyMatch(b -> together(size, a, b))));
    }

    /** The two fit if the second's origin can leave the no-fit polygon while both stay on the sheet. */
    private boolean together(SheetSize size, Form a, Form b) {
        double lost = task.rules().spacingMm() - 2 * task.rules().marginMm();
        double roomX = size.lengthMm() + lost;
        double roomY = size.widthMm() + lost;
        if (Math.min(roomX - Math.max(a.width, b.width), roomY - Math.max(a.height, b.height)) < 0) {
            return false;
        }
        return new PairFit(shapes.noFit(a, b), a, b, roomX, roomY).exists();
    }
}

package org.capwright.stock.nest;

import java.util.Comparator;
import java.util.List;
import org.capwright.geom.Bounds;

/**
 * How good a layout is: first what fits, then cost, then whether a shear can cut it (where all pieces are rectangles), then the
 * usable remnant.
 *
 * @param unplaced pieces without a place
 * @param cost cost of all sheets
 * @param crooked sheets of rectangles that a shear can't cut
 * @param remnantMm2 area of the largest usable remnant
 * @param uneven sum of the squares of the sheets' uses: the larger, the nearer the emptiest sheet is to being empty
 */
record Score(int unplaced, double cost, int crooked, double remnantMm2, double uneven) {
    /** The better layout first. */
    static final Comparator<Score> BEST = Comparator.comparingInt(Score::unplaced)
            .thenComparingDouble(score -> Math.rint(score.cost() * 1e6)).thenComparingInt(Score::crooked)
            .thenComparingDouble(score -> -Math.rint(score.remnantMm2()));
    /** The one that is more likely to lead to a better one first. */
    static final Comparator<Score> LEADING = Comparator.comparingInt(Score::unplaced)
            .thenComparingDouble(score -> Math.rint(score.cost() * 1e6)).thenComparingDouble(score -> -score.uneven());

    static Score of(NestTask task, Shapes shapes, List<Fill> sheets, int unplaced, boolean rectangles) {
        double cost = sheets.stream().mapToDouble(fill -> fill.size().cost()).sum();
        double remnant = sheets.stream().mapToDouble(fill -> remnant(fill, task.rules())).max().orElse(0);
        int crooked = rectangles ? (int) sheets.stream().filter(fill -> Layouts.of(task, fill).cuts().isEmpty()).count() : 0;
        double uneven = sheets.stream().mapToDouble(fill -> square(fill.puts().stream().mapToDouble(put -> shapes.areaMm2(put.demand())).sum())).sum();
        return new Score(unplaced, cost, crooked, remnant, uneven);
    }

    private static double remnant(Fill fill, NestRules rules) {
        double right = rules.marginMm();
        double high = rules.marginMm();
        for (Fill.Put put : fill.puts()) {
            right = Math.max(right, rules.marginMm() + put.x() + put.form().width);
            high = Math.max(high, rules.marginMm() + put.y() + put.form().height);
        }
        Bounds beside = new Bounds(right, 0, fill.size().lengthMm(), fill.size().widthMm());
        Bounds above = new Bounds(0, high, fill.size().lengthMm(), fill.size().widthMm());
        return Math.max(usable(beside, rules), usable(above, rules));
    }

    private static double usable(Bounds rest, NestRules rules) {
        return Math.min(rest.width(), rest.height()) >= Math.max(1, rules.leastRemnantMm()) ? rest.width() * rest.height() : 0;
    }

    private static double square(double value) {
        return value * value;
    }
}

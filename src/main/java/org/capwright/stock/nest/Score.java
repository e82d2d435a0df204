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
 * @param remnantMm2 area of the usable remnant of the emptiest sheet
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

    /** The score; what only decides between layouts of equal cost is looked at up to an interesting cost only. */
    static Score of(NestTask task, Shapes shapes, List<Fill> sheets, int unplaced, boolean rectangles, double interesting) {
        double cost = sheets.stream().mapToDouble(fill -> fill.size().cost()).sum();
        double remnant = 0;
        int crooked = 0;
        if (cost <= interesting) {
            remnant = sheets.stream().min(Comparator.comparingDouble(fill -> used(shapes, fill) / fill.size().areaMm2()))
                    .map(fill -> remnant(fill, task.rules())).orElse(0.0);
            crooked = rectangles ? (int) sheets.stream().filter(fill -> !Layouts.shearable(task, fill)).count() : 0;
        }
        double uneven = sheets.stream().mapToDouble(fill -> square(used(shapes, fill))).sum();
        return new Score(unplaced, cost, crooked, remnant, uneven);
    }

    private static double remnant(Fill fill, NestRules rules) {
        double half = rules.spacingMm() / 2;
        // pieces are grown by half the spacing already
        List<Bounds> boxes = fill.puts().stream().map(put -> new Bounds(put.x(), put.y(), put.x() + put.form().width,
                put.y() + put.form().height).grown(half)).toList();
        double edge = rules.marginMm() - half;
        Bounds sheet = new Bounds(-edge, -edge, fill.size().lengthMm() - edge, fill.size().widthMm() - edge);
        return LargestRest.of(sheet, boxes, rules.leastRemnantMm()).map(rest -> rest.width() * rest.height()).orElse(0.0);
    }

    private static double used(Shapes shapes, Fill fill) {
        return fill.puts().stream().mapToDouble(put -> shapes.areaMm2(put.demand())).sum();
    }

    private static double square(double value) {
        return value * value;
    }
}

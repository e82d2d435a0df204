package org.capwright.fitup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.capwright.geom.GoldenSection;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.geom.Vec3;
import org.capwright.part.Cap;
import org.capwright.swing.Clearance;
import org.capwright.swing.MeasuredSwing;
import org.capwright.swing.MeasuredWork;
import org.capwright.swing.Nearness;

/**
 * Finds the shift of the hood that makes the least clearance of leaf and hood greatest. For a round hood that is the centre of
 * the smallest circle about all that the leaves sweep. It is solved for a handful of points of the leaves; the whole swing at that shift
 * then gives the points that are worst there, which join the handful, until the swing finds nothing worse.
 */
final class BestShift {
    private static final int SEEDS = 24;
    private static final int BINS = 120;
    private static final int MOST_ROUNDS = 30;
    private static final double ENOUGH_MM = 1e-4;
    private static final double SAME_MM = 2e-4;
    private static final double SEED_SHARE = 0.02;

    private final Cap made;
    private final MeasuredWork work;
    private final double reachMm;
    private final Point[] bins = new Point[BINS];
    private final List<Point> joined = new ArrayList<>();

    /** A point of a leaf that may be nearest to the hood, and what a bead takes there. */
    private record Point(double x, double y, double lessMm) {
    }

    private BestShift(Cap made, MeasuredWork work) {
        this.made = made;
        this.work = work;
        this.reachMm = made.hood().insideRadiusMm() - made.sleeve().outsideRadiusMm();
    }

    /** The shift from where the hood stands. */
    static Vec2 of(Cap made, MeasuredWork work) {
        return new BestShift(made, work).search();
    }

    private Vec2 search() {
        double seed = SEED_SHARE * work.hood().radiusMm();
        Vec2 back = Vec2.ZERO.minus(work.hood().centre());
        for (Vec2 by : List.of(Vec2.ZERO, back.plus(new Vec2(seed, seed)), back.plus(new Vec2(-seed, seed)),
                back.plus(new Vec2(-seed, -seed)),
                back.plus(new Vec2(seed, -seed)))) {
            seed(by);
        }
        joined.addAll(Arrays.stream(bins).filter(point -> point != null).toList());
        Vec2 best = back;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            best = solve(back);
            double promised = least(best);
            if (worst(best) >= promised - SAME_MM) {
                break;
            }
        }
        return best;
    }

    /** Points near the hood at many openings, with the hood at a place; the farthest in each sector is kept. */
    private void seed(Vec2 by) {
        Oval hood = work.hood().moved(by);
        for (int side = -1; side <= 1; side += 2) {
            for (Clearance one : MeasuredSwing.hood(made, work, hood, side)) {
                for (int i = 0; i <= SEEDS; i++) {
                    Nearness near = one.curve().apply(one.stopRad() * i / SEEDS);
                    if (Double.isFinite(near.mm())) {
                        keep(point(near.where(), near.mm(), hood));
                    }
                }
            }
        }
    }

    private static Point point(Vec3 at, double mm, Oval hood) {
        return new Point(at.x(), at.y(), hood.insideMm(at.x(), at.y()) - mm);
    }

    private void keep(Point point) {
        int bin = (int) ((Math.atan2(point.y, point.x) / (2 * Math.PI) + 0.5) * BINS) % BINS;
        Point old = bins[bin];
        if (old == null || Math.hypot(point.x, point.y) + point.lessMm > Math.hypot(old.x, old.y) + old.lessMm) {
            bins[bin] = point;
        }
    }

    /** The whole swing's least clearance at a shift; its worst points join the handful. */
    private double worst(Vec2 by) {
        Oval hood = work.hood().moved(by);
        double least = Double.POSITIVE_INFINITY;
        for (int side = -1; side <= 1; side += 2) {
            for (Clearance one : MeasuredSwing.hood(made, work, hood, side)) {
                joined.add(point(one.where(), one.leastMm(), hood));
                least = Math.min(least, one.leastMm());
            }
        }
        return least;
    }

    private double least(Vec2 by) {
        Oval hood = work.hood().moved(by);
        double least = Double.POSITIVE_INFINITY;
        for (Point point : joined) {
            least = Math.min(least, hood.insideMm(point.x, point.y) - point.lessMm);
        }
        return least;
    }

    /** Golden sections in x, and in y within: the least clearance has one summit, as distances from points are convex. */
    private Vec2 solve(Vec2 about) {
        DoubleUnaryOperator overX = x -> -least(new Vec2(x, bestY(x, about)));
        double x = GoldenSection.lowest(overX, about.x() - reachMm, about.x() + reachMm, ENOUGH_MM);
        return new Vec2(x, bestY(x, about));
    }

    private double bestY(double x, Vec2 about) {
        return GoldenSection.lowest(y -> -least(new Vec2(x, y)), about.y() - reachMm, about.y() + reachMm, ENOUGH_MM);
    }
}

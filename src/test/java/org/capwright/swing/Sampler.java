package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.Standoff;
import org.capwright.part.StopBar;

/** Clearances of one leaf at one opening by plain points. Slow, and shares no formula with the program. */
final class Sampler {
    /** What is at the rim counts as below it. */
    private static final double AT_RIM_MM = 1e-9;
    private static final int FINE = 60;
    private static final int DIRECTIONS = 360;

    private final Cap cap;
    private final Leaf leaf;
    private final FormedLeaf formed;
    private final List<double[]> standoffs;

    Sampler(Cap cap, Leaf leaf) {
        this.cap = cap;
        this.leaf = leaf;
        this.formed = new FormedLeaf(leaf);
        this.standoffs = standoffs(cap.standoff());
    }

    /** The heel and the outboard wall of its gutter, as far as the heel is below the rim. */
    double wall(Pose pose, List<double[][]> heel) {
        Gutter gutter = cap.gutters().get(leaf.number() - 1);
        double reach = Double.NEGATIVE_INFINITY;
        for (double[][] row : heel) {
            for (int i = 0; i < row.length; i++) {
                double z = pose.z(row[i]);
                if (z <= AT_RIM_MM) {
                    reach = Math.max(reach, pose.x(row[i]));
                }
                double before = i == 0 ? z : pose.z(row[i - 1]);
                if (before > 0 != z > 0) {
                    double s = before / (before - z);
                    reach = Math.max(reach, pose.x(row[i - 1]) * (1 - s) + pose.x(row[i]) * s);
                }
            }
        }
        return gutter.jointMm() + gutter.insideWidthMm() / 2 - reach;
    }

    /** Points of a section and the floor of a gutter. */
    static double floor(Pose pose, List<double[][]> section, Gutter gutter) {
        double lowest = Double.POSITIVE_INFINITY;
        for (double[][] row : section) {
            for (double[] p : row) {
                lowest = Math.min(lowest, pose.z(p));
            }
        }
        return lowest + gutter.depthMm();
    }

    double sleeve(Pose pose, List<double[][]> inside) {
        double least = Double.POSITIVE_INFINITY;
        for (double[][] row : inside) {
            for (double[] p : row) {
                if (pose.z(p) <= AT_RIM_MM) {
                    least = Math.min(least, pose.out(p) - cap.sleeve().outsideRadiusMm());
                }
            }
        }
        return least;
    }

    /**
     * A free edge and the next leaf, closed, with its rod: by pairs of points, few, then close together round the nearest; where
     * they are
     * in each other, by the least move in any direction that parts them.
     */
    double next(Pose pose) {
        Leaf outer = cap.leaves().get(leaf.number());
        double[][] free = formed.freeEnds();
        double[][] flange = new FormedLeaf(outer).hingeEnds();
        Pose closed = Pose.of(outer, 0);
        double[] rod = {outer.rodAxisMm(), outer.rodAxisZMm()};
        double rodGap = apart(new double[][] {at(pose, free[0]), at(pose, free[1])}, new double[][] {rod, rod}) - outer.rodRadiusMm();
        double far = outer.slab().freeEdgeMm();
        double[][] box = {at(closed, flange[0]), at(closed, flange[1]), {far, at(closed, flange[1])[1]}, {far, at(closed,
                flange[0])[1]}};
        return Math.min(rodGap, apartOrDeep(at(pose, free[0]), at(pose, free[1]), box));
    }

    /** A line and a convex box: their distance by points, or less than nothing the least move that parts them. */
    private static double apartOrDeep(double[] a, double[] b, double[][] box) {
        double[] moves = new double[DIRECTIONS];
        for (int i = 0; i < DIRECTIONS; i++) {
            moves[i] = move(a, b, box, 2 * Math.PI * i / DIRECTIONS);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < DIRECTIONS; i++) {
            boolean valley = moves[i] <= moves[(i + 1) % DIRECTIONS] && moves[i] <= moves[(i + DIRECTIONS - 1) % DIRECTIONS];
            best = Math.min(best, valley ? leastMove(a, b, box, 2 * Math.PI * i / DIRECTIONS) : moves[i]);
        }
        if (best > 0) {
            return -best;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < box.length; i++) {
            least = Math.min(least, apart(new double[][] {a, b}, new double[][] {box[i], box[(i + 1) % box.length]}));
        }
        return least;
    }

    /** The least move in directions near one. */
    private static double leastMove(double[] a, double[] b, double[][] box, double rad) {
        double best = move(a, b, box, rad);
        double bestRad = rad;
        for (double reach = 2 * Math.PI / DIRECTIONS; reach > 1e-8; reach /= 3) {
            double middle = bestRad;
            for (int i = -4; i <= 4; i++) {
                double move = move(a, b, box, middle + reach * i / 4);
                bestRad = move < best ? middle + reach * i / 4 : bestRad;
                best = Math.min(best, move);
            }
        }
        return best;
    }

    /** How far a line must move in a direction until all of it is beyond all of a box. */
    private static double move(double[] a, double[] b, double[][] box, double rad) {
        double c = Math.cos(rad);
        double s = Math.sin(rad);
        double farthest = Double.NEGATIVE_INFINITY;
        for (double[] corner : box) {
            farthest = Math.max(farthest, corner[0] * c + corner[1] * s);
        }
        return farthest - Math.min(a[0] * c + a[1] * s, b[0] * c + b[1] * s);
    }

    private static double[] at(Pose pose, double[] p) {
        return new double[] {pose.x(p), pose.z(p)};
    }

    /** Least distance of points on two straight lines. */
    private static double apart(double[][] one, double[][] other) {
        double a = 0.5;
        double b = 0.5;
        double least = Double.POSITIVE_INFINITY;
        for (double half = 0.5; half > 1e-4; half /= 3) {
            double nearA = a;
            double nearB = b;
            for (int i = -4; i <= 4; i++) {
                for (int k = -4; k <= 4; k++) {
                    double s = Math.max(0, Math.min(1, nearA + half * i / 4));
                    double t = Math.max(0, Math.min(1, nearB + half * k / 4));
                    double dx = one[0][0] + (one[1][0] - one[0][0]) * s - other[0][0] - (other[1][0] - other[0][0]) * t;
                    double dz = one[0][1] + (one[1][1] - one[0][1]) * s - other[0][1] - (other[1][1] - other[0][1]) * t;
                    double d = Math.sqrt(dx * dx + dz * dz);
                    if (d < least) {
                        least = d;
                        a = s;
                        b = t;
                    }
                }
            }
        }
        return least;
    }

    /** A leaf's section, line by line, and the box of the next joint's stop bar. */
    double bar(Pose pose) {
        double least = Double.POSITIVE_INFINITY;
        for (double[][] row : List.of(formed.face(), formed.free().get(0), formed.free().get(1))) {
            least = Math.min(least, apartOrDeep(at(pose, row[0]), at(pose, row[row.length - 1]), bar()));
        }
        return least;
    }

    /** A place, x and z, and that box. */
    double bar(double[] place) {
        return apartOrDeep(place, place, bar());
    }

    private double[][] bar() {
        StopBar bar = cap.stops().get(leaf.number());
        double near = bar.jointMm() - bar.halfWidthMm();
        double far = bar.jointMm() + bar.halfWidthMm();
        double top = bar.cornerZMm() + bar.depthMm();
        return new double[][] {{near, bar.cornerZMm()}, {far, bar.cornerZMm()}, {far, top}, {near, top}};
    }

    /** Twice the distance from the plane between the middle pair. */
    double opposite(Pose pose, List<double[][]> rows) {
        double nearest = leaf.rodAxisMm() - leaf.rodRadiusMm();
        for (double[][] row : rows) {
            for (double[] p : row) {
                nearest = Math.min(nearest, pose.x(p));
            }
        }
        return 2 * nearest;
    }

    /** The lip over the tops of the standoffs, wherever it is over one at this opening. */
    double standoff(Pose pose, List<double[][]> rows) {
        double least = Double.POSITIVE_INFINITY;
        for (double[][] row : rows) {
            for (double[] p : row) {
                double mm = pose.z(p) - cap.standoff().topZMm();
                if (mm < least && overStandoff(Math.atan2(p[2], pose.x(p)))) {
                    least = mm;
                }
            }
        }
        return least;
    }

    private boolean overStandoff(double azimuth) {
        for (double[] span : standoffs) {
            if (azimuth >= span[0] && azimuth <= span[1]) {
                return true;
            }
        }
        return false;
    }

    /** Where standoffs are, from web to the far edge of the wider flange, with the mirror images that matter to this leaf. */
    private static List<double[]> standoffs(Standoff standoff) {
        List<double[]> spans = new ArrayList<>();
        double full = 2 * Math.PI;
        double width = 2 * Math.max(standoff.outerHalfRad(), standoff.innerHalfRad());
        for (int i = 0; i < standoff.count(); i++) {
            double from = standoff.azimuthRad(i) - standoff.outerHalfRad();
            double to = from + width;
            for (double[] image : List.of(new double[] {from, to}, new double[] {-to, -from},
                    new double[] {Math.PI - to, Math.PI - from}, new double[] {Math.PI + from, Math.PI + to})) {
                for (int turn = -3; turn <= 3; turn++) {
                    double start = image[0] + turn * full;
                    if (start < Math.PI && start + width > 0) {
                        spans.add(new double[] {start, start + width});
                    }
                }
            }
        }
        return spans;
    }

    /** The flange's inside and the outboard edge of the spout's end, an upright line: their distance in space. */
    double spout(Pose pose, List<double[][]> inside) {
        Gutter gutter = cap.gutters().get(leaf.number() - 1);
        double half = gutter.outsideWidthMm() / 2;
        double x = gutter.jointMm() + half;
        double y = gutter.endMm(half);
        double least = Double.POSITIVE_INFINITY;
        for (double[][] row : inside) {
            for (double[] p : row) {
                double dz = Math.max(0, Math.max(pose.z(p), -gutter.outsideDepthMm() - pose.z(p)));
                double dx = pose.x(p) - x;
                double dy = p[2] - y;
                least = Math.min(least, Math.sqrt(dx * dx + dy * dy + dz * dz));
            }
        }
        return least;
    }

    /** Whatever of the curved flange lies within the bushing's outside and the plane of the bushing's end. The opening is no matter. */
    double bushing() {
        double end = cap.doublers().get(leaf.number() - 1).faceYMm() + cap.doublers().get(leaf.number() - 1).thicknessMm()
                - cap.bushings().get(leaf.number() - 1).lengthMm();
        double radius = cap.bushing().outsideMm() / 2;
        double farthest = Double.NEGATIVE_INFINITY;
        double beside = Math.max(0, radius - leaf.rodRadiusMm()) / Math.sin(leaf.bend().turnRad());
        for (int level = 0; level <= FINE; level++) {
            double v = Math.min(leaf.curveFlangeMm(), beside) * level / FINE;
            double out = v * Math.cos(leaf.bend().turnRad());
            double w = -leaf.rodRadiusMm() - v * Math.sin(leaf.bend().turnRad());
            double from = leaf.slab().hingeEdgeMm() - out - leaf.rodAxisMm();
            for (int i = 0; i <= FINE * FINE; i++) {
                double u = Math.max(from, -radius) * (1 - (double) i / (FINE * FINE));
                if (u * u + w * w <= radius * radius) {
                    double x = leaf.rodAxisMm() + u;
                    double r = leaf.slab().radiusMm() + out;
                    farthest = Math.max(farthest, Math.sqrt(r * r - x * x));
                }
            }
        }
        return end - farthest;
    }

    Leaf leaf() {
        return leaf;
    }

    FormedLeaf formed() {
        return formed;
    }
}

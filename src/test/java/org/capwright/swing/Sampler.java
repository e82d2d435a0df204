package org.capwright.swing;

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

    private final Cap cap;
    private final Leaf leaf;
    private final FormedLeaf formed;

    Sampler(Cap cap, Leaf leaf) {
        this.cap = cap;
        this.leaf = leaf;
        this.formed = new FormedLeaf(leaf);
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

    /** A free edge and the next leaf's closed hinge flange and rod, by pairs of points: few, then close together round the nearest. */
    double next(Pose pose) {
        Leaf outer = cap.leaves().get(leaf.number());
        double[][] free = formed.freeEnds();
        double[][] flange = new FormedLeaf(outer).hingeEnds();
        Pose closed = Pose.of(outer, 0);
        double[] rod = {outer.rodAxisMm(), outer.rodAxisZMm()};
        double rodGap = apart(new double[][] {at(pose, free[0]), at(pose, free[1])}, new double[][] {rod, rod}) - outer.rodRadiusMm();
        return Math.min(rodGap, apart(new double[][] {at(pose, free[0]), at(pose, free[1])},
                new double[][] {at(closed, flange[0]), at(closed, flange[1])}));
    }

    private static double[] at(Pose pose, double[] p) {
        return new double[] {pose.x(p), pose.z(p)};
    }

    /** Least distance of points on two straight lines. */
    private static double apart(double[][] one, double[][] other) {
        double a = 0.5;
        double b = 0.5;
        double least = Double.POSITIVE_INFINITY;
        for (double half = 0.5; half > 1e-4; half /= 4) {
            double nearA = a;
            double nearB = b;
            for (int i = -8; i <= 8; i++) {
                for (int k = -8; k <= 8; k++) {
                    double s = Math.max(0, Math.min(1, nearA + half * i / 8));
                    double t = Math.max(0, Math.min(1, nearB + half * k / 8));
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

    /** A leaf's section and the box of the next joint's stop bar. */
    double bar(Pose pose, List<double[][]> rows) {
        StopBar bar = cap.stops().get(leaf.number());
        double least = Double.POSITIVE_INFINITY;
        for (double[][] row : rows) {
            for (double[] p : row) {
                double dx = Math.max(0, Math.abs(pose.x(p) - bar.jointMm()) - bar.halfWidthMm());
                double dz = Math.max(0, Math.max(bar.cornerZMm() - pose.z(p), pose.z(p) - bar.cornerZMm() - bar.depthMm()));
                least = Math.min(least, Math.sqrt(dx * dx + dz * dz));
            }
        }
        return least;
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

    /** Whether an azimuth, or that of a mirror image, is over a standoff: from its web to the far edge of its wider flange. */
    private boolean overStandoff(double azimuth) {
        Standoff standoff = cap.standoff();
        double width = 2 * Math.max(standoff.outerHalfRad(), standoff.innerHalfRad());
        for (double image : new double[] {azimuth, -azimuth, Math.PI - azimuth, Math.PI + azimuth}) {
            for (int i = 0; i < standoff.count(); i++) {
                double from = standoff.azimuthRad(i) - standoff.outerHalfRad();
                double past = (image - from) % (2 * Math.PI);
                if ((past < 0 ? past + 2 * Math.PI : past) <= width) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The flange's inside and an edge of the spout's end, an upright line: their distance in space. */
    double spout(Pose pose, double across) {
        Gutter gutter = cap.gutters().get(leaf.number() - 1);
        double x = gutter.jointMm() + across;
        double y = gutter.endMm(across);
        double least = Double.POSITIVE_INFINITY;
        for (double[][] row : formed.insideNear(Math.atan2(y, x), 0.03, FINE)) {
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
                - cap.bushing().lengthMm();
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

    FormedLeaf formed() {
        return formed;
    }
}

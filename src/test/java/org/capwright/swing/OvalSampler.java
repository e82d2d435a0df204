package org.capwright.swing;

import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.geom.Vec3;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.part.PlacedBead;

/**
 * Clearance of a leaf and a hood that is not round by plain sampling: the curved flange's wall as a grid of points, turned about the
 * rod's two measured ends by the textbook rotation about a line. Shares no formula with the program.
 */
public final class OvalSampler {
    private final Cap cap;
    private final Leaf leaf;
    private final RodLine rod;
    private final double[] hood;

    /** A hood as R, q, phi_0, x, y. */
    public OvalSampler(Cap cap, Leaf leaf, RodLine rod, double... hood) {
        this.cap = cap;
        this.leaf = leaf;
        this.rod = rod;
        this.hood = hood;
    }

    static Oval oval(double... hood) {
        return Oval.of(hood[0], hood[1], hood[2], new Vec2(hood[3], hood[4]));
    }

    /** The least clearance that sampling finds, the opening and the place. */
    public record Found(double mm, double openRad, Vec3 at) {
    }

    /** The least clearance over a grid of openings and points, then over finer and finer grids round its lowest places. */
    public double leastMm(int openings, int along, int levels) {
        return least(openings, along, levels).mm();
    }

    /** The same with its place. */
    public Found least(int openings, int along, int levels) {
        double best = Double.POSITIVE_INFINITY;
        double[][] rows = new double[(openings + 1) * (levels + 1) * 2][];
        int count = 0;
        for (int half = -1; half <= 1; half += 2) {
            for (int level = 0; level <= levels; level++) {
                for (int i = 0; i <= openings; i++) {
                    double open = cap.stopRad() * i / openings;
                    double[] row = {Double.POSITIVE_INFINITY, 0, open, (double) level / levels, half};
                    for (int j = 0; j <= along; j++) {
                        double mm = mm(open, (double) j / along, row[3], half);
                        if (mm < row[0]) {
                            row[0] = mm;
                            row[1] = (double) j / along;
                        }
                    }
                    rows[count++] = row;
                    best = Math.min(best, row[0]);
                }
            }
        }
        double limit = best + 1;
        Found found = new Found(Double.POSITIVE_INFINITY, 0, new Vec3(0, 0, 0));
        for (double[] row : rows) {
            if (row[0] < limit) {
                Found near = zoom(row, cap.stopRad() / openings, 1.0 / along);
                found = near.mm() < found.mm() ? near : found;
            }
        }
        return found;
    }

    private Found zoom(double[] row, double openStep, double alongStep) {
        double open = row[2];
        double at = row[1];
        double best = row[0];
        double openReach = openStep;
        double alongReach = alongStep;
        for (int round = 0; round < 14; round++) {
            double middleOpen = open;
            double middleAt = at;
            for (int i = -3; i <= 3; i++) {
                for (int j = -3; j <= 3; j++) {
                    double theta = Math.max(0, Math.min(cap.stopRad(), middleOpen + openReach * i / 3));
                    double s = Math.max(0, Math.min(1, middleAt + alongReach * j / 3));
                    double mm = mm(theta, s, row[3], row[4]);
                    if (mm < best) {
                        best = mm;
                        open = theta;
                        at = s;
                    }
                }
            }
            openReach /= 2;
            alongReach /= 2;
        }
        double[] p = point(open, at, row[3], row[4]);
        return new Found(best, open, new Vec3(rod.side() * p[0], p[1], p[2]));
    }

    private double[] point(double open, double along, double level, double half) {
        double beta = leaf.bend().turnRad();
        double deep = level * leaf.curveFlangeMm();
        double radius = leaf.slab().radiusMm() + deep * Math.cos(beta);
        double low = leaf.slab().freeChord() ? Math.acos((leaf.slab().freeEdgeMm() + deep * Math.cos(beta)) / radius) : 0;
        double high = Math.acos((leaf.slab().hingeEdgeMm() - deep * Math.cos(beta)) / radius);
        double psi = low + (high - low) * along;
        return turned(radius * Math.cos(psi), half * radius * Math.sin(psi), -leaf.rodRadiusMm() - deep * Math.sin(beta), open);
    }

    private double mm(double open, double along, double level, double half) {
        double[] p = point(open, along, level, half);
        if (p[2] > cap.hood().aboveRimMm()) {
            return Double.POSITIVE_INFINITY;
        }
        double x = rod.side() * p[0] - hood[3];
        double y = p[1] - hood[4];
        double bead = 0;
        for (PlacedBead placed : cap.hood().flat().beads()) {
            if (placed.inward()) {
                bead = Math.max(bead, placed.bead().depthAtMm(p[2] + cap.hood().belowRimMm() - placed.aboveFootMm()));
            }
        }
        return hood[0] + hood[1] * Math.cos(2 * (Math.atan2(y, x) - hood[2])) - bead - Math.hypot(x, y);
    }

    /**
     * A point of the closed leaf, its height given from the rod, in the leaf's own place: lifted and tilted with the rod, then turned
     * about the line through the rod's ends by a rotation matrix.
     */
    private double[] turned(double x, double y, double w, double open) {
        double axisX = leaf.slab().hingeEdgeMm() + (rod.offsetPlusMm() + rod.offsetMinusMm()) / 2;
        double[] middle = {axisX, 0, (rod.heightPlusMm() + rod.heightMinusMm()) / 2};
        double tilt = Math.atan2(rod.heightPlusMm() - rod.heightMinusMm(), 2 * rod.endMm());
        double[] closed = {x - axisX, y * Math.cos(tilt) - w * Math.sin(tilt), y * Math.sin(tilt) + w * Math.cos(tilt)};
        double skew = Math.atan2(rod.offsetPlusMm() - rod.offsetMinusMm(), 2 * rod.endMm());
        double[] e = {Math.sin(skew), Math.cos(skew) * Math.cos(tilt), Math.cos(skew) * Math.sin(tilt)};
        // opening lifts +x, which is a turn by -open about +y
        double c = Math.cos(-open);
        double s = Math.sin(-open);
        double[][] m = {
            {c + e[0] * e[0] * (1 - c), e[0] * e[1] * (1 - c) - e[2] * s, e[0] * e[2] * (1 - c) + e[1] * s},
            {e[1] * e[0] * (1 - c) + e[2] * s, c + e[1] * e[1] * (1 - c), e[1] * e[2] * (1 - c) - e[0] * s},
            {e[2] * e[0] * (1 - c) - e[1] * s, e[2] * e[1] * (1 - c) + e[0] * s, c + e[2] * e[2] * (1 - c)}};
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            out[i] = middle[i] + m[i][0] * closed[0] + m[i][1] * closed[1] + m[i][2] * closed[2];
        }
        return out;
    }
}

package org.capwright.swing;

import org.capwright.geom.GoldenSection;
import org.capwright.geom.Oval;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.part.PlacedBead;

/**
 * The least clearance of a leaf and an almost round hood over the whole swing, fast: for runs of very many builds. On a rod along
 * y a point keeps its y, and its x is {@code x_r + rho cos(theta + delta)}: the swing is a stretch of a line x1..x2 in plan. Along
 * such a line the clearance {@code R + q cos 2(phi - phi_0) - |p - c|} is concave as long as q is under a quarter of y, and falls
 * outwards where y is less, so it is least at an end of the stretch; only the place along the edge needs a search. A rod that is
 * a little skewed bends the line a little: the point is placed truly at the openings that are the ends on a straight rod, where
 * the clearance changes with the opening by so little that what is missed is of second order in the skew.
 *
 * <p>Holds where the hood has no inward beads and covers the open leaves; good to a hundredth of a millimetre for rods skewed or
 * tilted by up to a hundredth.
 */
public final class QuickHood {
    private static final int KNOTS = 24;
    private static final double ENOUGH_RAD = 1e-3;

    private final double hingeMm;
    private final double freeMm;
    private final boolean chord;
    private final double rodRadiusMm;
    private final double flangeMm;
    private final double flangeCos;
    private final double flangeSin;
    private final double stopCos;
    private final double stopSin;
    private final double[] knotCos = new double[KNOTS + 1];
    private final double[] knotSin = new double[KNOTS + 1];
    private final double[] knotRad = new double[KNOTS + 1];

    /**
     * Prepares a leaf.
     *
     * @param leaf the leaf as drawn
     * @param stopRad end of the swing
     */
    public QuickHood(Leaf leaf, double stopRad) {
        this.hingeMm = leaf.slab().hingeEdgeMm();
        this.freeMm = leaf.slab().freeEdgeMm();
        this.chord = leaf.slab().freeChord();
        this.rodRadiusMm = leaf.rodRadiusMm();
        this.flangeMm = leaf.curveFlangeMm();
        this.flangeCos = Math.cos(leaf.bend().turnRad());
        this.flangeSin = Math.sin(leaf.bend().turnRad());
        this.stopCos = Math.cos(stopRad);
        this.stopSin = Math.sin(stopRad);
        double from = leaf.slab().freeAzimuthRad();
        double to = leaf.slab().hingeAzimuthRad();
        for (int i = 0; i <= KNOTS; i++) {
            knotRad[i] = from + (to - from) * i / KNOTS;
            knotCos[i] = Math.cos(knotRad[i]);
            knotSin[i] = Math.sin(knotRad[i]);
        }
    }

    /**
     * Whether it holds for a cap.
     *
     * @param cap the cap
     * @return false where inward beads or a low hood ask for the full search
     */
    public static boolean holds(Cap cap) {
        boolean beads = cap.hood().flat().beads().stream().anyMatch(PlacedBead::inward);
        return !beads && cap.leaves().stream().allMatch(leaf -> leaf.tipHeightMm(cap.stopRad()) <= cap.hood().aboveRimMm());
    }

    /**
     * The least clearance.
     *
     * @param hood inside of the hood
     * @param rod where the leaf's rod lies
     * @param leafRadiusMm leaf radius
     * @param deeperMm how much deeper than drawn the curved flange is
     * @return mm
     */
    public double leastMm(Oval hood, RodLine rod, double leafRadiusMm, double deeperMm) {
        double out = (flangeMm + deeperMm) * flangeCos;
        double down = rodRadiusMm + (flangeMm + deeperMm) * flangeSin;
        double top = new Edge(hood, rod, leafRadiusMm, hingeMm, freeMm, -rodRadiusMm).leastMm();
        return Math.min(top, new Edge(hood, rod, leafRadiusMm + out, hingeMm - out, freeMm + out, -down).leastMm());
    }

    /** One curved edge of the leaf, top or lip. */
    private final class Edge {
        private final Oval hood;
        private final int side;
        private final double radius;
        private final double from;
        private final double to;
        private final double axis;
        private final double w;
        private final double skewSin;
        private final double skewCos;
        private final double tiltSin;
        private final double tiltCos;

        private Edge(Oval hood, RodLine rod, double radius, double from, double to, double w) {
            this.hood = hood;
            this.side = rod.side();
            this.radius = radius;
            this.from = from;
            this.to = chord ? to : radius;
            this.axis = hingeMm + rod.offsetMm();
            this.w = w;
            double skew = (rod.offsetPlusMm() - rod.offsetMinusMm()) / (2 * rod.endMm());
            double tilt = (rod.heightPlusMm() - rod.heightMinusMm()) / (2 * rod.endMm());
            this.skewCos = 1 / Math.sqrt(1 + skew * skew);
            this.skewSin = skew * skewCos;
            this.tiltCos = 1 / Math.sqrt(1 + tilt * tilt);
            this.tiltSin = tilt * tiltCos;
        }

        double leastMm() {
            return Math.min(leastMm(1), leastMm(-1));
        }

        private double leastMm(int half) {
            int best = -1;
            double least = Math.min(at(from, half), at(to, half));
            for (int i = 0; i <= KNOTS; i++) {
                double x = radius * knotCos[i];
                if (x >= from && x <= to) {
                    double mm = at(x, half * radius * knotSin[i]);
                    if (mm < least) {
                        least = mm;
                        best = i;
                    }
                }
            }
            return best < 0 ? polished(least, half, KNOTS) : polished(least, half, best);
        }

        private double polished(double least, int half, int knot) {
            double low = knotRad[Math.max(0, knot - 1)];
            double high = knotRad[Math.min(KNOTS, knot + 1)];
            double psi = GoldenSection.lowest(rad -> along(rad, half), low, high, ENOUGH_RAD);
            return Math.min(least, along(psi, half));
        }

        private double along(double rad, int half) {
            double x = radius * Math.cos(rad);
            return x < from || x > to ? Double.POSITIVE_INFINITY : at(x, half * radius * Math.sin(rad));
        }

        /** At the end of the edge. */
        private double at(double x, int half) {
            return at(x, half * Math.sqrt(Math.max(0, radius * radius - x * x)));
        }

        /** The nearer end of the stretch that a point swings through. */
        private double at(double x, double y) {
            double u = x - axis;
            boolean openIsOut = u * stopCos - w * stopSin > u;
            // farthest out where it is level with the rod, tan(theta) = -w / u, if the leaf gets there
            if (u > 0 && u * stopSin + w * stopCos >= 0) {
                double rho = Math.sqrt(u * u + w * w);
                return Math.min(at(u, y, u / rho, -w / rho), openIsOut ? at(u, y, 1, 0) : at(u, y, stopCos, stopSin));
            }
            return Math.min(at(u, y, 1, 0), at(u, y, stopCos, stopSin));
        }

        /** A point at an opening, as {@link Placing} has it. */
        private double at(double u, double y, double c, double s) {
            double along = (1 - c) * (skewSin * u + skewCos * y);
            double level = c * y + s * skewSin * w + skewCos * along;
            double rise = c * w + s * (skewCos * u - skewSin * y);
            return hood.insideMm(side * (axis + c * u - s * skewCos * w + skewSin * along), level * tiltCos - rise * tiltSin);
        }
    }
}

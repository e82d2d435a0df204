package org.capwright.swing;

import java.util.List;
import org.capwright.part.Hood;
import org.capwright.part.PlacedBead;

/** The hood's inside and points of a leaf, one by one; between neighbours where the hood's top or a bead cuts in. */
final class HoodSampler {
    private static final int FINER = 24;

    private final double inside;
    private final double top;
    private final double foot;
    private final List<PlacedBead> beads;

    HoodSampler(Hood hood) {
        this.inside = hood.insideRadiusMm();
        this.top = hood.aboveRimMm();
        this.foot = -hood.belowRimMm();
        this.beads = hood.flat().beads().stream().filter(PlacedBead::inward).toList();
    }

    double least(Pose pose, List<double[][]> curve, double[][] hingeEnd) {
        double least = row(pose, hingeEnd);
        for (int i = 0; i < curve.size(); i++) {
            least = Math.min(least, row(pose, curve.get(i)));
            for (int k = 0; i > 0 && k < curve.get(i).length; k++) {
                least = Math.min(least, between(pose, curve.get(i - 1)[k], curve.get(i)[k]));
            }
        }
        return least;
    }

    private double row(Pose pose, double[][] row) {
        double least = at(pose, row[0]);
        for (int i = 1; i < row.length; i++) {
            least = Math.min(least, Math.min(at(pose, row[i]), between(pose, row[i - 1], row[i])));
        }
        return least;
    }

    /** On the line between two points: where the hood's top cuts it, and close together where a bead stands in. */
    private double between(Pose pose, double[] p, double[] q) {
        double z1 = pose.z(p);
        double z2 = pose.z(q);
        double least = z1 > top == z2 > top ? Double.POSITIVE_INFINITY
                : inside - pose.out(mix(p, q, (top - z1) / (z2 - z1)));
        if (nearBead(z1, z2)) {
            for (int k = 1; k < FINER; k++) {
                least = Math.min(least, at(pose, mix(p, q, (double) k / FINER)));
            }
        }
        return least;
    }

    /** Clearance of one point; infinite above the hood's top. */
    double at(Pose pose, double[] p) {
        double z = pose.z(p);
        return z > top ? Double.POSITIVE_INFINITY : boreMm(z) - pose.out(p);
    }

    /** Radius of the bore at a height: less where an inward bead, an arc in section, stands in. */
    double boreMm(double z) {
        double bore = inside;
        for (PlacedBead bead : beads) {
            double off = z - foot - bead.aboveFootMm();
            double w = bead.bead().widthMm();
            double q = bead.bead().depthMm();
            if (Math.abs(off) < w / 2) {
                double rho = (w * w / 4 + q * q) / (2 * q);
                bore = Math.min(bore, inside - (Math.sqrt(rho * rho - off * off) - (rho - q)));
            }
        }
        return bore;
    }

    private boolean nearBead(double z1, double z2) {
        for (PlacedBead bead : beads) {
            double middle = foot + bead.aboveFootMm();
            double half = bead.bead().widthMm() / 2;
            if (Math.min(z1, z2) <= middle + half && Math.max(z1, z2) >= middle - half) {
                return true;
            }
        }
        return false;
    }

    private static double[] mix(double[] a, double[] b, double s) {
        return new double[] {a[0] + (b[0] - a[0]) * s, a[1] + (b[1] - a[1]) * s, a[2] + (b[2] - a[2]) * s};
    }
}

package org.capwright.swing;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PlacedBead;
import org.capwright.part.StopBar;

/** Clearances by plain sampling: many points of a formed leaf at many openings. Slow, and shares no formula with the program. */
final class Sampler {
    private static final int FINER = 8;

    private final Cap cap;

    Sampler(Cap cap) {
        this.cap = cap;
    }

    /** Least value over the swing: openings in a row with few points, then closer and closer round the lowest valleys with many. */
    double least(DoubleUnaryOperator few, DoubleUnaryOperator many, int openings) {
        double step = cap.stopRad() / openings;
        double[] values = new double[openings + 1];
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= openings; i++) {
            values[i] = few.applyAsDouble(i * step);
            lowest = Math.min(lowest, values[i]);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= openings; i++) {
            boolean valley = (i == 0 || values[i] <= values[i - 1]) && (i == openings || values[i] <= values[i + 1]);
            if (valley && values[i] < lowest + 2 && !(i > 0 && values[i] == values[i - 1])) {
                best = Math.min(best, zoom(many, Math.max(0, i - 1) * step, Math.min(openings, i + 1) * step));
            }
        }
        return best;
    }

    /** The lowest of a row of values, then of a finer row round it, and so on. */
    private static double zoom(DoubleUnaryOperator at, double from, double to) {
        double a = from;
        double b = to;
        double best = Double.POSITIVE_INFINITY;
        while (b - a > 1e-5) {
            double where = a;
            for (int i = 0; i <= FINER; i++) {
                double open = a + (b - a) * i / FINER;
                double value = at.applyAsDouble(open);
                if (value < best) {
                    best = value;
                    where = open;
                }
            }
            double half = (b - a) / FINER;
            a = Math.max(from, where - half);
            b = Math.min(to, where + half);
        }
        return best;
    }

    private static double x(Leaf leaf, double[] p, double open) {
        return leaf.rodAxisMm() + p[0] * Math.cos(open) - p[1] * Math.sin(open);
    }

    private static double z(Leaf leaf, double[] p, double open) {
        return leaf.rodAxisZMm() + p[0] * Math.sin(open) + p[1] * Math.cos(open);
    }

    /** A point between two. */
    private static double[] mix(double[] a, double[] b, double s) {
        return new double[] {a[0] + (b[0] - a[0]) * s, a[1] + (b[1] - a[1]) * s, a[2] + (b[2] - a[2]) * s};
    }

    double hood(Leaf leaf, List<FormedLeaf.Row> curve, FormedLeaf.Row end, double open) {
        double least = Double.POSITIVE_INFINITY;
        for (FormedLeaf.Row row : curve) {
            least = Math.min(least, hood(leaf, row, open));
        }
        for (int i = 1; i < curve.size(); i++) {
            least = Math.min(least, acrossTop(leaf, curve.get(i - 1), curve.get(i), open));
        }
        return Math.min(least, hood(leaf, end, open));
    }

    private double hood(Leaf leaf, FormedLeaf.Row row, double open) {
        double least = Double.POSITIVE_INFINITY;
        double top = cap.hood().aboveRimMm();
        double[] last = null;
        for (double[] p : row.points()) {
            least = Math.min(least, hoodAt(leaf, p, open));
            if (last != null) {
                double z1 = z(leaf, last, open);
                double z2 = z(leaf, p, open);
                if (z1 > top != z2 > top) {
                    double[] cut = mix(last, p, (top - z1) / (z2 - z1));
                    least = Math.min(least, cap.hood().insideRadiusMm() - Math.hypot(x(leaf, cut, open), cut[2]));
                }
                if (nearBead(Math.min(z1, z2), Math.max(z1, z2))) {
                    for (int i = 1; i < 24; i++) {
                        least = Math.min(least, hoodAt(leaf, mix(last, p, i / 24.0), open));
                    }
                }
            }
            last = p;
        }
        return least;
    }

    /** Where the hood's top cuts the flange's wall between two levels. */
    private double acrossTop(Leaf leaf, FormedLeaf.Row upper, FormedLeaf.Row lower, double open) {
        double top = cap.hood().aboveRimMm();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < upper.points().size(); i++) {
            double z1 = z(leaf, upper.points().get(i), open);
            double z2 = z(leaf, lower.points().get(i), open);
            if (z1 > top != z2 > top) {
                double[] cut = mix(upper.points().get(i), lower.points().get(i), (top - z1) / (z2 - z1));
                least = Math.min(least, cap.hood().insideRadiusMm() - Math.hypot(x(leaf, cut, open), cut[2]));
            }
        }
        return least;
    }

    private boolean nearBead(double low, double high) {
        return cap.hood().flat().beads().stream().filter(PlacedBead::inward).anyMatch(bead -> {
            double middle = bead.aboveFootMm() - cap.hood().belowRimMm();
            double half = bead.bead().widthMm() / 2;
            return low <= middle + half && high >= middle - half;
        });
    }

    private double hoodAt(Leaf leaf, double[] p, double open) {
        double z = z(leaf, p, open);
        if (z > cap.hood().aboveRimMm()) {
            return Double.POSITIVE_INFINITY;
        }
        double bore = cap.hood().insideRadiusMm();
        for (PlacedBead bead : cap.hood().flat().beads()) {
            double off = z - (bead.aboveFootMm() - cap.hood().belowRimMm());
            double w = bead.bead().widthMm();
            double q = bead.bead().depthMm();
            if (bead.inward() && Math.abs(off) < w / 2) {
                double rho = (w * w / 4 + q * q) / (2 * q);
                bore = Math.min(bore, cap.hood().insideRadiusMm() - (Math.sqrt(rho * rho - off * off) - (rho - q)));
            }
        }
        return bore - Math.hypot(x(leaf, p, open), p[2]);
    }

    double wall(Leaf leaf, List<FormedLeaf.Row> heel, Gutter gutter, double open) {
        double reach = Double.NEGATIVE_INFINITY;
        for (FormedLeaf.Row row : heel) {
            double[] last = null;
            for (double[] p : row.points()) {
                double z2 = z(leaf, p, open);
                if (z2 <= 0) {
                    reach = Math.max(reach, x(leaf, p, open));
                }
                if (last != null && z(leaf, last, open) > 0 != z2 > 0) {
                    double z1 = z(leaf, last, open);
                    reach = Math.max(reach, x(leaf, mix(last, p, -z1 / (z2 - z1)), open));
                }
                last = p;
            }
        }
        return gutter.jointMm() + gutter.insideWidthMm() / 2 - reach;
    }

    double floor(Leaf leaf, List<FormedLeaf.Row> heel, Gutter gutter, double open) {
        return heel.stream().flatMap(row -> row.points().stream()).mapToDouble(p -> z(leaf, p, open)).min().orElseThrow() + gutter.depthMm();
    }

    double sleeve(Leaf leaf, List<FormedLeaf.Row> inside, double open) {
        double least = Double.POSITIVE_INFINITY;
        for (FormedLeaf.Row row : inside) {
            for (double[] p : row.points()) {
                if (z(leaf, p, open) <= 1e-9) {
                    least = Math.min(least, Math.hypot(x(leaf, p, open), p[2]) - cap.sleeve().outsideRadiusMm());
                }
            }
        }
        return least;
    }

    double next(Leaf inner, Leaf outer, double open) {
        FormedLeaf.Row free = free(inner);
        double beta = outer.bend().turnRad();
        double least = Double.POSITIVE_INFINITY;
        for (double[] p : free.points()) {
            double px = x(inner, p, open);
            double pz = z(inner, p, open);
            least = Math.min(least, Math.hypot(px - outer.rodAxisMm(), pz - outer.rodAxisZMm()) - outer.rodRadiusMm());
            for (int i = 0; i <= 60; i++) {
                double v = outer.hingeFlangeMm() * i / 60;
                least = Math.min(least, Math.hypot(px - (outer.slab().hingeEdgeMm() - v * Math.cos(beta)),
                        pz - (outer.sheet().thicknessMm() - v * Math.sin(beta))));
            }
        }
        return least;
    }

    private static FormedLeaf.Row free(Leaf leaf) {
        double beta = leaf.bend().turnRad();
        double top = -leaf.rodRadiusMm();
        return FormedLeaf.line(leaf.reachMm(), top, leaf.reachMm() + leaf.curveFlangeMm() * Math.cos(beta),
                top - leaf.curveFlangeMm() * Math.sin(beta), 80);
    }

    double bar(Leaf inner, StopBar bar, double open) {
        double least = Double.POSITIVE_INFINITY;
        for (FormedLeaf.Row row : List.of(free(inner), FormedLeaf.line(0, -inner.rodRadiusMm(), inner.reachMm(), -inner.rodRadiusMm(), 700))) {
            for (double[] p : row.points()) {
                double dx = Math.max(0, Math.max(bar.jointMm() - bar.halfWidthMm() - x(inner, p, open), x(inner, p, open) - bar.jointMm() - bar.halfWidthMm()));
                double dz = Math.max(0, Math.max(bar.cornerZMm() - z(inner, p, open), z(inner, p, open) - bar.cornerZMm() - bar.depthMm()));
                least = Math.min(least, Math.hypot(dx, dz));
            }
        }
        return least;
    }

    double opposite(Leaf leaf, List<FormedLeaf.Row> heel, List<FormedLeaf.Row> curve, double open) {
        double least = 2 * (leaf.rodAxisMm() - leaf.rodRadiusMm());
        for (List<FormedLeaf.Row> rows : List.of(heel, curve)) {
            for (FormedLeaf.Row row : rows) {
                for (double[] p : row.points()) {
                    least = Math.min(least, 2 * x(leaf, p, open));
                }
            }
        }
        return least;
    }

    /** The lip over every standoff, its azimuth sampled finely between web and the far edge of the wider flange. */
    double standoff(Leaf leaf, double open) {
        double beta = leaf.bend().turnRad();
        double radius = leaf.slab().radiusMm() + leaf.curveFlangeMm() * Math.cos(beta);
        double w = -leaf.rodRadiusMm() - leaf.curveFlangeMm() * Math.sin(beta);
        double from = leaf.slab().hingeEdgeMm() - leaf.curveFlangeMm() * Math.cos(beta);
        double to = leaf.slab().freeChord() ? leaf.slab().freeEdgeMm() + leaf.curveFlangeMm() * Math.cos(beta) : radius;
        double half = Math.max(cap.standoff().innerHalfRad(), cap.standoff().outerHalfRad());
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < cap.standoff().count(); i++) {
            for (int s = 0; s <= 60; s++) {
                double azimuth = cap.standoff().azimuthRad(i) - cap.standoff().outerHalfRad() + 2 * half * s / 60;
                double x = radius * Math.abs(Math.cos(azimuth));
                if (x >= from && x <= to) {
                    least = Math.min(least, z(leaf, new double[] {x - leaf.rodAxisMm(), w, 0}, open) - cap.standoff().topZMm());
                }
            }
        }
        return least;
    }
}

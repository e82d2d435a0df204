package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.part.Leaf;

/**
 * The skin of a formed leaf as rows of points, closed, from its rod axis: u outboard, w up, y along the rod (y from 0 up; the
 * other half is its mirror image). Made from the part's figures alone, bends as sharp corners, lips cut square across the
 * sheet. Flanges end where their lips meet in plan, mitred through the sheet.
 */
final class FormedLeaf {
    private static final int LEVELS = 10;
    private static final double EVENLY = 1;
    private static final double CROWDED = 2;

    private final Leaf leaf;
    private final double sine;
    private final double cosine;
    private final double thick;
    private final double top;
    private final double heel;

    FormedLeaf(Leaf leaf) {
        this.leaf = leaf;
        this.sine = Math.sin(leaf.bend().turnRad());
        this.cosine = Math.cos(leaf.bend().turnRad());
        this.thick = leaf.sheet().thicknessMm();
        this.top = -leaf.rodRadiusMm();
        this.heel = leaf.slab().hingeEdgeMm() - leaf.rodAxisMm();
    }

    /** Outside of the curved flange, level by level from top to lip, and the inner edge of its lip; so many points along each. */
    List<double[][]> curve(int along) {
        List<double[][]> rows = new ArrayList<>();
        double f = leaf.curveFlangeMm();
        for (int level = 0; level <= LEVELS; level++) {
            double v = f * level / LEVELS;
            rows.add(arc(leaf.slab().radiusMm() + v * cosine, top - v * sine, v * cosine, along, EVENLY));
        }
        rows.add(arc(leaf.slab().radiusMm() + f * cosine - thick * sine, top - f * sine - thick * cosine, f * cosine, along, EVENLY));
        return rows;
    }

    /** Both edges of the curved flange's lip, crowded towards the hinge corner, where they sink; and the hinge flange's end. */
    List<double[][]> lips(int along) {
        double f = leaf.curveFlangeMm();
        return List.of(arc(leaf.slab().radiusMm() + f * cosine, top - f * sine, f * cosine, along, CROWDED),
                arc(leaf.slab().radiusMm() + f * cosine - thick * sine, top - f * sine - thick * cosine, f * cosine, along, CROWDED),
                hingeEnd());
    }

    /** Inside of the curved flange, from where it would meet the underside to the inner edge of its lip. */
    List<double[][]> inside(int along) {
        List<double[][]> rows = new ArrayList<>();
        double out = leaf.curveFlangeMm() * cosine;
        double lipRadius = leaf.slab().radiusMm() + out - thick * sine;
        double lipW = top - leaf.curveFlangeMm() * sine - thick * cosine;
        double rootW = top - thick;
        double rootRadius = lipRadius - (rootW - lipW) * cosine / sine;
        for (int level = 0; level <= LEVELS; level++) {
            double s = (double) level / LEVELS;
            rows.add(arc(rootRadius + (lipRadius - rootRadius) * s, rootW + (lipW - rootW) * s, out * s, along, EVENLY));
        }
        return rows;
    }

    /** The same near one azimuth only, close together. */
    List<double[][]> insideNear(double azimuth, double halfRad, int along) {
        List<double[][]> rows = new ArrayList<>();
        for (double[][] row : inside(1)) {
            double radius = Math.hypot(row[0][0] + leaf.rodAxisMm(), row[0][2]);
            double[][] points = new double[along + 1][];
            for (int i = 0; i <= along; i++) {
                double at = azimuth + halfRad * (2.0 * i / along - 1);
                points[i] = new double[] {radius * Math.cos(at) - leaf.rodAxisMm(), row[0][1], radius * Math.sin(at)};
            }
            rows.add(points);
        }
        return rows;
    }

    private double[][] arc(double radius, double w, double out, int along, double crowded) {
        double from = Math.acos((leaf.slab().hingeEdgeMm() - out) / radius);
        double to = leaf.slab().freeChord() ? Math.acos(Math.min(1, (leaf.slab().freeEdgeMm() + out) / radius)) : 0;
        double[][] points = new double[along + 1][];
        for (int i = 0; i <= along; i++) {
            double azimuth = from + (to - from) * Math.pow((double) i / along, crowded);
            points[i] = new double[] {radius * Math.cos(azimuth) - leaf.rodAxisMm(), w, radius * Math.sin(azimuth)};
        }
        return points;
    }

    /** The end of the hinge flange, outside, from its top to its lip, and across its lip. */
    double[][] hingeEnd() {
        double[][] points = new double[LEVELS + 2][];
        for (int level = 0; level <= LEVELS; level++) {
            double v = leaf.hingeFlangeMm() * level / LEVELS;
            double at = leaf.slab().hingeEdgeMm() - v * cosine;
            double out = leaf.slab().radiusMm() + v * cosine;
            points[level] = new double[] {at - leaf.rodAxisMm(), top - v * sine, Math.sqrt(out * out - at * at)};
        }
        double x = leaf.slab().hingeEdgeMm() - leaf.hingeFlangeMm() * cosine + thick * sine;
        double radius = leaf.slab().radiusMm() + leaf.hingeFlangeMm() * cosine - thick * sine;
        points[LEVELS + 1] = new double[] {x - leaf.rodAxisMm(), points[LEVELS][1] - thick * cosine, Math.sqrt(radius * radius - x * x)};
        return points;
    }

    /** The heel's section: hinge flange outside, lip, inside, and the underside to below the rod. */
    List<double[][]> heel() {
        double lipU = heel - leaf.hingeFlangeMm() * cosine;
        double lipW = top - leaf.hingeFlangeMm() * sine;
        double innerU = lipU + thick * sine;
        double innerW = lipW - thick * cosine;
        double rootW = top - thick;
        double rootU = innerU + (rootW - innerW) * cosine / sine;
        return List.of(line(heel, top, lipU, lipW, 60), line(lipU, lipW, innerU, innerW, 20),
                line(innerU, innerW, rootU, rootW, 60), line(rootU, rootW, 0, rootW, 60));
    }

    /** The section of a free edge: flange outside, and across its lip. */
    List<double[][]> free() {
        double lipU = leaf.reachMm() + leaf.curveFlangeMm() * cosine;
        double lipW = top - leaf.curveFlangeMm() * sine;
        return List.of(line(leaf.reachMm(), top, lipU, lipW, 80), line(lipU, lipW, lipU - thick * sine, lipW - thick * cosine, 20));
    }

    /** The ends of a free edge's flange in section, outside: top and lip. */
    double[][] freeEnds() {
        double[][] outside = free().get(0);
        return new double[][] {outside[0], outside[outside.length - 1]};
    }

    /** The ends of the hinge flange in section, outside: top and lip. */
    double[][] hingeEnds() {
        double[][] outside = heel().get(0);
        return new double[][] {outside[0], outside[outside.length - 1]};
    }

    /** The section of the top face, outboard of the rod axis. */
    double[][] face() {
        return line(0, top, leaf.reachMm(), top, 700);
    }

    private static double[][] line(double u1, double w1, double u2, double w2, int steps) {
        double[][] points = new double[steps + 1][];
        for (int i = 0; i <= steps; i++) {
            double s = (double) i / steps;
            points[i] = new double[] {u1 + (u2 - u1) * s, w1 + (w2 - w1) * s, 0};
        }
        return points;
    }
}

package org.capwright.swing;

import java.util.ArrayList;
import java.util.List;
import org.capwright.part.Leaf;

/**
 * The outside of a formed leaf as rows of points, closed, from its rod axis: u outboard, w up, y along the rod (y from 0 up;
 * the other half is its mirror image). Made from the part's figures alone. Flanges end where their lips meet in plan.
 */
final class FormedLeaf {
    static final int LEVELS = 6;

    /** A row of points, each next to the one before. */
    record Row(List<double[]> points) {
    }

    private FormedLeaf() {
    }

    /** The curved flange's wall, level by level from top to lip; so many points along. */
    static List<Row> curve(Leaf leaf, int along) {
        List<Row> rows = new ArrayList<>();
        double beta = leaf.bend().turnRad();
        for (int level = 0; level <= LEVELS; level++) {
            double v = leaf.curveFlangeMm() * level / LEVELS;
            double out = v * Math.cos(beta);
            double w = -leaf.rodRadiusMm() - v * Math.sin(beta);
            double radius = leaf.slab().radiusMm() + out;
            double from = Math.acos((leaf.slab().hingeEdgeMm() - out) / radius);
            double to = leaf.slab().freeChord() ? Math.acos((leaf.slab().freeEdgeMm() + out) / radius) : 0;
            List<double[]> points = new ArrayList<>();
            for (int i = 0; i <= along; i++) {
                double azimuth = from + (to - from) * i / along;
                points.add(new double[] {radius * Math.cos(azimuth) - leaf.rodAxisMm(), w, radius * Math.sin(azimuth)});
            }
            rows.add(new Row(points));
        }
        return rows;
    }

    /** The inside of the curved flange's wall, from where it would meet the underside to the inner edge of its lip. */
    static List<Row> inside(Leaf leaf, int along) {
        List<Row> rows = new ArrayList<>();
        double beta = leaf.bend().turnRad();
        double t = leaf.sheet().thicknessMm();
        double out = leaf.curveFlangeMm() * Math.cos(beta);
        double lipRadius = leaf.slab().radiusMm() + out - t * Math.sin(beta);
        double lipW = -leaf.rodRadiusMm() - leaf.curveFlangeMm() * Math.sin(beta) - t * Math.cos(beta);
        double rootW = -leaf.rodRadiusMm() - t;
        double rootRadius = lipRadius - (rootW - lipW) / Math.tan(beta);
        for (int level = 0; level <= LEVELS; level++) {
            double s = (double) level / LEVELS;
            double radius = rootRadius + (lipRadius - rootRadius) * s;
            double from = Math.acos((leaf.slab().hingeEdgeMm() - out * s) / radius);
            double to = leaf.slab().freeChord() ? Math.acos(Math.min(1, (leaf.slab().freeEdgeMm() + out * s) / radius)) : 0;
            List<double[]> points = new ArrayList<>();
            for (int i = 0; i <= along; i++) {
                double azimuth = from + (to - from) * i / along;
                points.add(new double[] {radius * Math.cos(azimuth) - leaf.rodAxisMm(), rootW + (lipW - rootW) * s, radius * Math.sin(azimuth)});
            }
            rows.add(new Row(points));
        }
        return rows;
    }

    /** The end of the hinge flange, from its top to its lip. */
    static Row hingeEnd(Leaf leaf) {
        List<double[]> points = new ArrayList<>();
        double beta = leaf.bend().turnRad();
        for (int level = 0; level <= LEVELS; level++) {
            double v = leaf.hingeFlangeMm() * level / LEVELS;
            double x = leaf.slab().hingeEdgeMm() - v * Math.cos(beta);
            double radius = leaf.slab().radiusMm() + v * Math.cos(beta);
            points.add(new double[] {x - leaf.rodAxisMm(), -leaf.rodRadiusMm() - v * Math.sin(beta), Math.sqrt(radius * radius - x * x)});
        }
        return new Row(points);
    }

    /** A straight line in the section, y = 0. */
    static Row line(double u1, double w1, double u2, double w2, int steps) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double s = (double) i / steps;
            points.add(new double[] {u1 + (u2 - u1) * s, w1 + (w2 - w1) * s, 0});
        }
        return new Row(points);
    }

    /** The heel's section: hinge flange outside, lip, inside, and the underside to below the rod. */
    static List<Row> heel(Leaf leaf) {
        double beta = leaf.bend().turnRad();
        double s = Math.sin(beta);
        double c = Math.cos(beta);
        double t = leaf.sheet().thicknessMm();
        double heel = leaf.slab().hingeEdgeMm() - leaf.rodAxisMm();
        double top = -leaf.rodRadiusMm();
        double lipU = heel - leaf.hingeFlangeMm() * c;
        double lipW = top - leaf.hingeFlangeMm() * s;
        double innerU = lipU + t * s;
        double innerW = lipW - t * c;
        // where the flange's inside meets the underside
        double rootW = top - t;
        double rootU = innerU + (rootW - innerW) * c / s;
        return List.of(line(heel, top, lipU, lipW, 60), line(lipU, lipW, innerU, innerW, 20), line(innerU, innerW, rootU, rootW, 60),
                line(rootU, rootW, 0, rootW, 60));
    }
}

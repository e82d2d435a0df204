package org.capwright.part;

import org.capwright.geom.Vec2;

/**
 * The heel of a leaf: the strip inboard of the rod axis and its hinge flange, which go down into the gutter as the leaf
 * goes up. In the plane across the rods, relative to the rod axis ({@code u} outboard, {@code w} up), the flange is the
 * polygon top edge, outer lip, inner lip, root, underside below the rod. Mould lines count, so the result is on the safe
 * side by less than a bend radius.
 */
public final class HeelSweep {
    private final double axisZMm;
    private final double[] u;
    private final double[] w;

    private HeelSweep(double axisZMm, double[] u, double[] w) {
        this.axisZMm = axisZMm;
        this.u = u;
        this.w = w;
    }

    /**
     * The heel of a leaf.
     *
     * @param offsetMm rod axis from the hinge flange's outside face, o
     * @param rodRadiusMm rod radius, r
     * @param flangeMm hinge flange depth along its outside, f_h
     * @param thicknessMm leaf thickness, t
     * @param turnRad turn of the flange from flat
     * @return the heel
     */
    public static HeelSweep of(double offsetMm, double rodRadiusMm, double flangeMm, double thicknessMm, double turnRad) {
        return of(offsetMm, rodRadiusMm, flangeMm, thicknessMm, turnRad, thicknessMm + rodRadiusMm);
    }

    /**
     * The heel of a leaf whose rod does not lie at the height drawn.
     *
     * @param offsetMm rod axis from the hinge flange's outside face, o
     * @param rodRadiusMm rod radius, r
     * @param flangeMm hinge flange depth along its outside, f_h
     * @param thicknessMm leaf thickness, t
     * @param turnRad turn of the flange from flat
     * @param axisZMm rod axis above the rim, z_r
     * @return the heel
     */
    public static HeelSweep of(double offsetMm, double rodRadiusMm, double flangeMm, double thicknessMm, double turnRad,
            double axisZMm) {
        double s = Math.sin(turnRad);
        double c = Math.cos(turnRad);
        double lipU = -offsetMm - flangeMm * c;
        double lipW = -rodRadiusMm - flangeMm * s;
        double root = thicknessMm * (1 - c) / s;
        double[] u = {-offsetMm, lipU, lipU + thicknessMm * s, -offsetMm + thicknessMm * s - root * c, 0};
        double[] w = {-rodRadiusMm, lipW, lipW - thicknessMm * c, -rodRadiusMm - thicknessMm, -rodRadiusMm - thicknessMm};
        return new HeelSweep(axisZMm, u, w);
    }

    /**
     * The heel of a solved leaf.
     *
     * @param leaf the leaf
     * @return its heel
     */
    public static HeelSweep of(Leaf leaf) {
        return of(leaf.rodAxisMm() - leaf.slab().hingeEdgeMm(), leaf.rodRadiusMm(), leaf.hingeFlangeMm(),
                leaf.sheet().thicknessMm(), leaf.bend().turnRad(), leaf.rodAxisZMm());
    }

    /**
     * The point of the heel that is farthest outboard of the rod axis of all that are below the rim.
     *
     * @param openRad opening
     * @return outboard of the rod axis (negative infinity where nothing is below the rim), and z
     */
    public Vec2 farthestBelowRim(double openRad) {
        double sine = Math.sin(openRad);
        double cosine = Math.cos(openRad);
        Vec2 last = at(u.length - 1, sine, cosine);
        Vec2 farthest = new Vec2(Double.NEGATIVE_INFINITY, 0);
        for (int i = 0; i < u.length; i++) {
            Vec2 point = at(i, sine, cosine);
            if (point.y() <= 0 && point.x() > farthest.x()) {
                farthest = point;
            }
            if (point.y() > 0 != last.y() > 0) {
                double x = point.x() + (last.x() - point.x()) * point.y() / (point.y() - last.y());
                farthest = x > farthest.x() ? new Vec2(x, 0) : farthest;
            }
            last = point;
        }
        return farthest;
    }

    /**
     * The lowest point of the heel.
     *
     * @param openRad opening
     * @return outboard of the rod axis, and z
     */
    public Vec2 lowest(double openRad) {
        Vec2 lowest = at(0, openRad);
        for (int i = 1; i < u.length; i++) {
            Vec2 point = at(i, openRad);
            lowest = point.y() < lowest.y() ? point : lowest;
        }
        return lowest;
    }

    private Vec2 at(int i, double openRad) {
        return at(i, Math.sin(openRad), Math.cos(openRad));
    }

    private Vec2 at(int i, double s, double c) {
        return new Vec2(u[i] * c - w[i] * s, axisZMm + u[i] * s + w[i] * c);
    }

    /**
     * How far outboard of the rod axis the heel reaches below the rim at an opening.
     *
     * @param openRad opening
     * @return mm; negative infinity where nothing of the heel is below the rim
     */
    public double reachMm(double openRad) {
        return farthestBelowRim(openRad).x();
    }

    /**
     * How deep below the rim the heel is at an opening.
     *
     * @param openRad opening
     * @return mm, negative where all of it is above the rim
     */
    public double depthMm(double openRad) {
        return -lowest(openRad).y();
    }

    /**
     * The farthest reach over the swing. On its way round the axis a point below the rim only moves outboard until it passes the
     * rim at {@code sqrt(rho^2 - z_r^2)} (or, with the axis below the rim, until it is level with the axis, at rho). Of all
     * points of the heel, those farthest are corners on their way past, or what is below the rim at either end of the swing.
     *
     * @param stopRad opening at the stop
     * @return where and how far; negative infinity where nothing of the heel is ever below the rim
     */
    public Most farthest(double stopRad) {
        double atStop = reachMm(stopRad);
        double closed = reachMm(0);
        Most farthest = closed > atStop ? new Most(0, closed) : new Most(stopRad, atStop);
        for (int i = 0; i < u.length; i++) {
            double rho = Math.hypot(u[i], w[i]);
            double level = axisZMm > 0 ? -Math.asin(Math.min(1, axisZMm / rho)) : 0;
            double open = level - Math.atan2(w[i], u[i]);
            double reach = rho * Math.cos(level);
            if (rho >= axisZMm && open >= 0 && open <= stopRad && reach > farthest.mm()) {
                farthest = new Most(open, reach);
            }
        }
        return farthest;
    }

    /**
     * The deepest point of the swing; for a square flange and a stop beyond it {@code sqrt(o^2 + h_h^2) - z_r}.
     *
     * @param stopRad opening at the stop
     * @return where and how deep
     */
    public Most deepest(double stopRad) {
        Most deepest = new Most(0, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < u.length; i++) {
            // a corner is lowest straight below the axis: tan(theta) = u / w
            double open = Math.max(0, Math.min(stopRad, Math.atan2(-u[i], -w[i])));
            double depth = -at(i, open).y();
            deepest = depth > deepest.mm() ? new Most(open, depth) : deepest;
        }
        return deepest;
    }

    /**
     * A largest value over the swing.
     *
     * @param openRad opening at which it happens
     * @param mm the value
     */
    public record Most(double openRad, double mm) {
    }
}

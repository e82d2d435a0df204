package org.capwright.geom;

/**
 * An almost round outline: {@code R + q cos 2(phi - phi_0)} about a centre, phi the azimuth from +x about that centre. Held as
 * {@code R + A cos 2 phi + B sin 2 phi}, which has no singular direction.
 *
 * <p>Distances from it are measured along the ray from its centre. The normal distance is shorter by less than {@code 2 (q/R)^2}
 * of it: at R 11 and q 1/4 by a thousandth of the distance.
 *
 * @param radiusMm mean radius R
 * @param cosMm A
 * @param sinMm B
 * @param centre its centre
 */
public record Oval(double radiusMm, double cosMm, double sinMm, Vec2 centre) {
    private static final int MOST_STEPS = 50;

    /**
     * A circle about the origin.
     *
     * @param radiusMm its radius
     * @return the outline
     */
    public static Oval circle(double radiusMm) {
        return new Oval(radiusMm, 0, 0, new Vec2(0, 0));
    }

    /**
     * An outline in the handbook's words.
     *
     * @param radiusMm mean radius
     * @param ovalityMm q
     * @param azimuthRad phi_0, where it is largest
     * @param centre its centre
     * @return the outline
     */
    public static Oval of(double radiusMm, double ovalityMm, double azimuthRad, Vec2 centre) {
        return new Oval(radiusMm, ovalityMm * Math.cos(2 * azimuthRad), ovalityMm * Math.sin(2 * azimuthRad), centre);
    }

    /**
     * Ovality: largest radius over the mean one.
     *
     * @return q, mm, not negative
     */
    public double ovalityMm() {
        return Math.hypot(cosMm, sinMm);
    }

    /**
     * Azimuth at which it is largest.
     *
     * @return phi_0 in [0, pi)
     */
    public double ovalityRad() {
        double half = Math.atan2(sinMm, cosMm) / 2;
        return half < 0 ? half + Math.PI : half;
    }

    /**
     * Radius about its own centre.
     *
     * @param azimuthRad azimuth
     * @return mm
     */
    public double radiusMm(double azimuthRad) {
        return radiusMm + cosMm * Math.cos(2 * azimuthRad) + sinMm * Math.sin(2 * azimuthRad);
    }

    /**
     * How far inside a point is, along the ray from the outline's centre.
     *
     * @param x of the point
     * @param y of the point
     * @return mm, negative outside
     */
    public double insideMm(double x, double y) {
        double dx = x - centre.x();
        double dy = y - centre.y();
        double square = dx * dx + dy * dy;
        if (square == 0) {
            return radiusMm + cosMm;
        }
        return radiusMm + (cosMm * (dx * dx - dy * dy) + sinMm * 2 * dx * dy) / square - Math.sqrt(square);
    }

    /**
     * Distance of the outline from the origin along a ray.
     *
     * @param azimuthRad azimuth of the ray; the origin lies inside
     * @return mm
     */
    public double fromOriginMm(double azimuthRad) {
        double c = Math.cos(azimuthRad);
        double s = Math.sin(azimuthRad);
        double length = radiusMm;
        // the slope of insideMm along the ray is almost -1, so each step leaves a small share of the error
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = insideMm(length * c, length * s);
            length += step;
            if (Math.abs(step) < 1e-12 * radiusMm) {
                break;
            }
        }
        return length;
    }

    /**
     * The same outline elsewhere.
     *
     * @param by the shift
     * @return shifted outline
     */
    public Oval moved(Vec2 by) {
        return new Oval(radiusMm, cosMm, sinMm, centre.plus(by));
    }
}

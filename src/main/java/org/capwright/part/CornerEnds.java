package org.capwright.part;

import org.capwright.geom.Vec2;
import org.capwright.metal.Bend;

/**
 * Where two flanges end at a corner of a leaf's blank, on the +y side: two lines in the flat. Each begins where the mould
 * corner would lie if the flange lay flat, half a weld gap back, and runs outwards at the corner's cut.
 *
 * @param center where the two bend lines (middles of the bends) meet
 * @param chordFoot a point on the end of the straight flange
 * @param chordOut its direction, outwards, of length 1
 * @param curveFoot a point on the end of the curved flange
 * @param curveOut its direction, outwards, of length 1
 */
record CornerEnds(Vec2 center, Vec2 chordFoot, Vec2 chordOut, Vec2 curveFoot, Vec2 curveOut) {
    /** How much farther than just to the ends, and to where they cross, a relief hole must reach, so that it cuts both off cleanly. */
    private static final double REACH_FACTOR = 1.25;

    /**
     * The ends at a corner.
     *
     * @param corner the corner
     * @param side -1 at a hinge edge (the flange lies towards -x), +1 at a free chord
     * @param radiusMm leaf radius
     * @param bend bend of both flanges
     * @param gapMm weld gap
     */
    static CornerEnds of(Corner corner, int side, double radiusMm, Bend bend, double gapMm) {
        double s = Math.sin(corner.cutRad());
        double c = Math.cos(corner.cutRad());
        Vec2 radial = new Vec2(corner.xMm() / radiusMm, corner.yMm() / radiusMm);
        Vec2 beyond = radial.left().times(-side);
        Vec2 chordFoot = new Vec2(corner.xMm() - side * bend.deductionMm(), corner.yMm())
                .plus(new Vec2(side * s, -c).times(gapMm / 2));
        Vec2 curveFoot = radial.times(radiusMm - bend.deductionMm()).plus(radial.times(s).minus(beyond.times(c)).times(gapMm / 2));
        return new CornerEnds(center(corner, side, radiusMm, bend), chordFoot, new Vec2(side * c, s), curveFoot,
                radial.times(c).plus(beyond.times(s)));
    }

    private static Vec2 center(Corner corner, int side, double radiusMm, Bend bend) {
        double in = bend.outsideSetbackMm() - bend.allowanceMm() / 2;
        double x = corner.xMm() - side * in;
        double radius = radiusMm - in;
        return new Vec2(x, Math.sqrt(radius * radius - x * x));
    }

    /**
     * Smallest diameter of a relief hole that reaches both ends, and where they cross if that is outside the bends, with
     * something to spare: up to there the flanges would overlap in the flat.
     *
     * @return mm
     */
    double leastHoleMm() {
        return 2 * REACH_FACTOR * Math.max(crossingMm(), Math.max(off(chordFoot, chordOut), off(curveFoot, curveOut)));
    }

    /** Distance from the middle out to where the two ends cross; 0 where they cross on the leaf's side of it. */
    private double crossingMm() {
        double along = curveFoot.minus(chordFoot).cross(curveOut) / chordOut.cross(curveOut);
        Vec2 crossing = chordFoot.plus(chordOut.times(along)).minus(center);
        return crossing.dot(chordOut.plus(curveOut)) > 0 ? crossing.norm() : 0;
    }

    private double off(Vec2 foot, Vec2 out) {
        return Math.abs(center.minus(foot).cross(out));
    }
}

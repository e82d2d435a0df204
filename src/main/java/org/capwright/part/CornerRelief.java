package org.capwright.part;

import org.capwright.geom.Vec2;

/**
 * The notch at a corner of a leaf's blank, on the +y side: from the lip of the straight flange in to the relief hole, round
 * it, and out to the lip of the curved flange. The other corner is its mirror image.
 *
 * @param chordLip end of the straight flange at its lip
 * @param chordEnd where its end meets the relief hole
 * @param center middle of the relief hole: where the two bend lines meet
 * @param curveEnd where the curved flange's end meets the relief hole
 * @param curveLip end of the curved flange at its lip
 */
public record CornerRelief(Vec2 chordLip, Vec2 chordEnd, Vec2 center, Vec2 curveEnd, Vec2 curveLip) {
    /**
     * The notch.
     *
     * @param ends where the flanges end
     * @param holeMm diameter of the relief hole
     * @param chordLipMm x of the straight flange's lip
     * @param curveLipMm radius of the curved flange's lip
     */
    static CornerRelief of(CornerEnds ends, double holeMm, double chordLipMm, double curveLipMm) {
        Vec2 chordLip = ends.chordFoot().plus(ends.chordOut().times((chordLipMm - ends.chordFoot().x()) / ends.chordOut().x()));
        Vec2 curveLip = outwards(ends.curveFoot(), ends.curveOut(), Vec2.ZERO, curveLipMm);
        return new CornerRelief(chordLip, outwards(ends.chordFoot(), ends.chordOut(), ends.center(), holeMm / 2), ends.center(),
                outwards(ends.curveFoot(), ends.curveOut(), ends.center(), holeMm / 2), curveLip);
    }

    /** Where a line leaves a circle. */
    private static Vec2 outwards(Vec2 foot, Vec2 direction, Vec2 center, double radius) {
        Vec2 from = foot.minus(center);
        double along = from.dot(direction);
        double root = Math.sqrt(along * along - from.dot(from) + radius * radius);
        return foot.plus(direction.times(root - along));
    }
}

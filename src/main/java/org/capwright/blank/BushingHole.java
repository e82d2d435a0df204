package org.capwright.blank;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Vec2;
import org.capwright.part.WallPassage;

/**
 * What a straight round bore along y takes of a cylinder's wall. At a height w off its axis the bore spans x_r - c to
 * x_r + c, c = sqrt(r^2 - w^2), and the wall loses what the two planes there take of it.
 */
final class BushingHole {
    private static final int HALF_STEPS = 90;

    private BushingHole() {
    }

    /**
     * The outline, counterclockwise as azimuth from the y axis (radians) grows to the right.
     *
     * @param axisMm the bore's axis, x
     * @param radiusMm its radius
     * @param insideMm inside radius of the wall
     * @param outsideMm outside radius of the wall
     * @return points: x is the azimuth from the y axis in radians, y the height from the bore's axis in mm
     */
    static List<Vec2> outline(double axisMm, double radiusMm, double insideMm, double outsideMm) {
        List<Vec2> right = new ArrayList<>();
        List<Vec2> left = new ArrayList<>();
        for (int i = 0; i <= HALF_STEPS; i++) {
            double turn = Math.PI * i / HALF_STEPS - Math.PI / 2;
            double half = radiusMm * Math.cos(turn);
            WallPassage passage = WallPassage.between(axisMm - half, axisMm + half, insideMm, outsideMm);
            right.add(new Vec2(passage.toRad(), radiusMm * Math.sin(turn)));
            left.add(0, new Vec2(passage.fromRad(), radiusMm * Math.sin(turn)));
        }
        right.addAll(left);
        return right;
    }
}

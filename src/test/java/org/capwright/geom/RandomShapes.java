package org.capwright.geom;

import java.util.Random;

/** Closed paths drawn by chance: points round a middle, joined by lines and by arcs that bulge out or in. */
final class RandomShapes {
    private RandomShapes() {
    }

    /** A shape run counterclockwise round a middle that is not the origin. Its arcs turn by up to 250 degrees, either way. */
    static Path next(Random random) {
        int corners = 3 + random.nextInt(6);
        Vec2 middle = new Vec2(random.nextDouble(-300, 300), random.nextDouble(-300, 300));
        Vec2[] at = new Vec2[corners];
        for (int i = 0; i < corners; i++) {
            double direction = 2 * Math.PI * (i + random.nextDouble(0, 0.6)) / corners;
            at[i] = middle.plus(Vec2.polar(random.nextDouble(60, 160), direction));
        }
        PathBuilder pen = PathBuilder.from(at[0]);
        for (int i = 0; i < corners; i++) {
            join(pen, at[i], at[(i + 1) % corners], random);
        }
        return pen.close();
    }

    private static void join(PathBuilder pen, Vec2 from, Vec2 to, Random random) {
        if (random.nextInt(3) == 0) {
            pen.lineTo(to);
            return;
        }
        double halfTurn = Math.toRadians(random.nextDouble(5, 125));
        boolean counterclockwise = random.nextBoolean();
        Vec2 half = to.minus(from).times(0.5);
        double toTheLeft = (counterclockwise ? 1 : -1) / Math.tan(halfTurn);
        pen.arcTo(to, from.plus(half).plus(half.left().times(toTheLeft)), counterclockwise);
    }
}

package org.capwright.refold;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Vec2;

/**
 * A section across bends, formed by small steps along its neutral axis. The first flat runs along +x from the origin; every
 * bend turns it to the left, so the inside faces are on the left.
 */
final class Fold {
    private static final int STEPS = 4_000;

    /** A bend: its middle in the flat, its turn. */
    record At(double middleMm, double turnRad) {
    }

    /** A point of the neutral axis and the direction in which it runs. */
    record Station(Vec2 at, double directionRad) {
    }

    private final List<At> bends;
    private final double insideRadiusMm;
    private final double thicknessMm;
    private final double factor;

    Fold(List<At> bends, double insideRadiusMm, double thicknessMm, double factor) {
        this.bends = List.copyOf(bends);
        this.insideRadiusMm = insideRadiusMm;
        this.thicknessMm = thicknessMm;
        this.factor = factor;
    }

    /** Where a place of the flat comes to lie. */
    Station neutral(double flatMm) {
        Vec2 at = Vec2.ZERO;
        double direction = 0;
        double done = 0;
        for (At bend : bends) {
            double zone = bend.turnRad() * (insideRadiusMm + factor * thicknessMm);
            double begin = bend.middleMm() - zone / 2;
            double straight = Math.min(flatMm, begin) - done;
            at = at.plus(Vec2.polar(straight, direction));
            done += straight;
            double round = Math.max(0, Math.min(flatMm - done, zone));
            for (int i = 0; i < STEPS && round > 0; i++) {
                double half = bend.turnRad() * round / zone / STEPS / 2;
                direction += half;
                at = at.plus(Vec2.polar(round / STEPS, direction));
                direction += half;
            }
            done += round;
        }
        return new Station(at.plus(Vec2.polar(flatMm - done, direction)), direction);
    }

    /** The point of the outside face over a place of the flat. */
    Vec2 outside(double flatMm) {
        Station station = neutral(flatMm);
        return station.at().minus(Vec2.polar(1, station.directionRad()).left().times((1 - factor) * thicknessMm));
    }

    /** The point of the inside face over a place of the flat. */
    Vec2 inside(double flatMm) {
        Station station = neutral(flatMm);
        return station.at().plus(Vec2.polar(1, station.directionRad()).left().times(factor * thicknessMm));
    }

    /** Where the outside faces of the flats before and after a bend would meet: its mould line. */
    Vec2 mouldLine(int index) {
        At bend = bends.get(index);
        double zone = bend.turnRad() * (insideRadiusMm + factor * thicknessMm);
        List<Vec2> feet = new ArrayList<>(List.of(outside(bend.middleMm() - zone / 2), outside(bend.middleMm() + zone / 2)));
        Vec2 before = Vec2.polar(1, neutral(bend.middleMm() - zone / 2).directionRad());
        Vec2 after = Vec2.polar(1, neutral(bend.middleMm() + zone / 2).directionRad());
        double along = feet.get(1).minus(feet.get(0)).cross(after) / before.cross(after);
        return feet.get(0).plus(before.times(along));
    }
}

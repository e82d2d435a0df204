package org.capwright.blank;

import java.util.List;
import org.capwright.part.Doubler;

/**
 * One end of the rods of a joint, or of its mirror image: how the blank's stations run there. Seen from outside, stations
 * grow with azimuth; at the +y end azimuth falls as x grows.
 *
 * @param towardsPlusY whether it is the +y end
 * @param mirrored whether it belongs to the joint on the -x side
 * @param name what to call its plate on the hood's blank
 */
record BushingEnd(boolean towardsPlusY, boolean mirrored, String name) {
    /** The ends of a joint's rods, and of its mirror image's. */
    static List<BushingEnd> of(Doubler plate) {
        String doubler = "doubler " + plate.number();
        if (plate.number() == 1) {
            return List.of(new BushingEnd(true, false, doubler), new BushingEnd(false, false, doubler));
        }
        return List.of(new BushingEnd(true, false, doubler + ", outer side left"),
                new BushingEnd(true, true, doubler + ", outer side right"),
                new BushingEnd(false, true, doubler + ", outer side left"),
                new BushingEnd(false, false, doubler + ", outer side right"));
    }

    /** Azimuth of a thing at an angle whose sine is given, from the y axis outwards. */
    double azimuthRad(double sine) {
        double quarter = Math.PI / 2;
        double middle = towardsPlusY ? quarter : 3 * quarter;
        return middle + turn() * Math.asin(sine);
    }

    /** +1 where stations grow with the distance outwards from the y axis, else -1. */
    int turn() {
        return towardsPlusY == mirrored ? 1 : -1;
    }
}

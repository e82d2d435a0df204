package org.capwright.stock.nest;

import java.util.List;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;

/** Pieces for tests. */
final class Tasks {
    private static final List<Integer> ANY = List.of(0, 1, 2, 3);

    private Tasks() {
    }

    static Piece rectangle(double length, double width) {
        return new Piece("", length + " x " + width, Path.polyline(List.of(Vec2.ZERO, new Vec2(length, 0), new Vec2(length, width), new Vec2(0, width)),
                true), List.of(), ANY);
    }

    static Piece circle(double radius) {
        return new Piece("", "circle " + radius, Path.circle(Vec2.ZERO, radius), List.of(), ANY);
    }

    static SheetSize sheet(double length, double width) {
        return new SheetSize("sheet", length, width, 1, Integer.MAX_VALUE, false);
    }

    /** By work, not by the clock, so that a slow machine does the same. */
    static Nester.Options work(double seconds) {
        return new Nester.Options(seconds, 600, 1, better -> { }, () -> false);
    }
}

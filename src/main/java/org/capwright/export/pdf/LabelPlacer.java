package org.capwright.export.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.capwright.geom.Bounds;
import org.capwright.geom.Vec2;

/**
 * Writes labels where they keep off everything drawn before and inside a window: at their own place if that is free, else
 * moved along their line, else off it, as little as possible.
 */
final class LabelPlacer {
    private static final double STEP_MM = 1.5;
    private static final double MOST_ALONG_MM = 120;
    private static final double MOST_ACROSS_MM = 45;
    /** Moving off its line tears a label from what it names, so it counts for more. */
    private static final double ACROSS_WEIGHT = 4;
    private static final double CLEAR_MM = 0.5;
    /** Depth of letters below their base line as a share of the height of capitals. */
    private static final double DESCENT_SHARE = 0.3;
    private static final List<Vec2> SHIFTS = shifts();

    private final Canvas canvas;
    private final Bounds window;

    LabelPlacer(Canvas canvas, Bounds window) {
        this.canvas = canvas;
        this.window = window;
    }

    private static List<Vec2> shifts() {
        List<Vec2> shifts = new ArrayList<>();
        int along = (int) (MOST_ALONG_MM / STEP_MM);
        int across = (int) (MOST_ACROSS_MM / STEP_MM);
        for (int i = -along; i <= along; i++) {
            for (int j = -across; j <= across; j++) {
                shifts.add(new Vec2(i * STEP_MM, j * STEP_MM));
            }
        }
        shifts.sort(Comparator.comparingDouble(shift -> Math.hypot(shift.x(), ACROSS_WEIGHT * shift.y())));
        return shifts;
    }

    /** Writes a text whose base line begins at a point, or as near as there is room; at the point itself where there is none. */
    void write(Vec2 at, double heightMm, double turnRad, String text) throws IOException {
        Vec2 free = place(at, heightMm, turnRad, text).orElse(at);
        canvas.text(free.x(), free.y(), heightMm, turnRad, text);
    }

    /** The same only where there is room; false where there is none, then nothing is written. */
    boolean writeIfRoom(Vec2 at, double heightMm, double turnRad, String text) throws IOException {
        Optional<Vec2> free = place(at, heightMm, turnRad, text);
        if (free.isPresent()) {
            canvas.text(free.get().x(), free.get().y(), heightMm, turnRad, text);
        }
        return free.isPresent();
    }

    private Optional<Vec2> place(Vec2 at, double heightMm, double turnRad, String text) throws IOException {
        double length = canvas.width(heightMm, text);
        List<Vec2[]> ink = canvas.ink().near(window, at, turnRad);
        return SHIFTS.stream().filter(shift -> inside(at, shift, length, heightMm, turnRad)
                && clear(ink, shift, length, heightMm)).findFirst()
                .map(shift -> at.plus(shift.rotated(turnRad)));
    }

    private boolean inside(Vec2 at, Vec2 shift, double length, double height, double turn) {
        Bounds room = window.grown(-CLEAR_MM);
        double low = shift.y() - DESCENT_SHARE * height;
        return List.of(new Vec2(shift.x(), low), new Vec2(shift.x() + length, low), new Vec2(shift.x(), shift.y() + height),
                new Vec2(shift.x() + length, shift.y() + height)).stream()
                        .allMatch(corner -> room.contains(at.plus(corner.rotated(turn))));
    }

    private static boolean clear(List<Vec2[]> ink, Vec2 shift, double length, double height) {
        Rectangle2D box = new Rectangle2D.Double(shift.x() - CLEAR_MM, shift.y() - DESCENT_SHARE * height - CLEAR_MM / 2,
                length + 2 * CLEAR_MM, (1 + DESCENT_SHARE) * height + CLEAR_MM);
        return ink.stream().noneMatch(line -> box.intersectsLine(line[0].x(), line[0].y(), line[1].x(), line[1].y()));
    }
}

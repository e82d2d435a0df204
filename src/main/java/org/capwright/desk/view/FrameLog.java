package org.capwright.desk.view;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import javafx.application.Platform;

/**
 * Says on the error stream, once for so many paintings of the sections, how many there were a second and how long each took, in
 * milliseconds; and how long the window took to come. Off unless the program is started with {@code -Dcapwright.frames=true}.
 */
final class FrameLog {
    private static final String SWITCH = "capwright.frames";
    private static final int PAINTINGS = 120;
    private static final double NANOS = 1e-6;
    /** A longer pause is no movement. */
    private static final long MOVING_NANOS = 200_000_000;

    private final boolean on = Boolean.getBoolean(SWITCH);
    private final long[] nanos = new long[PAINTINGS];
    private int count;
    private long last;
    private long moving;
    private int steps;

    /** Says how long after the start of the process the window stood on the screen. */
    static void shown() {
        if (Boolean.getBoolean(SWITCH)) {
            Platform.runLater(() -> System.err.println(String.format(Locale.ROOT, "window: %.2f s after the start of the process",
                    (System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime()) * 1e-3)));
        }
    }

    void painted(long took) {
        if (!on) {
            return;
        }
        long now = System.nanoTime();
        if (now - last < MOVING_NANOS) {
            moving += now - last;
            steps++;
        }
        last = now;
        nanos[count++] = took;
        if (count == PAINTINGS) {
            say();
            count = 0;
            steps = 0;
            moving = 0;
        }
    }

    private void say() {
        Arrays.sort(nanos);
        System.err.println(String.format(Locale.ROOT, "frames: %.0f a second while moving; painting took %.2f ms (median), %.2f ms (99th percentile), %.2f ms (longest)",
                steps / (moving * 1e-9), nanos[PAINTINGS / 2] * NANOS, nanos[PAINTINGS * 99 / 100] * NANOS,
                nanos[PAINTINGS - 1] * NANOS));
    }
}

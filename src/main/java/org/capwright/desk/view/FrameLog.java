package org.capwright.desk.view;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import javafx.application.Platform;

/**
 * Says on the error stream how long the sections took to paint, once for so many paintings: median, 99th percentile and longest, in
 * milliseconds; and how long the window took to come. Off unless the program is started with {@code -Dcapwright.frames=true}.
 */
final class FrameLog {
    private static final String SWITCH = "capwright.frames";
    private static final int PAINTINGS = 120;
    private static final double NANOS = 1e-6;

    private final boolean on = Boolean.getBoolean(SWITCH);
    private final long[] nanos = new long[PAINTINGS];
    private int count;
    private long began;

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
        if (count == 0) {
            began = System.nanoTime() - took;
        }
        nanos[count++] = took;
        if (count == PAINTINGS) {
            say();
            count = 0;
        }
    }

    private void say() {
        Arrays.sort(nanos);
        double seconds = (System.nanoTime() - began) * 1e-9;
        System.err.println(String.format(Locale.ROOT, "frames: %d paintings in %.2f s; each %.2f ms (median), %.2f ms (99th percentile), %.2f ms (longest)", PAINTINGS, seconds,
                nanos[PAINTINGS / 2] * NANOS, nanos[PAINTINGS * 99 / 100] * NANOS, nanos[PAINTINGS - 1] * NANOS));
    }
}

package org.capwright.desk.view;

import java.util.Arrays;
import java.util.Locale;

/**
 * Says on the error stream how long the sections took to paint, once for so many paintings: median, 99th percentile and longest, in
 * milliseconds. Off unless the program is started with {@code -Dcapwright.frames=true}.
 */
final class FrameLog {
    private static final int PAINTINGS = 120;
    private static final double NANOS = 1e-6;

    private final boolean on = Boolean.getBoolean("capwright.frames");
    private final long[] nanos = new long[PAINTINGS];
    private int count;
    private long began;

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

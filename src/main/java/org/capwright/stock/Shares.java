package org.capwright.stock;

import java.util.List;
import org.capwright.stock.nest.NestTask;

/** Shares a time out among groups: work by the number of pieces, the clock by what is left for this group and those after it. */
final class Shares {
    private static final int EVERY_GROUP = 6;
    /** Share of the time of later groups that is kept for them. */
    private static final double KEPT = 0.5;

    private final double seconds;
    private final double[] shares;
    private final long begin = System.nanoTime();

    Shares(double seconds, List<NestTask> tasks) {
        this.seconds = seconds;
        double all = tasks.stream().mapToInt(task -> task.pieces() + EVERY_GROUP).sum();
        this.shares = tasks.stream().mapToDouble(task -> (task.pieces() + EVERY_GROUP) / all).toArray();
    }

    /** Work of a group, the same on every machine. */
    double workSeconds(int group) {
        return seconds * shares[group];
    }

    /** Time that a group may take now. */
    double clockSeconds(int group) {
        double later = 0;
        for (int i = group + 1; i < shares.length; i++) {
            later += shares[i];
        }
        double left = seconds - (System.nanoTime() - begin) * 1e-9;
        return Math.max(0, left - KEPT * later * seconds);
    }
}

package org.capwright.export.pdf;

import java.util.ArrayList;
import java.util.List;

/** Moves labels along a line so that they keep a pitch and stay as near as possible to where they belong. */
final class LabelSpread {
    private LabelSpread() {
    }

    /**
     * Spreads labels.
     *
     * @param wanted where they belong, ascending
     * @param pitch least distance between two
     * @return where to put them: least squares under the pitch (pool adjacent violators)
     */
    static List<Double> spread(List<Double> wanted, double pitch) {
        List<Pool> pools = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            // take the pitch out: what remains must only ascend
            pools.add(new Pool(wanted.get(i) - i * pitch, 1));
            while (pools.size() > 1 && pools.get(pools.size() - 2).mean() > pools.get(pools.size() - 1).mean()) {
                Pool last = pools.remove(pools.size() - 1);
                pools.add(pools.remove(pools.size() - 1).with(last));
            }
        }
        List<Double> placed = new ArrayList<>();
        for (Pool pool : pools) {
            for (int i = 0; i < pool.count(); i++) {
                placed.add(pool.mean() + placed.size() * pitch);
            }
        }
        return placed;
    }

    /**
     * Pushes spread labels back between two ends, keeping their pitch; where there is no room for all they run past the second.
     *
     * @param spread where they are, ascending, a pitch apart
     * @param pitch least distance between two
     * @param least first end
     * @param most second end
     * @return where to put them
     */
    static List<Double> within(List<Double> spread, double pitch, double least, double most) {
        List<Double> placed = new ArrayList<>(spread);
        double limit = most;
        for (int i = placed.size() - 1; i >= 0; i--) {
            placed.set(i, Math.min(placed.get(i), limit));
            limit = placed.get(i) - pitch;
        }
        limit = least;
        for (int i = 0; i < placed.size(); i++) {
            placed.set(i, Math.max(placed.get(i), limit));
            limit = placed.get(i) + pitch;
        }
        return placed;
    }

    private record Pool(double sum, int count) {
        double mean() {
            return sum / count;
        }

        Pool with(Pool other) {
            return new Pool(sum + other.sum, count + other.count);
        }
    }
}

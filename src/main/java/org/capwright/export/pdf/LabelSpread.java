package org.capwright.export.pdf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Moves labels along a line so that they keep their distances and stay as near as possible to where they belong. */
final class LabelSpread {
    private LabelSpread() {
    }

    /**
     * Spreads labels of one size.
     *
     * @param wanted where they belong, ascending
     * @param pitch least distance between two
     * @return where to put them: least squares under the pitch (pool adjacent violators)
     */
    static List<Double> spread(List<Double> wanted, double pitch) {
        return spread(wanted, Collections.nCopies(wanted.size(), pitch));
    }

    /**
     * Spreads labels, each with a size of its own along the line.
     *
     * @param wanted where their middles belong, ascending
     * @param sizes their sizes; two keep half of both apart
     * @return where to put their middles
     */
    static List<Double> spread(List<Double> wanted, List<Double> sizes) {
        List<Double> offsets = offsets(sizes);
        List<Pool> pools = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            // take the distances out: what remains must only ascend
            pools.add(new Pool(wanted.get(i) - offsets.get(i), 1));
            while (pools.size() > 1 && pools.get(pools.size() - 2).mean() > pools.get(pools.size() - 1).mean()) {
                Pool last = pools.remove(pools.size() - 1);
                pools.add(pools.remove(pools.size() - 1).with(last));
            }
        }
        List<Double> placed = new ArrayList<>();
        for (Pool pool : pools) {
            for (int i = 0; i < pool.count(); i++) {
                placed.add(pool.mean() + offsets.get(placed.size()));
            }
        }
        return placed;
    }

    /** How far each is from the first where all stand as near as they may. */
    private static List<Double> offsets(List<Double> sizes) {
        List<Double> offsets = new ArrayList<>();
        double offset = 0;
        for (int i = 0; i < sizes.size(); i++) {
            offset += i == 0 ? 0 : (sizes.get(i - 1) + sizes.get(i)) / 2;
            offsets.add(offset);
        }
        return offsets;
    }

    /**
     * Pushes spread labels of one size back between two ends, keeping their pitch; where there is no room for all they run past
     * the second.
     *
     * @param spread where they are, ascending, a pitch apart
     * @param pitch least distance between two
     * @param least first end
     * @param most second end
     * @return where to put them
     */
    static List<Double> within(List<Double> spread, double pitch, double least, double most) {
        return within(spread, Collections.nCopies(spread.size(), pitch), least, most);
    }

    /**
     * The same for labels with sizes of their own.
     *
     * @param spread where their middles are
     * @param sizes their sizes
     * @param least first end, for the first middle
     * @param most second end, for the last middle
     * @return where to put their middles
     */
    static List<Double> within(List<Double> spread, List<Double> sizes, double least, double most) {
        List<Double> offsets = offsets(sizes);
        List<Double> placed = new ArrayList<>(spread);
        double limit = most;
        for (int i = placed.size() - 1; i >= 0; i--) {
            placed.set(i, Math.min(placed.get(i), limit));
            limit = i > 0 ? placed.get(i) - (offsets.get(i) - offsets.get(i - 1)) : limit;
        }
        limit = least;
        for (int i = 0; i < placed.size(); i++) {
            placed.set(i, Math.max(placed.get(i), limit));
            limit = i + 1 < placed.size() ? placed.get(i) + (offsets.get(i + 1) - offsets.get(i)) : limit;
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

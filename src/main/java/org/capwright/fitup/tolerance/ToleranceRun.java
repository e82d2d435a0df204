package org.capwright.fitup.tolerance;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.capwright.part.Cap;

/**
 * What comes of many builds.
 *
 * @param builds how many
 * @param seed the seed
 * @param share share of builds that keep every limit
 * @param shareError its sampling error, one standard deviation; by the rule of succession, so that it is not nothing at 0 or 1
 * @param least the least margin of each build
 * @param margins each margin by itself
 * @param wantedShare the share that the job asks for
 * @param annulus annulus at which that share of these same builds keeps every limit; empty where no annulus does, since the
 *                other margins fail more often
 * @param hoodAnnulusMm annulus at which that share of these same builds keeps the limits of leaf and hood, whatever the other margins do
 */
public record ToleranceRun(int builds, long seed, double share, double shareError, MarginSpread least, List<MarginSpread> margins,
                           double wantedShare, Optional<Double> annulus, double hoodAnnulusMm) {
    /** Fewest builds that have a 1st percentile. */
    public static final int FEWEST = 100;
    /** Most builds a run may have. */
    public static final int MOST = 10_000_000;
    private static final int CHUNK = 500;
    private static final int ALONE = 2000;

    /** Keeps its own copy. */
    public ToleranceRun {
        margins = List.copyOf(margins);
    }

    /**
     * Draws builds on all cores.
     *
     * @param cap the cap as drawn; its job says how far the work strays
     * @param builds how many, from {@link #FEWEST} to {@link #MOST}
     * @param seed the same seed gives the same result
     * @param progress is told how far it has come, and may end it
     * @return the result; empty where it was ended
     * @throws IllegalArgumentException for too few or too many builds
     */
    public static Optional<ToleranceRun> of(Cap cap, int builds, long seed, Progress progress) {
        if (builds < FEWEST || builds > MOST) {
            throw new IllegalArgumentException("builds must be " + FEWEST + " to " + MOST + ", not " + builds);
        }
        Builder builder = new Builder(cap);
        Source[] sources = Source.values();
        int alone = Math.min(builds, ALONE);
        double all = builds + (double) sources.length * alone;
        double[][] together = run(builder, builds, seed, null, share -> progress.goOn(share * builds / all));
        double[][][] apart = new double[sources.length][][];
        for (int i = 0; i < sources.length && together != null; i++) {
            double before = builds + (double) i * alone;
            apart[i] = run(builder, alone, seed, sources[i], share -> progress.goOn((before + share * alone) / all));
            together = apart[i] == null ? null : together;
        }
        return together == null ? Optional.empty() : Optional.of(new Summary(cap, builder.margins(), together, apart).run(builds,
                seed));
    }

    /** Margins by margin and build; null where it was ended. */
    private static double[][] run(Builder builder, int builds, long seed, Source only, Progress progress) {
        double[][] values = new double[builder.margins().size()][builds];
        AtomicInteger done = new AtomicInteger();
        AtomicBoolean ended = new AtomicBoolean();
        int chunks = (builds + CHUNK - 1) / CHUNK;
        IntStream.range(0, chunks).parallel().filter(chunk -> !ended.get()).forEach(chunk -> {
            int to = Math.min(builds, (chunk + 1) * CHUNK);
            for (int build = chunk * CHUNK; build < to; build++) {
                double[] margins = builder.margins(seed, build, only);
                for (int i = 0; i < margins.length; i++) {
                    values[i][build] = margins[i];
                }
            }
            if (!progress.goOn((double) done.incrementAndGet() / chunks)) {
                ended.set(true);
            }
        });
        return ended.get() ? null : values;
    }

    /**
     * The margin whose 1st percentile is least: the one to worry about.
     *
     * @return one of the margins
     */
    public MarginSpread worst() {
        return margins.stream().min((a, b) -> Double.compare(a.p01().mm(), b.p01().mm())).orElseThrow();
    }

    static double[] sorted(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted;
    }
}

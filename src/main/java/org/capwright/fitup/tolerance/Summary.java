package org.capwright.fitup.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.capwright.job.HoodInputs;
import org.capwright.job.ToleranceInputs;
import org.capwright.part.Cap;

/** Sums up margins by build. */
final class Summary {
    private final Cap cap;
    private final List<Margin> margins;
    private final double[][] together;
    private final double[][][] apart;

    /** Margins by margin and build: of all tolerances together, and of each alone. */
    Summary(Cap cap, List<Margin> margins, double[][] together, double[][][] apart) {
        this.cap = cap;
        this.margins = margins;
        this.together = together;
        this.apart = apart;
    }

    ToleranceRun run(int builds, long seed) {
        double[] least = leastOfEach(together);
        double[][] alone = new double[apart.length][];
        for (int i = 0; i < apart.length; i++) {
            alone[i] = leastOfEach(apart[i]);
        }
        MarginSpread all = spread("least", "least margin of a build", 0, least, alone);
        List<MarginSpread> each = new ArrayList<>();
        for (int i = 0; i < margins.size(); i++) {
            int margin = i;
            each.add(spread(margins.get(i).id(), margins.get(i).words(), margins.get(i).limitMm(), together[i],
                    Arrays.stream(apart).map(values -> values[margin]).toArray(double[][]::new)));
        }
        double succession = (all.share() * builds + 1) / (builds + 2);
        double wanted = cap.job().get(ToleranceInputs.SHARE);
        return new ToleranceRun(builds, seed, all.share(), Math.sqrt(succession * (1 - succession) / builds), all, each, wanted,
                annulus(wanted, false), annulus(wanted, true).orElseThrow());
    }

    private static double[] leastOfEach(double[][] values) {
        double[] least = values[0].clone();
        for (double[] margin : values) {
            for (int i = 0; i < least.length; i++) {
                least[i] = Math.min(least[i], margin[i]);
            }
        }
        return least;
    }

    private static MarginSpread spread(String id, String words, double limitMm, double[] values, double[][] alone) {
        double[] sorted = ToleranceRun.sorted(values);
        double clear = Arrays.stream(values).filter(value -> value >= 0).count();
        return new MarginSpread(id, words, limitMm, clear / values.length, Percentile.of(sorted, 0.01),
                Percentile.of(sorted, 0.05),
                Percentile.of(sorted, 0.5), Histogram.of(sorted), shares(alone));
    }

    private static List<VarianceShare> shares(double[][] alone) {
        double[] variances = Arrays.stream(alone).mapToDouble(Summary::variance).toArray();
        double sum = Arrays.stream(variances).sum();
        List<VarianceShare> shares = new ArrayList<>();
        for (Source source : Source.values()) {
            shares.add(new VarianceShare(source, sum > 0 ? variances[source.ordinal()] / sum : 0));
        }
        shares.sort(Comparator.comparingDouble((VarianceShare one) -> -one.share()));
        return shares;
    }

    static double variance(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        return Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum() / (values.length - 1);
    }

    /**
     * A wider annulus widens every margin of the hood by as much and no other, so the builds whose other margins hold are sorted by the
     * annulus that they need.
     */
    private Optional<Double> annulus(double wanted, boolean hoodAlone) {
        int builds = together[0].length;
        double[] needs = new double[builds];
        Arrays.fill(needs, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < margins.size(); i++) {
            for (int build = 0; build < builds; build++) {
                double margin = together[i][build];
                boolean hood = margins.get(i).ofHood();
                double need = hood ? -margin : margin >= 0 || hoodAlone ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
                needs[build] = Math.max(needs[build], need);
            }
        }
        double[] sorted = ToleranceRun.sorted(needs);
        double more = sorted[Math.min(builds - 1, (int) Math.ceil(wanted * builds) - 1)];
        return Double.isFinite(more) ? Optional.of(cap.job().get(HoodInputs.ANNULUS).mm() + more) : Optional.empty();
    }
}

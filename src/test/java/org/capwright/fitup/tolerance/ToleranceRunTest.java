package org.capwright.fitup.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.capwright.job.CapJob;
import org.capwright.job.HoodInputs;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.swing.Pair;
import org.capwright.swing.QuickHood;
import org.capwright.swing.Swing;
import org.junit.jupiter.api.Test;

/** The tolerance run against closed forms. */
class ToleranceRunTest {
    private static final int BUILDS = 20_000;
    private static final long SEED = 4;
    private static final String NONE = "0 in";
    /** Quantiles of the standard normal distribution at 1 and 5 %, NIST/SEMATECH e-Handbook, table 1.3.6.7.1. */
    private static final double Z01 = -2.3263;
    private static final double Z05 = -1.6449;

    @Test
    void oneNormalToleranceAlone() {
        CapJob job = job(Map.of("tolerance.hoodDiameter", "1/4 in"));
        MarginSpread hood = margin(job, "leaf.1.hood");
        double drawn = Swing.of(Cap.solve(job)).least(Pair.LEAF_HOOD, 1).leastMm() - 6.35;
        // the radius strays by half the diameter's tolerance, two standard deviations of it
        double deviation = 25.4 / 4 / 2 / 2;

        assertThat(hood.p50().mm()).isCloseTo(drawn, within(4 * hood.p50().errorMm()));
        assertThat(hood.p05().mm()).isCloseTo(drawn + Z05 * deviation, within(4 * hood.p05().errorMm()));
        assertThat(hood.p01().mm()).isCloseTo(drawn + Z01 * deviation, within(4 * hood.p01().errorMm()));
        // standard error of a quantile, sqrt(p (1 - p) / n) / density
        double density = Math.exp(-Z01 * Z01 / 2) / Math.sqrt(2 * Math.PI) / deviation;
        double error = Math.sqrt(0.01 * 0.99 / BUILDS) / density;
        assertThat(hood.p01().errorMm()).isCloseTo(error, within(0.3 * error));
    }

    @Test
    void oneUniformToleranceAlone() {
        CapJob job = job(Map.of("tolerance.hoodDiameter", "1/4 in", "tolerance.spreading", "uniform"));
        MarginSpread hood = margin(job, "leaf.1.hood");
        double drawn = Swing.of(Cap.solve(job)).least(Pair.LEAF_HOOD, 1).leastMm() - 6.35;
        double half = 25.4 / 8;

        assertThat(hood.p01().mm()).isCloseTo(drawn - 0.98 * half, within(4 * hood.p01().errorMm()));
        assertThat(hood.p05().mm()).isCloseTo(drawn - 0.9 * half, within(4 * hood.p05().errorMm()));
        assertThat(hood.histogram().counts()).allSatisfy(count -> assertThat(count).isCloseTo(BUILDS / 40, within(120)));
    }

    /** Rod height and flange depth move the lip over the standoffs one to one: shares are the squares of the tolerances. */
    @Test
    void varianceSharesOfALinearMargin() {
        MarginSpread lip = margin(job(Map.of("tolerance.rodHeight", "1/16 in", "tolerance.flangeDepth", "1/32 in")), "lip.1.standoff");

        assertThat(share(lip, Source.ROD_HEIGHT)).isCloseTo(0.8, within(0.02));
        assertThat(share(lip, Source.FLANGE_DEPTH)).isCloseTo(0.2, within(0.02));
        assertThat(lip.shares().stream().mapToDouble(VarianceShare::share).sum()).isCloseTo(1, within(1e-12));
    }

    /** The lesser of two independent normal deviations d (one on each side): P(min < m) = 1 - (1 - F(m))^2. */
    @Test
    void theWorseOfTwoSides() {
        CapJob job = job(Map.of("tolerance.leafRadius", "1/8 in"));
        MarginSpread spout = margin(job, "flange.1.spout");
        double drawn = Swing.of(Cap.solve(job)).least(Pair.FLANGE_SPOUT, 1).leastMm() - 25.4 / 8;
        // 1 - (1 - p)^2 = 0.5 at p = 0.29289; its normal quantile -0.54495
        assertThat(spout.p50().mm()).isCloseTo(drawn - 0.54495 * 25.4 / 16, within(4 * spout.p50().errorMm()));
    }

    /** The least of four independent normal deviations, two ends on each side: P(min < m) = 1 - (1 - F(m))^4. */
    @Test
    void theWorstOfFourRodEnds() {
        CapJob job = job(Map.of("tolerance.rodEndHeight", "1/8 in"));
        MarginSpread lip = margin(job, "lip.1.standoff");
        double drawn = Swing.of(Cap.solve(job)).least(Pair.LIP_STANDOFF, 1).leastMm() - 6.35;
        // 1 - (1 - p)^4 = 0.5 at p = 0.15910; its normal quantile -0.99815
        assertThat(lip.p50().mm()).isCloseTo(drawn - 0.99815 * 25.4 / 16, within(4 * lip.p50().errorMm()));
        assertThat(share(lip, Source.ROD_END_HEIGHT)).isEqualTo(1);
    }

    /** A skewed rod moves the lip of the hinge corner nearer to the hood at one end or the other, never farther at both. */
    @Test
    void skewedRodsTakeFromTheHoodsClearance() {
        CapJob job = job(Map.of("tolerance.rodEndPosition", "1/8 in"));
        MarginSpread hood = margin(job, "leaf.1.hood");
        double drawn = Swing.of(Cap.solve(job)).least(Pair.LEAF_HOOD, 1).leastMm() - 6.35;
        assertThat(hood.p50().mm()).isLessThan(drawn);
        assertThat(share(hood, Source.ROD_END_POSITION)).isEqualTo(1);
    }

    @Test
    void theAnnulusThatIsSaidLetsTheShareClear() {
        CapJob job = job(Map.of("tolerance.hoodDiameter", "1 in", "tolerance.ovality", "1/4 in", "tolerance.shift", "1/4 in", "hood.annulus", "1 in",
                "gutter.insideWidth", "2 1/2 in", "tolerance.share", "0.95", "limits.drain", "0 in"));
        ToleranceRun run = run(job);
        double annulus = run.annulus().orElseThrow();
        ToleranceRun then = run(Jobs.kilnWith(with(job, HoodInputs.ANNULUS.path(), String.format(Locale.ROOT, "%.6f mm", annulus))));

        assertThat(run.share()).isLessThan(0.95);
        assertThat(then.share()).isCloseTo(0.95, within(0.003));
    }

    @Test
    void noAnnulusHelpsWhereAnotherMarginFails() {
        ToleranceRun run = run(job(Map.of("gutter.insideWidth", "2 1/16 in", "tolerance.flangeDepth", "1/16 in")));
        assertThat(run.share()).isLessThan(0.9);
        assertThat(run.annulus()).isEmpty();
    }

    /** A hood with a shallow inward bead out of the leaves' reach asks for the full search: the same builds, the same margins. */
    @Test
    void theFullSearchGivesWhatTheQuickOneGives() {
        Cap quick = Cap.solve(Jobs.kilnWith(Map.of("hood.beads[1].fromTop", "14 in")));
        Cap full = Cap.solve(Jobs.kilnWith(Map.of("hood.beads[1].fromTop", "14 in", "hood.beads[1].side", "in")));
        assertThat(QuickHood.holds(quick)).isTrue();
        assertThat(QuickHood.holds(full)).isFalse();
        MarginSpread one = ToleranceRun.of(quick, 400, SEED, Progress.NONE).orElseThrow().margins().get(0);
        MarginSpread other = ToleranceRun.of(full, 400, SEED, Progress.NONE).orElseThrow().margins().get(0);
        assertThat(other.id()).isEqualTo("leaf.1.hood");
        assertThat(other.p01().mm()).isCloseTo(one.p01().mm(), within(0.01));
        assertThat(other.p50().mm()).isCloseTo(one.p50().mm(), within(0.01));
    }

    @Test
    void theSameSeedGivesTheSameOnAnyNumberOfCores() throws Exception {
        Cap cap = Cap.solve(Jobs.kiln());
        ToleranceRun one = new ForkJoinPool(1).submit(() -> ToleranceRun.of(cap, 3000, 7, Progress.NONE).orElseThrow()).get();
        ToleranceRun four = new ForkJoinPool(4).submit(() -> ToleranceRun.of(cap, 3000, 7, Progress.NONE).orElseThrow()).get();
        assertThat(one).isEqualTo(four);
        assertThat(ToleranceRun.of(cap, 3000, 8, Progress.NONE).orElseThrow()).isNotEqualTo(one);
    }

    @Test
    void aRunCanBeEndedAndTellsHowFarItIs() {
        Cap cap = Cap.solve(Jobs.kiln());
        AtomicInteger told = new AtomicInteger();
        assertThat(ToleranceRun.of(cap, 50_000, 1, share -> told.incrementAndGet() < 3)).isEmpty();
        assertThat(told.get()).isBetween(3, 3 + Runtime.getRuntime().availableProcessors());
    }

    private static Map<String, String> with(CapJob job, String path, String text) {
        Map<String, String> texts = new HashMap<>(job.text().texts());
        texts.put(path, text);
        return texts;
    }

    private static double share(MarginSpread margin, Source source) {
        return margin.shares().stream().filter(one -> one.source() == source).findFirst().orElseThrow().share();
    }

    private static MarginSpread margin(CapJob job, String id) {
        return run(job).margins().stream().filter(margin -> margin.id().equals(id)).findFirst().orElseThrow();
    }

    private static ToleranceRun run(CapJob job) {
        return ToleranceRun.of(Cap.solve(job), BUILDS, SEED, Progress.NONE).orElseThrow();
    }

    /** The kiln job with no tolerance but those given. */
    private static CapJob job(Map<String, String> typed) {
        Map<String, String> all = new HashMap<>();
        for (Source source : Source.values()) {
            all.put(source.input().path(), NONE);
        }
        all.putAll(typed);
        return Jobs.kilnWith(all);
    }
}

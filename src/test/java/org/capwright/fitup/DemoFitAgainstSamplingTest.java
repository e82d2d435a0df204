package org.capwright.fitup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.capwright.check.Limit;
import org.capwright.check.SwingLimits;
import org.capwright.fitup.Suggestion.Kind;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.geom.Vec3;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.store.JobFiles;
import org.capwright.swing.Clearance;
import org.capwright.swing.LeafSize;
import org.capwright.swing.MeasuredWork;
import org.capwright.swing.OvalSampler;
import org.capwright.swing.Pair;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Verdict, place and advice of the demo jobs' readings (good, oval, off the centre, mistyped) by brute force. */
class DemoFitAgainstSamplingTest {
    private static final double THOUSANDTH_MM = 0.0254;
    /** How far along a flat valley a place may lie from the lowest point that sampling finds. */
    private static final double NEAR_MM = 0.3;

    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "woodwork-class", "grain-dryer-hall"})
    void verdictAndPlace(String demo) {
        FitUp fitUp = FitUp.of(job(demo));
        for (Leaf leaf : fitUp.made().leaves()) {
            for (int side = -1; side <= 1; side += 2) {
                Clearance found = fitUp.swing().least(Pair.LEAF_HOOD, leaf.number(), side);
                OvalSampler.Found sampled = sampled(fitUp.made(), fitUp.work(), leaf, side);
                String what = "leaf " + leaf.number() + " side " + side;
                assertThat(found.leastMm()).as(what).isCloseTo(sampled.mm(), within(THOUSANDTH_MM));
                assertThat(distance(found.where(), sampled.at())).as(what + ": " + found.where() + ", sampled " + sampled.at())
                        .isLessThan(NEAR_MM);
                assertThat(found.openRad()).as(what).isCloseTo(sampled.openRad(), within(0.002));
                Limit limit = SwingLimits.of(fitUp.made().job(), Pair.LEAF_HOOD);
                assertThat(verdict(fitUp, leaf, side)).as(what).isEqualTo(limit.verdict(sampled.mm()));
            }
        }
    }

    private static double distance(Vec3 a, Vec3 b) {
        return Math.sqrt((a.x() - b.x()) * (a.x() - b.x()) + (a.y() - b.y()) * (a.y() - b.y())
                + (a.z() - b.z()) * (a.z() - b.z()));
    }

    private static Object verdict(FitUp fitUp, Leaf leaf, int side) {
        String id = "leaf." + leaf.number() + ".hood." + (side > 0 ? "plus" : "minus");
        return fitUp.verdicts().stream().filter(one -> one.check().id().equals(id)).findFirst().orElseThrow().verdict();
    }

    /** What the best shift promises comes of it, and no shift by a millimetre or four from it does better. */
    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "woodwork-class", "grain-dryer-hall"})
    void bestShift(String demo) {
        FitUp fitUp = FitUp.of(job(demo));
        Advice advice = Advice.of(fitUp);
        assertThat(leastMm(fitUp, advice.bestShift())).isCloseTo(advice.bestLeastMm(), within(THOUSANDTH_MM));
        assertThat(leastMm(fitUp, Vec2.ZERO)).isCloseTo(advice.leastNowMm(), within(THOUSANDTH_MM));
        for (double step : new double[] {1, 4}) {
            for (int i = 0; i < 8; i++) {
                Vec2 by = advice.bestShift().plus(Vec2.polar(step, Math.PI / 4 * i));
                assertThat(leastMm(fitUp, by)).as("%s mm towards %d deg", step, 45 * i).isLessThan(advice.bestLeastMm()
                        + THOUSANDTH_MM);
            }
        }
    }

    /** Shifted, pulled round or dressed as advised, the hood's clearance is what was promised. */
    @ParameterizedTest
    @ValueSource(strings = {"bakery-oven-room", "woodwork-class"})
    void suggestions(String demo) {
        FitUp fitUp = FitUp.of(job(demo));
        Advice advice = Advice.of(fitUp);
        assertThat(advice.suggestions()).isNotEmpty();
        for (Suggestion one : advice.suggestions()) {
            if (one.kind() != Kind.UNCUT) {
                double sampled = leastMm(fitUp.made(), done(fitUp, advice, one.kind()));
                assertThat(one.after()).as(one.words()).isCloseTo(sampled, within(THOUSANDTH_MM));
                assertThat(one.verdict()).as(one.words()).isEqualTo(fitUp.deciding().check().limit().verdict(sampled));
            }
        }
    }

    private static MeasuredWork done(FitUp fitUp, Advice advice, Kind kind) {
        Oval hood = fitUp.work().hood();
        if (kind == Kind.SHIFT) {
            return fitUp.work().withHood(hood.moved(advice.bestShift()));
        }
        if (kind == Kind.ROUND) {
            return fitUp.work().withHood(new Oval(hood.radiusMm(), 0, 0, hood.centre()));
        }
        assertThat(kind).isEqualTo(Kind.DRESS);
        FitVerdict deciding = fitUp.deciding();
        int number = Integer.parseInt(deciding.check().id().split("\\.")[1]);
        Leaf.Slab slab = fitUp.work().leaf(fitUp.made().leaves().get(number - 1), deciding.side()).slab();
        double radius = slab.radiusMm() - (deciding.check().limit().band() - deciding.check().margin());
        return fitUp.work().withLeaf(new LeafSize(number, deciding.side(),
                new Leaf.Slab(slab.hingeEdgeMm(), Math.min(slab.freeEdgeMm(), radius), radius)));
    }

    private static double leastMm(FitUp fitUp, Vec2 shift) {
        return leastMm(fitUp.made(), fitUp.work().withHood(fitUp.work().hood().moved(shift)));
    }

    private static double leastMm(Cap made, MeasuredWork work) {
        double least = Double.POSITIVE_INFINITY;
        for (Leaf leaf : made.leaves()) {
            least = Math.min(least, Math.min(sampled(made, work, leaf, 1).mm(), sampled(made, work, leaf, -1).mm()));
        }
        return least;
    }

    private static OvalSampler.Found sampled(Cap made, MeasuredWork work, Leaf leaf, int side) {
        Oval hood = work.hood();
        return new OvalSampler(made, work.leaf(leaf, side), work.rod(made, leaf, side), hood.radiusMm(), hood.ovalityMm(),
                hood.ovalityRad(),
                hood.centre().x(), hood.centre().y()).least(150, 60, 1);
    }

    private static CapJob job(String demo) {
        return JobReader.read(JobFiles.read(Path.of("demo-jobs", demo + ".json"))).orThrow();
    }
}

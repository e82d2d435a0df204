package org.capwright.swing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.capwright.geom.Oval;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.store.JobFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The swing in hoods that are not round, on rods that are not straight: against plain sampling, and against the round swing. */
class MeasuredSwingTest {
    private static final double THOUSANDTH_MM = 0.0254;
    private static final long SEED = 61_000;

    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class"})
    void asDrawnItIsTheRoundSwing(String demo) {
        Cap cap = Cap.solve(JobReader.read(text(demo)).orThrow());
        Swing drawn = Swing.of(cap);
        MeasuredSwing measured = MeasuredSwing.of(cap, MeasuredWork.asDrawn(cap));
        for (Clearance one : drawn.clearances()) {
            for (int side = -1; side <= 1; side += 2) {
                double least = measured.least(one.pair(), one.number(), side).leastMm();
                assertThat(least).as(one.pair() + " " + side).isCloseTo(drawn.least(one.pair(), one.number()).leastMm(),
                        Offset.offset(THOUSANDTH_MM / 10));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class"})
    void outOfRoundHoodsAndSkewedRodsAgreeWithSampling(String demo) {
        Cap cap = Cap.solve(JobReader.read(text(demo)).orThrow());
        compare(cap, 12, demo);
    }

    @Test
    void inwardBeadsAndLowHoodsAgreeWithSampling() {
        JobText beads = text("kiln-room").with("hood.beads[0].side", "in").with("hood.beads[0].fromTop", "3 in")
                .with("hood.beads[1].side", "in").with("hood.beads[1].fromTop", "8 in");
        compare(Cap.solve(JobReader.read(beads).orThrow()), 4, "inward beads");
        JobText low = text("kiln-room").with("hood.aboveRim", "7 in").with("stop.depth", "1 in")
                .with("hood.beads[1].fromTop", "9 in");
        compare(Cap.solve(JobReader.read(low).orThrow()), 4, "low hood");
    }

    private static void compare(Cap cap, int times, String name) {
        Random random = new Random(SEED);
        for (int i = 0; i < times; i++) {
            double[] hood = {cap.hood().insideRadiusMm() + 3 * random.nextGaussian(), 8 * random.nextDouble(), Math.PI * random.nextDouble(),
                4 * random.nextGaussian(), 4 * random.nextGaussian()};
            for (Leaf leaf : cap.leaves()) {
                int side = random.nextBoolean() ? 1 : -1;
                double offset = leaf.rodAxisMm() - leaf.slab().hingeEdgeMm();
                RodLine rod = new RodLine(leaf.number(), side, offset + random.nextGaussian(), offset + random.nextGaussian(),
                        leaf.rodAxisZMm() + random.nextGaussian(), leaf.rodAxisZMm() + random.nextGaussian(), cap.hood().insideRadiusMm());
                Oval oval = OvalSampler.oval(hood);
                MeasuredWork work = new MeasuredWork(oval, Oval.circle(cap.sleeve().outsideRadiusMm()), List.of(rod), List.of());
                double found = MeasuredSwing.hood(cap, work, leaf, side).leastMm();
                boolean cut = !QuickHood.holds(cap);
                double sampled = new OvalSampler(cap, leaf, rod, hood).leastMm(150, cut ? 160 : 60, cut ? 12 : 1);
                assertThat(Math.abs(found - sampled)).as("%s, seed %d, build %d, leaf %d side %d: found %.5f, sampled %.5f mm", name, SEED, i,
                        leaf.number(), side, found, sampled).isLessThan(THOUSANDTH_MM);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class"})
    void theQuickSearchAgreesWithTheFullOne(String demo) {
        Cap cap = Cap.solve(JobReader.read(text(demo)).orThrow());
        assertThat(QuickHood.holds(cap)).isTrue();
        Random random = new Random(SEED);
        for (int i = 0; i < 60; i++) {
            Oval oval = OvalSampler.oval(cap.hood().insideRadiusMm() + 3 * random.nextGaussian(), 6 * random.nextDouble(),
                    Math.PI * random.nextDouble(), 3 * random.nextGaussian(), 3 * random.nextGaussian());
            for (Leaf leaf : cap.leaves()) {
                double radius = leaf.slab().radiusMm() + random.nextGaussian();
                RodLine rod = skewed(cap, leaf, random.nextBoolean() ? 1 : -1, random);
                double free = leaf.slab().freeChord() ? leaf.slab().freeEdgeMm() : radius;
                LeafSize size = new LeafSize(leaf.number(), rod.side(), new Leaf.Slab(leaf.slab().hingeEdgeMm(), free, radius));
                double full = MeasuredSwing.hood(cap, new MeasuredWork(oval, oval, List.of(rod), List.of(size)), leaf,
                        rod.side()).leastMm();
                double quick = new QuickHood(leaf, cap.stopRad()).leastMm(oval, rod, radius, 0);
                assertThat(Math.abs(quick - full)).as("seed %d, build %d: quick %.5f, full %.5f", SEED, i, quick, full).isLessThan(0.01);
            }
        }
    }

    /** Ends that stray by up to a sixteenth of an inch and more, each by itself. */
    private static RodLine skewed(Cap cap, Leaf leaf, int side, Random random) {
        double offset = leaf.rodAxisMm() - leaf.slab().hingeEdgeMm();
        double height = leaf.rodAxisZMm();
        return new RodLine(leaf.number(), side, offset + random.nextGaussian(), offset + random.nextGaussian(), height
                + random.nextGaussian(),
                height + random.nextGaussian(), cap.doublers().get(leaf.number() - 1).faceYMm());
    }

    /** The quick search of builds with skewed rods against plain sampling, without the full one between. */
    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "grain-dryer-hall", "woodwork-class"})
    void theQuickSearchOfSkewedRodsAgreesWithSampling(String demo) {
        Cap cap = Cap.solve(JobReader.read(text(demo)).orThrow());
        Random random = new Random(SEED);
        for (int i = 0; i < 10; i++) {
            double[] hood = {cap.hood().insideRadiusMm() + random.nextGaussian(), 4 * random.nextDouble(),
                    Math.PI * random.nextDouble(),
                2 * random.nextGaussian(), 2 * random.nextGaussian()};
            for (Leaf leaf : cap.leaves()) {
                RodLine rod = skewed(cap, leaf, random.nextBoolean() ? 1 : -1, random);
                double quick = new QuickHood(leaf, cap.stopRad()).leastMm(OvalSampler.oval(hood), rod, leaf.slab().radiusMm(), 0);
                double sampled = new OvalSampler(cap, leaf, rod, hood).leastMm(150, 60, 1);
                assertThat(Math.abs(quick - sampled)).as("%s, seed %d, build %d, leaf %d: quick %.5f, sampled %.5f", demo,
                        SEED, i, leaf.number(),
                        quick, sampled).isLessThan(0.01);
            }
        }
    }

    private static JobText text(String demo) {
        return JobFiles.read(Path.of("demo-jobs", demo + ".json"));
    }
}

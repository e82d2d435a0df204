package org.capwright.swing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import org.capwright.blank.RandomCaps;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.junit.jupiter.api.Test;

/** Every clearance of over 500 random caps (2, 4 and 6 leaves) against plain sampling, to 0.0005 in. */
class SwingAgainstSamplingTest {
    private static final long SEED = 70_000;
    private static final int CAPS = 520;
    private static final int SMOOTH = 45;
    private static final int KINKED = 150;
    private static final int FEW = 30;
    private static final int MANY = 240;
    private static final double EXACT_MM = 0.0005 * 25.4;
    /** What only matters where it is small is compared where it is small. */
    private static final double NEAR_MM = 1000;

    @Test
    void closedFormsAndSamplesAgree() {
        List<RandomCaps.Drawn> caps = RandomCaps.of(SEED, CAPS).stream().map(SwingAgainstSamplingTest::varied).toList();
        Map<Pair, Double> worst = new ConcurrentHashMap<>();
        caps.parallelStream().forEach(drawn -> compare(drawn, worst));
        assertThat(worst).as("pairs compared").hasSize(Pair.values().length - 2);
    }

    private static void compare(RandomCaps.Drawn drawn, Map<Pair, Double> worst) {
        Cap cap = drawn.cap();
        Swing swing = Swing.of(cap);
        Sampler sampler = new Sampler(cap);
        for (Leaf leaf : cap.leaves()) {
            int i = leaf.number() - 1;
            Gutter gutter = cap.gutters().get(i);
            List<FormedLeaf.Row> few = FormedLeaf.curve(leaf, FEW);
            List<FormedLeaf.Row> many = FormedLeaf.curve(leaf, MANY);
            List<FormedLeaf.Row> inside = FormedLeaf.inside(leaf, FEW);
            List<FormedLeaf.Row> heel = FormedLeaf.heel(leaf);
            FormedLeaf.Row end = FormedLeaf.hingeEnd(leaf);
            check(drawn, worst, swing, Pair.LEAF_HOOD, leaf, sampler.least(open -> sampler.hood(leaf, few, end, open), open -> sampler.hood(leaf, many, end, open), SMOOTH));
            check(drawn, worst, swing, Pair.HEEL_WALL, leaf, least(sampler, open -> sampler.wall(leaf, heel, gutter, open)));
            check(drawn, worst, swing, Pair.LEAF_SLEEVE, leaf, least(sampler, open -> sampler.sleeve(leaf, inside, open)));
            check(drawn, worst, swing, Pair.LIP_STANDOFF, leaf, least(sampler, open -> sampler.standoff(leaf, open)));
            if (i == 0) {
                check(drawn, worst, swing, Pair.HEEL_FLOOR, leaf, least(sampler, open -> sampler.floor(leaf, heel, gutter, open)));
                check(drawn, worst, swing, Pair.LEAF_LEAF, leaf, least(sampler, open -> sampler.opposite(leaf, heel, few, open)));
            }
            if (i + 1 < cap.leaves().size()) {
                check(drawn, worst, swing, Pair.LEAF_NEXT, leaf, kinked(sampler, open -> sampler.next(leaf, cap.leaves().get(i + 1), open)));
                check(drawn, worst, swing, Pair.LEAF_BAR, leaf, kinked(sampler, open -> sampler.bar(leaf, cap.stops().get(i + 1), open)));
            }
        }
    }

    private static double least(Sampler sampler, DoubleUnaryOperator at) {
        return sampler.least(at, at, SMOOTH);
    }

    /** The least of several things, each with a valley of its own. */
    private static double kinked(Sampler sampler, DoubleUnaryOperator at) {
        return sampler.least(at, at, KINKED);
    }

    private static void check(RandomCaps.Drawn drawn, Map<Pair, Double> worst, Swing swing, Pair pair, Leaf leaf, double sampled) {
        double found = swing.least(pair, leaf.number()).leastMm();
        if (Double.isInfinite(sampled) && Double.isInfinite(found)) {
            return;
        }
        worst.merge(pair, Math.abs(sampled - found), Math::max);
        if (sampled < NEAR_MM || found < NEAR_MM) {
            assertThat(Math.abs(sampled - found)).as("%s: %s of leaf %d: found %.4f, sampled %.4f mm", drawn, pair, leaf.number(), found, sampled)
                    .isLessThanOrEqualTo(EXACT_MM);
        }
    }

    /** Some hoods too low, some with inward beads, some standoffs too high, some gutters typed. */
    private static RandomCaps.Drawn varied(RandomCaps.Drawn drawn) {
        Random random = new Random(drawn.seed());
        Map<String, String> inputs = new LinkedHashMap<>(drawn.inputs());
        double tip = drawn.cap().hood().aboveRimMm();
        if (random.nextInt(3) == 0) {
            inputs.put("hood.aboveRim", mm(tip * (0.5 + 0.5 * random.nextDouble())));
        }
        if (random.nextInt(3) == 0) {
            inputs.put("hood.beads[0].fromTop", mm(20 + random.nextDouble() * tip * 0.8));
            inputs.put("hood.beads[0].side", "in");
            inputs.put("hood.beads[0].width", mm(10 + random.nextDouble() * 8));
            inputs.put("hood.beads[0].depth", mm(2 + random.nextDouble() * 2.5));
        }
        if (random.nextInt(3) == 0) {
            inputs.put("standoffs.belowRim", mm(8 + random.nextDouble() * 30));
        }
        if (random.nextInt(3) == 0) {
            inputs.put("gutter.insideWidth", mm(30 + random.nextDouble() * 30));
        }
        try {
            return new RandomCaps.Drawn(drawn.seed(), inputs, Cap.solve(JobReader.read(JobText.of(inputs)).orThrow()));
        } catch (RefusedJobException e) {
            return drawn;
        }
    }

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.3f mm", value);
    }
}

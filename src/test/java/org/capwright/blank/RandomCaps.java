package org.capwright.blank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;

/** Seeded random caps within what shops build; jobs that the program refuses are drawn again. */
public final class RandomCaps {
    /** A cap and the seed that drew it. */
    public record Drawn(long seed, Map<String, String> inputs, Cap cap) {
        @Override
        public String toString() {
            return "seed " + seed + " " + inputs;
        }
    }

    /** Seeds next to each other draw alike at first; spread out they do not. */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private final Random random;
    private final Map<String, String> inputs = new LinkedHashMap<>();

    private RandomCaps(long seed) {
        this.random = new Random(seed * SPREAD);
    }

    /** So many caps, from a first seed on. */
    public static List<Drawn> of(long firstSeed, int count) {
        List<Drawn> drawn = new ArrayList<>();
        for (long seed = firstSeed; drawn.size() < count; seed++) {
            Map<String, String> inputs = new RandomCaps(seed).inputs();
            try {
                drawn.add(new Drawn(seed, inputs, Cap.solve(JobReader.read(JobText.of(inputs)).orThrow())));
            } catch (RefusedJobException refused) {
                if (seed > firstSeed + 3L * count) {
                    throw new IllegalStateException("most jobs are refused, seed " + seed, refused);
                }
            }
        }
        return drawn;
    }

    private Map<String, String> inputs() {
        inputs.put("capwright", "1");
        inputs.put("job.units", pick("in", "mm"));
        int leaves = Integer.parseInt(pick("2", "2", "4", "6"));
        inches("stack.outsideDiameter", Math.max(8, 5 * leaves - 2), 48);
        inches("stack.slip", 0, 0.25);
        cylinders();
        leaves(leaves);
        inputs.put("standoffs.rivetsEach", pick("1", "2", "3"));
        inputs.put("standoffs.count", pick("auto", "4", "6", "8"));
        inches("standoffs.innerFlange", 0.75, 1.5);
        inches("standoffs.outerFlange", 0.75, 1.5);
        return inputs;
    }

    private void cylinders() {
        for (String part : List.of("sleeve", "hood", "leaves", "gutter", "standoffs")) {
            inputs.put(part + ".metal", pick("galvanized", "cold-rolled", "stainless 304", "aluminium"));
        }
        inputs.put("sleeve.gauge", pick("16", "18", "20"));
        inputs.put("hood.gauge", pick("18", "20", "22"));
        inches("hood.annulus", 1.5, 4);
        for (String part : List.of("sleeve", "hood")) {
            inputs.put(part + ".seam.kind", pick("butt", "lap", "lock"));
            inputs.put(part + ".seam.width", pick("3/8 in", "1/2 in", "3/4 in"));
            inputs.put(part + ".pieces", pick("auto", "auto", "1", "2", "3"));
            inputs.put(part + ".footEdge.kind", pick("plain", "hem", "wired"));
        }
    }

    private void leaves(int count) {
        inputs.put("leaves.count", Integer.toString(count));
        inputs.put("leaves.gauge", pick("18", "20", "22"));
        inches("leaves.cover", 0.25, 1);
        inches("leaves.gap", 0.25, 1);
        inches("leaves.dripFlange", 0.375, 1);
        inches("leaves.hingeFlange", 0.25, 0.5);
        inputs.put("leaves.flangeAngle", pick("90 deg", "90 deg", number(60, 90) + " deg"));
        inputs.put("leaves.shrink.kappa", number(0, 1));
        inputs.put("leaves.cornerGap", pick("0 in", "1/32 in", "1/16 in"));
        inputs.put("rods.diameter", pick("3/8 in", "1/2 in", "5/8 in"));
    }

    private void inches(String path, double least, double most) {
        inputs.put(path, number(least, most) + " in");
    }

    private String number(double least, double most) {
        return String.format(Locale.ROOT, "%.3f", least + random.nextDouble() * (most - least));
    }

    private String pick(String... of) {
        return of[random.nextInt(of.length)];
    }
}

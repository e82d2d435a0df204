package org.capwright.swing;

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

/** Seeded random caps of every kind the swing knows, good and bad: jobs that the program refuses are skipped. */
final class VariedCaps {
    /** Seeds next to each other draw alike at first; spread out they do not. */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private final Random random;
    private final Map<String, String> inputs = new LinkedHashMap<>();

    /** A cap and the seed that drew it. */
    record Drawn(long seed, Map<String, String> inputs, Cap cap) {
        @Override
        public String toString() {
            return "seed " + seed + " " + inputs;
        }
    }

    private VariedCaps(long seed) {
        this.random = new Random(seed * SPREAD);
    }

    /** The caps of so many seeds, from a first one on, less those that the program refuses. */
    static List<Drawn> of(long firstSeed, int seeds) {
        List<Drawn> drawn = new ArrayList<>();
        for (long seed = firstSeed; seed < firstSeed + seeds; seed++) {
            Map<String, String> inputs = new VariedCaps(seed).draw();
            try {
                drawn.add(new Drawn(seed, inputs, Cap.solve(JobReader.read(JobText.of(inputs)).orThrow())));
            } catch (RefusedJobException refused) {
                // a bead off the hood or a relief hole too small for its flange: no cap, nothing to compare
                continue;
            }
        }
        return drawn;
    }

    private Map<String, String> draw() {
        int leaves = List.of(2, 2, 4, 6).get(random.nextInt(4));
        double stack = between(Math.max(8, 5 * leaves - 2), 60);
        inputs.put("capwright", "1");
        inputs.put("job.units", random.nextBoolean() ? "in" : "mm");
        inputs.put("leaves.count", Integer.toString(leaves));
        inputs.put("leaves.gauge", Integer.toString(16 + 2 * random.nextInt(4)));
        inch("stack.outsideDiameter", stack);
        inch("hood.annulus", between(1.2, 4));
        inch("leaves.cover", between(0.25, 1));
        inch("leaves.gap", between(0.2, 1));
        inch("leaves.dripFlange", between(0.3, 1.1));
        inch("leaves.hingeFlange", between(0.25, 1.1));
        if (random.nextBoolean()) {
            inputs.put("leaves.flangeAngle", number(between(60, 90)) + " deg");
        }
        inputs.put("rods.diameter", List.of("3/8 in", "1/2 in", "5/8 in").get(random.nextInt(3)));
        sometimes("rods.offset", between(0.1, 0.6));
        inputs.put("stop.openAngle", number(between(70, 89)) + " deg");
        hood(stack / leaves);
        fixed();
        return inputs;
    }

    /** Three in ten too low, some very; half with an inward bead anywhere on it. */
    private void hood(double leafInch) {
        sometimes("hood.aboveRim", Math.max(2.5, leafInch * between(0.4, 1.3)));
        if (random.nextBoolean()) {
            inch("hood.beads[0].fromTop", between(0.6, leafInch + 4));
            inputs.put("hood.beads[0].side", "in");
            inch("hood.beads[0].width", between(0.4, 0.8));
            inch("hood.beads[0].depth", between(0.05, 0.2));
        }
    }

    private void fixed() {
        sometimes("gutter.insideWidth", between(1, 3));
        sometimes("gutter.depth", between(0.3, 1.5));
        sometimes("gutter.spout", between(0.1, 0.8));
        sometimes("standoffs.belowRim", between(0.3, 2));
        if (random.nextInt(3) == 0) {
            inputs.put("standoffs.first", number(between(0, 90)) + " deg");
        }
        inputs.put("standoffs.count", List.of("auto", "3", "5", "8").get(random.nextInt(4)));
    }

    private void sometimes(String path, double inches) {
        if (random.nextInt(10) < 3) {
            inch(path, inches);
        }
    }

    private double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    private void inch(String path, double inches) {
        inputs.put(path, number(inches) + " in");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}

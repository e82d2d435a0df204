package org.capwright.fitup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.capwright.check.Check;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.job.JobReading;
import org.capwright.job.JobText;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.store.JobFiles;
import org.junit.jupiter.api.Test;

/** Whatever is measured and marked as cut, a fit-up comes of it: parts that can't be kept are told, never refused. */
class HeldPartsRandomTest {
    private static final long SEED = 62_000;
    private static final int JOBS = 300;
    private static final List<String> PARTS = List.of("sleeve", "hood", "leaves", "gutter", "rods", "standoffs", "stop");

    @Test
    void everyFitUpComesToAnEnd() {
        Set<String> told = new HashSet<>();
        for (long seed = SEED; seed < SEED + JOBS; seed++) {
            CapJob job = drawn(new Random(seed * 0x9E3779B97F4A7C15L));
            Cap cap = Cap.solve(job);
            FitUp fitUp = FitUp.of(job);
            String what = "seed " + seed + " " + job.text().texts();
            assertThat(fitUp.verdicts()).as(what).allSatisfy(one -> assertThat(one.check().value()).isNotNaN());
            for (Contradiction one : fitUp.rederived().conflicts()) {
                assertThat(one.check().value()).as(what).isFinite();
                assertThat(one.remedy()).as(what).isNotBlank();
                assertThat(one.parts()).as(what).isNotEmpty();
                told.add(one.check().id());
            }
            fitUp.rederived().changes(cap).forEach(change -> assertThat(change.newLengthMm()).as(what).isPositive().isFinite());
            Set<String> lost = new HashSet<>(PARTS);
            lost.removeAll(fitUp.rederived().held());
            boolean together = fitUp.rederived().contradictions().stream().map(Check::id).anyMatch("held.together"::equals);
            lost.removeIf(part -> job.text().at("held." + part).filter("cut"::equals).isEmpty());
            assertThat(together || lost.isEmpty()).as(what).isTrue();
        }
        assertThat(told).contains("held.together", "held.standoffs", "held.stack.slip");
    }

    private static CapJob drawn(Random random) {
        String demo = List.of("kiln-room", "grain-dryer-hall", "woodwork-class").get(random.nextInt(3));
        JobText text = JobFiles.read(Path.of("demo-jobs", demo + ".json"));
        for (String path : List.copyOf(text.texts().keySet())) {
            text = path.startsWith("fit.") ? text.without(path) : text;
        }
        Cap cap = Cap.solve(JobReader.read(text).orThrow());
        if (random.nextInt(4) == 0) {
            // four leaves whose relief hole only just reaches both flanges' ends
            String joint = demo.equals("woodwork-class") ? "3 3/4 in" : "7 in";
            JobText four = text.with("leaves.count", "4").with("leaves.firstJoint", joint)
                    .with("leaves.hingeFlange", "5/8 in");
            double hole = Cap.solve(JobReader.read(four).orThrow()).leaves().stream().mapToDouble(Leaf::reliefHoleMm)
                    .max().orElseThrow();
            text = four.with("leaves.reliefHole", String.format(Locale.ROOT, "%.6f mm", hole + 1e-5));
            cap = Cap.solve(JobReader.read(text).orThrow());
        }
        for (String part : PARTS) {
            text = random.nextInt(3) > 0 ? text.with("held." + part, random.nextInt(4) > 0 ? "cut" : "open") : text;
        }
        double wild = random.nextInt(3) == 0 ? 60 : 4;
        text = some(text, random, "fit.stackGirth", Math.PI * (2 * cap.sleeve().insideRadiusMm() - 3), wild);
        text = some(text, random, "fit.sleeveGirth", 2 * Math.PI * cap.sleeve().outsideRadiusMm(), wild);
        text = some(text, random, "fit.hoodBore[0].diameter", 2 * cap.hood().insideRadiusMm(), wild);
        Leaf leaf = cap.leaves().get(0);
        text = some(text, random, "fit.leaves[0].length", leaf.slab().freeEdgeMm() - leaf.slab().hingeEdgeMm(), wild);
        text = some(text, random, "fit.covers[0].cover", 13, wild / 4);
        text = some(text, random, "fit.gutters[0].width", cap.gutters().get(0).insideWidthMm(), wild);
        text = some(text, random, "fit.gutters[0].depth", cap.gutters().get(0).depthMm(), wild / 4);
        text = some(text, random, "fit.rods[0].offset", leaf.rodAxisMm() - leaf.slab().hingeEdgeMm(), 2);
        text = some(text, random, "fit.rods[0].height", leaf.rodAxisZMm(), 2);
        return JobReader.read(some(text, random, "fit.endPlay", 3, 4)).orThrow();
    }

    /** Half of the readings are taken; one that is out of the range of its field would not have been typed. */
    private static JobText some(JobText text, Random random, String path, double drawnMm, double strayMm) {
        JobText typed = text.with(path, String.format(Locale.ROOT, "%.3f mm", drawnMm + strayMm * random.nextGaussian()));
        JobReading reading = JobReader.read(typed);
        return random.nextBoolean() && reading.job().isPresent() ? typed : text;
    }
}

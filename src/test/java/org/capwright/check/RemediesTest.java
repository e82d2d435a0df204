package org.capwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;
import org.junit.jupiter.api.Test;

/** A remedy is true: what it says, typed into the job, turns its check clear. */
class RemediesTest {
    private static final long SEED = 20261125;
    private static final int JOBS = 60;

    /** Inputs that spoil something, each with values to draw from. */
    private static final Map<String, List<String>> SPOILERS = Map.ofEntries(
            Map.entry("hood.annulus", List.of("0.8 in", "1.1 in")), Map.entry("leaves.hingeFlange", List.of("1/8 in", "1/2 in", "3/4 in")),
            Map.entry("gutter.insideWidth", List.of("1 1/2 in", "2 in")), Map.entry("gutter.depth", List.of("1/4 in", "3/8 in")),
            Map.entry("gutter.spout", List.of("3/8 in", "1/2 in")), Map.entry("standoffs.belowRim", List.of("1/4 in", "1/2 in")),
            Map.entry("leaves.cover", List.of("1/4 in", "3/8 in")), Map.entry("stack.slip", List.of("0 in", "1/32 in")),
            Map.entry("stop.openAngle", List.of("70 deg", "89 deg")), Map.entry("stop.depth", List.of("1/2 in", "1 in")),
            Map.entry("hood.aboveRim", List.of("8 in", "9 in")), Map.entry("leaves.dripFlange", List.of("1/8 in", "1 in")),
            Map.entry("leaves.bend.insideRadius", List.of("0.01 in")), Map.entry("gutter.bend.insideRadius", List.of("0.01 in")),
            Map.entry("hood.seam.width", List.of("1/8 in", "1/4 in")), Map.entry("standoffs.rivetsEach", List.of("4", "5")),
            Map.entry("standoffs.outerFlange", List.of("1/2 in")), Map.entry("rods.endPlay", List.of("0 in")),
            Map.entry("rods.diameter", List.of("1/8 in", "3/16 in")), Map.entry("sleeve.fastenerHoles.fromFoot", List.of("1/4 in", "4 5/8 in")),
            Map.entry("hood.belowRim", List.of("2 1/2 in", "3 in")), Map.entry("air.shutOffPressure", List.of("0.42 inH2O")),
            Map.entry("air.flow", List.of("2500 ft3/min")), Map.entry("leaves.gap", List.of("1/8 in")),
            Map.entry("stock.sheetLength", List.of("60 in", "50 in")), Map.entry("sleeve.seam.azimuth", List.of("90 deg")),
            Map.entry("hood.seam.azimuth", List.of("0 deg")), Map.entry("bushings.length", List.of("1 7/8 in")));

    @Test
    void everyRemedyTurnsItsCheckClear() {
        Random random = new Random(SEED);
        TreeSet<String> mended = new TreeSet<>();
        List<String> paths = SPOILERS.keySet().stream().sorted().toList();
        for (int i = 0; i < JOBS; i++) {
            JobText text = DemoJobs.text("kiln-room");
            for (int spoiled = 0; spoiled < 3; spoiled++) {
                String path = paths.get(random.nextInt(paths.size()));
                List<String> values = SPOILERS.get(path);
                text = text.with(path, values.get(random.nextInt(values.size())));
            }
            mended.addAll(mend(text, "seed " + SEED + ", job " + i));
        }
        assertThat(mended).as("seed %d", SEED).hasSizeGreaterThan(15);
    }

    /** Each spoiler alone: every check that is not clear has a remedy, but where proportions must change. */
    @Test
    void everySpoiledInputHasARemedy() {
        SPOILERS.forEach((path, values) -> values.forEach(value -> mend(DemoJobs.text("kiln-room").with(path, value), path + " " + value)));
    }

    private static List<String> mend(JobText text, String what) {
        List<String> mended = new ArrayList<>();
        Cap cap = solved(text);
        if (cap == null) {
            return mended;
        }
        List<Check> checks = Checks.of(cap);
        for (Check check : checks) {
            for (Remedy remedy : Remedies.of(cap, checks, check)) {
                JobText better = text;
                for (Map.Entry<String, String> one : remedy.typed().entrySet()) {
                    better = better.with(one.getKey(), one.getValue());
                }
                assertThat(verdict(better, check.id())).as("%s: %s, %s", what, check.id(), remedy).isEqualTo(Verdict.CLEAR);
                assertThat(remedy.typed().values()).as(what).anyMatch(value -> remedy.words().endsWith(value));
                mended.add(check.id());
            }
        }
        return mended;
    }

    private static Cap solved(JobText text) {
        try {
            return JobReader.read(text).job().map((CapJob job) -> Cap.solve(job)).orElse(null);
        } catch (RefusedJobException e) {
            return null;
        }
    }

    private static Verdict verdict(JobText text, String id) {
        return Checks.of(Cap.solve(JobReader.read(text).orThrow())).stream().filter(check -> check.id().equals(id))
                .map(Check::verdict).findFirst().orElse(Verdict.CLEAR);
    }

    /** The wider gutter comes first: so shallow a hinge flange would be under the brake's minimum. */
    @Test
    void theRemedyOfTheHandbooksKindReadsAsASentence() {
        Cap cap = DemoJobs.cap("kiln-room", Map.of("gutter.insideWidth", "2 in"));
        List<Check> checks = Checks.of(cap);
        Check foul = Checks.worstFirst(checks).get(0);
        assertThat(Remedies.sentence(Remedies.of(cap, checks, foul)))
                .isEqualTo("widen the gutter to 2 1/4 in, or narrow the hinge flange to 3/16 in");
    }
}

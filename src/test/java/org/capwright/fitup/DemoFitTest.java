package org.capwright.fitup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.fitup.Suggestion.Kind;
import org.capwright.geom.Oval;
import org.capwright.geom.Vec2;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.store.JobFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo jobs' readings: one good set, one of an oval hood, one of a hood off the centre, one with a mistyped reading. */
class DemoFitTest {
    @Test
    void theGoodOneIsClear() {
        FitUp fitUp = FitUp.of(job("kiln-room"));
        assertThat(fitUp.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(fitUp.notes()).isEmpty();
        assertThat(Advice.of(fitUp).suggestions()).isEmpty();
        // drawn as 282.7 with 1.1 at 20 deg, shifted by 0.8, -0.5, read to 1/32 in
        assertThat(fitUp.work().hood().radiusMm()).isCloseTo(282.7, within(0.3));
        assertThat(fitUp.work().hood().ovalityMm()).isCloseTo(1.1, within(0.3));
        assertThat(fitUp.work().hood().centre().distance(new Vec2(0.8, -0.5))).isLessThan(0.6);
    }

    @Test
    void theOvalOneIsFoulAndPullingItRoundHelps() {
        FitUp fitUp = FitUp.of(job("bakery-oven-room"));
        assertThat(fitUp.verdict()).isEqualTo(Verdict.FOUL);
        assertThat(fitUp.deciding().check().id()).startsWith("leaf.1.hood");
        Suggestion first = Advice.of(fitUp).suggestions().get(0);
        assertThat(first.kind()).isEqualTo(Kind.ROUND);
        assertThat(first.verdict()).isEqualTo(Verdict.CLEAR);
    }

    @Test
    void theOneOffTheCentreIsFoulAndAShiftMendsIt() {
        FitUp fitUp = FitUp.of(job("woodwork-class"));
        assertThat(fitUp.verdict()).isEqualTo(Verdict.FOUL);
        Advice advice = Advice.of(fitUp);
        assertThat(advice.suggestions().get(0).kind()).isEqualTo(Kind.SHIFT);
        assertThat(advice.suggestions().get(0).words()).matches("shift the hood .* towards -x and .* towards -y");
        assertThat(advice.bestShift().distance(new Vec2(-24, -10))).isLessThan(1);
        // done: the swing with the hood shifted says what was promised
        FitUp done = fitUp.with(fitUp.work().withHood(fitUp.work().hood().moved(advice.bestShift())));
        assertThat(done.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(done.swing().leastToHood().leastMm()).isEqualTo(advice.bestLeastMm());
    }

    @Test
    void theMistypedReadingIsNamed() {
        FitUp fitUp = FitUp.of(job("grain-dryer-hall"));
        assertThat(fitUp.hood().suspects()).extracting(one -> one.reading().path()).containsExactly("fit.hoodBore[3].diameter");
        assertThat(fitUp.notes().get(0)).startsWith("Measure again: bore diameter at 67.5 deg (fit.hoodBore[3].diameter) reads 41 13/16 in");
        assertThat(fitUp.hood().residuals()).hasSize(16);
        Oval without = fitUp.withoutSuspects().orElseThrow().work().hood();
        assertThat(without.radiusMm()).isCloseTo(525.2, within(0.5));
        assertThat(without.ovalityMm()).isCloseTo(2.5, within(0.5));
    }

    /** No shift on a grid about the best one does better. */
    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "woodwork-class", "grain-dryer-hall"})
    void noShiftIsBetterThanTheBest(String demo) {
        FitUp fitUp = FitUp.of(job(demo));
        Advice advice = Advice.of(fitUp);
        for (double step : new double[] {0.1, 1, 5}) {
            for (int i = -2; i <= 2; i++) {
                for (int j = -2; j <= 2; j++) {
                    Oval there = fitUp.work().hood().moved(advice.bestShift().plus(new Vec2(i * step, j * step)));
                    double least = fitUp.with(fitUp.work().withHood(there)).swing().leastToHood().leastMm();
                    assertThat(least).as("%s %s %s", step, i, j).isLessThan(advice.bestLeastMm() + 0.002);
                }
            }
        }
    }

    /** What is advised about a part not cut yet, typed into the job, makes the clearance that decided clear. */
    @Test
    void anUncutPartChangedAsAdvisedMendsIt() {
        CapJob job = job("kiln-room");
        CapJob narrow = JobReader.read(job.text().with("fit.rods[0].offset", "0.31 in").with("fit.rods[0].height", "0.29 in")
                .with("fit.rods[1].end", "minus").with("fit.rods[1].offset", "0.31 in")).orThrow();
        FitUp fitUp = FitUp.of(narrow);
        assertThat(fitUp.deciding().check().id()).isEqualTo("heel.1.wall.plus");
        assertThat(fitUp.verdict()).isEqualTo(Verdict.FOUL);
        Suggestion wider = Advice.of(fitUp).suggestions().stream().filter(one -> one.words().contains("gutter")).findFirst().orElseThrow();
        String width = wider.words().substring(wider.words().indexOf("inside width ") + "inside width ".length());
        FitUp done = FitUp.of(JobReader.read(narrow.text().with("gutter.insideWidth", width)).orThrow());
        Check then = done.verdicts().stream().map(FitVerdict::check).filter(check -> check.id().equals("heel.1.wall.plus")).findFirst().orElseThrow();
        assertThat(then.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(then.value()).isCloseTo(wider.after(), within(1e-9));
    }

    @Test
    void tooFewReadingsSayWhatTheyDoNotTell() {
        CapJob drawn = JobReader.read(job("kiln-room").text().without("fit.sleeveGirth")).orThrow();
        CapJob two = bore(drawn, List.of("0 deg", "90 deg"));
        assertThat(FitUp.of(two).notes()).satisfiesExactly(
                note -> assertThat(note).startsWith("Where the hood stands is not known: it is taken central."),
                note -> assertThat(note).startsWith("The hood's ovality is known along one direction only."),
                note -> assertThat(note).startsWith("There are just as many readings of the hood as the fit needs"));
        assertThat(FitUp.of(bore(drawn, List.of())).notes()).singleElement().asString().startsWith("The hood was not measured");
    }

    private static CapJob bore(CapJob job, List<String> azimuths) {
        var texts = new LinkedHashMap<>(job.text().texts());
        texts.keySet().removeIf(path -> path.startsWith("fit."));
        for (int i = 0; i < azimuths.size(); i++) {
            texts.put("fit.hoodBore[" + i + "].azimuth", azimuths.get(i));
            texts.put("fit.hoodBore[" + i + "].diameter", "22 1/4 in");
        }
        return JobReader.read(JobText.of(texts)).orThrow();
    }

    private static CapJob job(String demo) {
        return JobReader.read(JobFiles.read(Path.of("demo-jobs", demo + ".json"))).orThrow();
    }
}

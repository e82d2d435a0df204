package org.capwright.export.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.capwright.check.Check;
import org.capwright.export.JobTag;
import org.capwright.fitup.Advice;
import org.capwright.fitup.Contradiction;
import org.capwright.fitup.FitUp;
import org.capwright.fitup.FitVerdict;
import org.capwright.fitup.Residual;
import org.capwright.fitup.Suggestion;
import org.capwright.fitup.tolerance.ToleranceRun;
import org.capwright.job.CapJob;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Prints fit-ups and tolerance runs as JSON (RFC 8259). */
public final class FitJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private FitJson() {
    }

    /**
     * A fit-up.
     *
     * @param fitUp the fit-up
     * @param advice its advice
     * @param stamp short fingerprint of the job's design
     * @return {@code {"job", "verdict", "figures", "clearances", "readings", "notes", "advice", "blanks", "contradictions"}}
     */
    public static String of(FitUp fitUp, Advice advice, String stamp) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("job", JobTag.of(fitUp.drawn().job(), stamp, List.of()));
        all.put("verdict", fitUp.verdict().word());
        all.put("figures", FitFigures.of(fitUp, advice));
        all.put("clearances", fitUp.verdicts().stream().map(FitJson::clearance).toList());
        all.put("readings", fitUp.hood().residuals().stream().map(FitJson::reading).toList());
        all.put("notes", fitUp.notes());
        all.put("advice", advice.suggestions().stream().map(FitJson::suggestion).toList());
        all.put("blanks", fitUp.rederived().changes(fitUp.drawn()));
        all.put("contradictions", fitUp.rederived().conflicts().stream().map(FitJson::contradiction).toList());
        return MAPPER.writeValueAsString(all);
    }

    private static Map<String, Object> check(Check check) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", check.id());
        map.put("verdict", check.verdict().word());
        map.put("value", check.value());
        map.put("limit", check.limit().value());
        map.put("margin", check.margin());
        map.put("unit", check.quantity().unit());
        map.put("source", check.limit().source());
        check.place().ifPresent(place -> map.put("at", Map.of("x", place.at().x(), "y", place.at().y(), "z", place.at().z(),
                "opening", Math.toDegrees(place.openRad()))));
        return map;
    }

    private static Map<String, Object> contradiction(Contradiction one) {
        Map<String, Object> map = check(one.check());
        map.put("words", one.check().words());
        map.put("parts", one.parts());
        map.put("remedy", one.remedy());
        return map;
    }

    private static Map<String, Object> clearance(FitVerdict verdict) {
        Map<String, Object> map = check(verdict.check());
        map.put("uncertainty", verdict.uncertaintyMm());
        map.put("sure", verdict.sure());
        return map;
    }

    private static Map<String, Object> reading(Residual residual) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("path", residual.reading().path());
        map.put("value", residual.reading().valueMm());
        map.put("azimuth", Math.toDegrees(residual.reading().azimuthRad()));
        map.put("residual", residual.mm());
        Optional.of(residual).filter(one -> Double.isFinite(one.score())).ifPresent(one -> {
            map.put("againstOthers", one.withoutMm());
            map.put("score", one.score());
        });
        map.put("suspect", residual.suspect());
        return map;
    }

    private static Map<String, Object> suggestion(Suggestion one) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("kind", one.kind().name().toLowerCase(Locale.ROOT));
        map.put("words", one.words());
        map.put("before", one.before());
        map.put("after", one.after());
        map.put("verdict", one.verdict().word());
        map.put("spoilsNothing", one.spoilsNothing());
        return map;
    }

    /**
     * A tolerance run.
     *
     * @param job its job
     * @param run the run
     * @param stamp short fingerprint of the job's design
     * @return {@code {"job", "seed", "figures", "histogram"}}
     */
    public static String of(CapJob job, ToleranceRun run, String stamp) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("job", JobTag.of(job, stamp, List.of()));
        all.put("seed", run.seed());
        all.put("figures", FitFigures.of(run));
        all.put("histogram", run.least().histogram());
        return MAPPER.writeValueAsString(all);
    }
}

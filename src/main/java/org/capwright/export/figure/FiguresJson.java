package org.capwright.export.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.capwright.air.Air;
import org.capwright.blank.Blanks;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Remedies;
import org.capwright.export.JobTag;
import org.capwright.part.Cap;
import org.capwright.swing.Swing;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Prints a cap's figures as JSON (RFC 8259). */
public final class FiguresJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private FiguresJson() {
    }

    /**
     * The figures of a cap.
     *
     * @param cap the cap
     * @param stamp short fingerprint of its inputs
     * @return {@code {"job": {name, revision, stamp, fouls}, "figures": [{id, value, unit}...], "checks": [{id, verdict, value, limit,
     * margin, unit, at, source, remedy}...]}}
     */
    public static String of(Cap cap, String stamp) {
        Swing swing = Swing.of(cap);
        Air air = Air.of(cap);
        List<Check> checks = Checks.of(cap, swing, air);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("job", JobTag.of(cap.job(), stamp, checks));
        List<Figure> figures = new ArrayList<>(CapFigures.of(cap, Blanks.of(cap)));
        figures.addAll(MotionFigures.of(cap.leaves(), swing, air));
        all.put("figures", figures);
        all.put("checks", checks.stream().map(check -> CheckEntry.of(check, Remedies.of(cap, checks, check))).toList());
        return MAPPER.writeValueAsString(all);
    }
}

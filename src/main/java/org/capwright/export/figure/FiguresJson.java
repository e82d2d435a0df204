package org.capwright.export.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.capwright.blank.Blanks;
import org.capwright.export.JobTag;
import org.capwright.part.Cap;
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
     * @param tag its job
     * @return {@code {"job": {name, revision, stamp}, "figures": [{id, value, unit}...], "checks": []}}
     */
    public static String of(Cap cap, JobTag tag) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("job", tag);
        all.put("figures", CapFigures.of(cap, Blanks.of(cap)));
        all.put("checks", List.of());
        return MAPPER.writeValueAsString(all);
    }
}

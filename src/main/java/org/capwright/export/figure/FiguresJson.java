package org.capwright.export.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.capwright.air.Air;
import org.capwright.blank.Blanks;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Remedies;
import org.capwright.export.JobTag;
import org.capwright.part.Cap;
import org.capwright.price.Price;
import org.capwright.stock.StockFit;
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
     * @return {@code {"job": {name, revision, stamp, fouls}, "figures": [{id, value, unit}...], "checks": [{id, verdict, value,
     * limit, margin, unit, at, source, remedy}...]}}
     */
    public static String of(Cap cap, String stamp) {
        return MAPPER.writeValueAsString(tree(cap, stamp, List.of(), List.of()));
    }

    /**
     * The figures of a cap and of its price.
     *
     * @param cap the cap
     * @param stamp short fingerprint of its inputs
     * @param price what it costs, and what it is cut from
     * @return the same with the figures of stock and price, with the checks against the stock, and with a {@code note} where
     * stock or rates have one: samples say there that they are
     */
    public static String of(Cap cap, String stamp, Price price) {
        Map<String, Object> all = tree(cap, stamp, StockFigures.of(price),
                StockFit.checks(price.plan().jobs().get(0).blanks(), price.plan().shop()));
        all.put("note", price.note());
        all.put("settled", price.plan().settled());
        all.put("seed", price.plan().seed());
        return MAPPER.writeValueAsString(all);
    }

    private static Map<String, Object> tree(Cap cap, String stamp, List<Figure> more, List<Check> moreChecks) {
        Swing swing = Swing.of(cap);
        Air air = Air.of(cap);
        List<Check> own = Checks.of(cap, swing, air);
        List<Check> checks = Stream.concat(own.stream(), moreChecks.stream()).toList();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("job", JobTag.of(cap.job(), stamp, checks));
        List<Figure> figures = new ArrayList<>(CapFigures.of(cap, Blanks.of(cap)));
        figures.addAll(MotionFigures.of(cap.leaves(), swing, air));
        figures.addAll(more);
        all.put("figures", figures);
        all.put("checks", checks.stream().map(check -> CheckEntry.of(check, Remedies.of(cap, own, check))).toList());
        return all;
    }
}

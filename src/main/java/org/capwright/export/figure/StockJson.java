package org.capwright.export.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.capwright.price.Compared;
import org.capwright.price.Line;
import org.capwright.price.Price;
import org.capwright.stock.BarGroup;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockPlan;
import org.capwright.stock.StockSheet;
import org.capwright.stock.bar.CutBar;
import org.capwright.stock.nest.Placement;
import org.capwright.stock.nest.SheetLayout;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Prints plans and prices as JSON (RFC 8259). */
public final class StockJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private StockJson() {
    }

    /**
     * A plan.
     *
     * @param plan the plan
     * @return its figures, whether every search came to its own end, with its seed; groups with their bounds; every sheet with
     * its pieces: job, name, turn in degrees, place of the piece's origin in mm; bars with their cuts
     */
    public static String of(StockPlan plan) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("note", plan.shop().note());
        all.put("seed", plan.seed());
        all.put("settled", plan.settled());
        all.put("figures", StockFigures.of(plan));
        all.put("groups", plan.sheets().stream().map(StockJson::group).toList());
        all.put("sheets", plan.sheets().stream().flatMap(group -> group.nest().sheets().stream()
                .map(layout -> sheet(group, layout))).toList());
        all.put("unplaced", plan.sheets().stream().flatMap(group -> group.nest().unplaced().stream())
                .map(demand -> Map.of("part", demand.piece().name(), "quantity", demand.quantity())).toList());
        all.put("bars", plan.bars().stream().flatMap(group -> group.plan().bars().stream().map(bar -> bar(group, bar))).toList());
        return MAPPER.writeValueAsString(all);
    }

    private static Map<String, Object> group(SheetGroup group) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("metal", group.sheet().metal().word());
        tree.put("thickness", group.sheet().thicknessMm());
        tree.put("sheets", group.nest().sheets().size());
        group.nest().bound().ifPresent(bound -> tree.putAll(Map.of("bound", bound.sheets(), "boundReason", bound.reason())));
        tree.put("use", group.nest().use());
        tree.put("settled", group.nest().settled());
        return tree;
    }

    private static Map<String, Object> bar(BarGroup group, CutBar bar) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("metal", group.metal().word());
        tree.put("diameter", group.diameterMm());
        tree.put("length", bar.size().lengthMm());
        tree.put("cuts", bar.piecesMm());
        tree.put("rest", bar.restMm(group.kerfMm()));
        return tree;
    }

    private static Map<String, Object> sheet(SheetGroup group, SheetLayout layout) {
        StockSheet stock = group.stockOf(layout);
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("metal", stock.sheet().metal().word());
        tree.put("thickness", stock.sheet().thicknessMm());
        tree.put("length", stock.lengthMm());
        tree.put("width", stock.widthMm());
        tree.put("shear", !layout.cuts().isEmpty());
        layout.remnant().ifPresent(rest -> tree.put("remnant", List.of(rest.minX(), rest.minY(), rest.maxX(), rest.maxY())));
        tree.put("pieces", layout.placements().stream().map(StockJson::piece).toList());
        return tree;
    }

    private static Map<String, Object> piece(Placement placement) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("job", placement.piece().job());
        tree.put("part", placement.piece().name());
        tree.put("turn", 90 * placement.turns());
        tree.put("x", placement.at().x());
        tree.put("y", placement.at().y());
        return tree;
    }

    /**
     * Prices for several numbers of caps.
     *
     * @param prices the prices, at least one; the first's figures are given
     * @return figures, lines, what is missing, and totals by number of caps
     */
    public static String of(List<Price> prices) {
        Price first = prices.get(0);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("note", first.note());
        all.put("currency", first.currency());
        all.put("seed", first.plan().seed());
        all.put("figures", StockFigures.of(first));
        all.put("missing", first.missing());
        List<Map<String, Object>> lines = new ArrayList<>();
        lines(lines, "material", first.material());
        lines(lines, "hardware", first.hardware());
        lines(lines, "labour", first.labour());
        lines(lines, "added", List.of(first.overhead(), first.margin(), first.tax()));
        all.put("lines", lines);
        all.put("caps", prices.stream().map(StockJson::total).toList());
        return MAPPER.writeValueAsString(all);
    }

    private static void lines(List<Map<String, Object>> to, String kind, List<Line> lines) {
        for (Line line : lines) {
            Map<String, Object> tree = new LinkedHashMap<>();
            tree.put("kind", kind);
            tree.put("name", line.name());
            tree.put("quantity", line.quantity());
            tree.put("unit", line.unit());
            line.amount().ifPresent(amount -> tree.put("amount", amount));
            to.add(tree);
        }
    }

    private static Map<String, Object> total(Price price) {
        Map<String, Object> tree = new LinkedHashMap<>(Map.of("caps", price.caps()));
        tree.put("sheets", price.plan().sheetCount());
        tree.put("settled", price.plan().settled());
        price.total().ifPresent(total -> tree.put("total", total));
        price.each().ifPresent(each -> tree.put("each", each));
        return tree;
    }

    /**
     * Ways to make a job, side by side.
     *
     * @param compared the ways, at least one
     * @param stock what they are cut from
     * @return for each its name, what is typed for it, figures in the core's units, and the reason where it can't exist or has
     * no price
     */
    public static String compared(List<Compared> compared, ShopStock stock) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("note", compared.stream().flatMap(one -> one.alternative().stream()).findFirst().map(one -> one.price().note())
                .orElse(stock.note()));
        all.put("currency", stock.currency());
        all.put("alternatives", compared.stream().map(StockJson::compared).toList());
        return MAPPER.writeValueAsString(all);
    }

    private static Map<String, Object> compared(Compared one) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", one.variant().name());
        tree.put("typed", new TreeMap<>(one.variant().typed()));
        tree.put("possible", one.alternative().isPresent());
        if (!one.reason().isEmpty()) {
            tree.put("reason", one.reason());
        }
        one.alternative().ifPresent(made -> {
            made.price().total().ifPresent(total -> tree.put("total", total));
            tree.put("massKg", made.massKg());
            tree.put("sheets", made.price().plan().sheetCount());
            tree.put("settled", made.price().plan().settled());
            tree.put("liftPressurePa", made.liftPressurePa());
            tree.put("heightMm", made.heightMm());
            tree.put("fouls", made.fouls());
        });
        return tree;
    }
}

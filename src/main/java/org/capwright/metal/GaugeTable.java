package org.capwright.metal;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.capwright.units.Length;

/** What the gauge numbers of one metal mean. A gauge is not a thickness: each metal has a table of its own. */
public final class GaugeTable {
    private static final Map<Metal, GaugeTable> TABLES = tables();

    private final String source;
    private final SortedMap<Integer, Row> rows;

    private GaugeTable(Table table) {
        this.source = table.source();
        SortedMap<Integer, Row> byGauge = new TreeMap<>();
        table.rows().forEach(fields -> byGauge.put(Integer.valueOf(fields.get(0)), row(fields)));
        this.rows = Collections.unmodifiableSortedMap(byGauge);
    }

    /**
     * One gauge.
     *
     * @param thickness nominal thickness
     * @param poundsPerSquareFoot listed weight
     * @param tolerance thickness tolerance, where the table gives one
     */
    public record Row(Length thickness, double poundsPerSquareFoot, Optional<Length> tolerance) {
    }

    /**
     * The table of a metal.
     *
     * @param metal which
     * @return its table; empty for aluminized sheet, for which none is confirmed: measure it
     */
    public static Optional<GaugeTable> of(Metal metal) {
        return Optional.ofNullable(TABLES.get(metal));
    }

    /**
     * The nominal thickness of a gauge.
     *
     * @param gauge gauge number
     * @return the thickness; empty where the table has no such gauge
     */
    public Optional<Length> thickness(int gauge) {
        return row(gauge).map(Row::thickness);
    }

    /**
     * Everything the table says of a gauge.
     *
     * @param gauge gauge number
     * @return its row; empty where the table has no such gauge
     */
    public Optional<Row> row(int gauge) {
        return Optional.ofNullable(rows.get(gauge));
    }

    /**
     * The gauges there are.
     *
     * @return gauge numbers, thickest first
     */
    public SortedSet<Integer> gauges() {
        return new TreeSet<>(rows.keySet());
    }

    /**
     * Where the numbers are from.
     *
     * @return source and how sure it is
     */
    public String source() {
        return source;
    }

    private static Row row(List<String> fields) {
        Optional<Length> tolerance = fields.size() > 3
                ? Optional.of(Length.ofInches(Double.parseDouble(fields.get(3)))) : Optional.empty();
        return new Row(Length.ofInches(Double.parseDouble(fields.get(1))), Double.parseDouble(fields.get(2)), tolerance);
    }

    private static Map<Metal, GaugeTable> tables() {
        Map<Metal, GaugeTable> tables = new EnumMap<>(Metal.class);
        GaugeTable stainless = new GaugeTable(Table.read("gauges-stainless.txt"));
        tables.put(Metal.COLD_ROLLED, new GaugeTable(Table.read("gauges-steel.txt")));
        tables.put(Metal.GALVANIZED, new GaugeTable(Table.read("gauges-galvanized.txt")));
        tables.put(Metal.STAINLESS_304, stainless);
        tables.put(Metal.STAINLESS_316, stainless);
        tables.put(Metal.ALUMINIUM, new GaugeTable(Table.read("gauges-aluminium.txt")));
        return tables;
    }
}

package org.capwright.stock;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.capwright.part.Sheet;
import org.capwright.stock.nest.NestRules;
import org.capwright.units.UnitSystem;

/**
 * What a shop has and can buy, what it costs, and how the shop lays out its sheets.
 *
 * @param note what stands at its head; a sample says here that its prices are invented
 * @param currency such as {@code USD}
 * @param units units of the file
 * @param rules spacing, margin, least remnant
 * @param keepGrain whether blanks keep to their grain
 * @param remnantsFirst whether remnants are used up before any whole sheet
 * @param kerfMm what a saw cut of a bar takes
 * @param sheets sheets and remnants
 * @param bars bars
 * @param hardware prices of hardware
 */
public record ShopStock(String note, String currency, UnitSystem units, NestRules rules, boolean keepGrain, boolean remnantsFirst,
                        double kerfMm, List<StockSheet> sheets, List<StockBar> bars, List<HardwarePrice> hardware) {
    /** A sheet serves for a thickness that is this near, as a share of it: nearer than half a gauge. */
    private static final double NEAR = 0.06;
    private static final double SAME = 0.005;

    /** Keeps its own copies. */
    public ShopStock {
        sheets = List.copyOf(sheets);
        bars = List.copyOf(bars);
        hardware = List.copyOf(hardware);
        if (!(kerfMm >= 0)) {
            throw new IllegalArgumentException("a kerf must be at least 0 mm");
        }
    }

    /**
     * Sheets of a metal and thickness: those nearest to the thickness asked for, if near enough.
     *
     * @param sheet metal and thickness
     * @return sheets and remnants that serve; empty where there are none
     */
    public List<StockSheet> sheetsFor(Sheet sheet) {
        List<StockSheet> near = sheets.stream().filter(one -> one.sheet().metal() == sheet.metal())
                .filter(one -> off(one, sheet.thicknessMm()) <= NEAR).toList();
        return near.stream().min(Comparator.comparingDouble(one -> off(one, sheet.thicknessMm())))
                .map(best -> near.stream().filter(one -> off(one,
                best.sheet().thicknessMm()) <= SAME).toList()).orElse(List.of());
    }

    private static double off(StockSheet one, double thicknessMm) {
        return Math.abs(one.sheet().thicknessMm() - thicknessMm) / thicknessMm;
    }

    /**
     * The price of a piece of hardware.
     *
     * @param kind what it is
     * @param sizeMm its size
     * @return price of one, or of a metre; empty where it is not known
     */
    public OptionalDouble price(HardwareKind kind, double sizeMm) {
        return hardware.stream().filter(one -> one.suits(kind,
                sizeMm)).map(HardwarePrice::price).findFirst().orElse(OptionalDouble.empty());
    }
}

package org.capwright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.capwright.job.JobText;
import org.capwright.metal.GaugeTable;
import org.capwright.metal.Metal;
import org.capwright.part.Sheet;
import org.capwright.stock.HardwareKind;
import org.capwright.stock.HardwarePrice;
import org.capwright.stock.SheetPrice;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockBar;
import org.capwright.stock.StockSheet;
import org.capwright.stock.nest.NestRules;
import org.capwright.units.Length;
import org.capwright.units.UnitSystem;

/** Stock files: JSON in UTF-8, with lengths as people type them. A price that is left out is not known. */
public final class StockFiles {
    /** The newest form of stock files that this program reads. */
    public static final int NEWEST_VERSION = 1;
    private static final int MOST = 10_000;

    private final ShopText in;

    private StockFiles(JobText text) {
        this.in = new ShopText(text);
    }

    /**
     * Reads a stock file.
     *
     * @param file the file
     * @return the stock
     * @throws StoreException if it can't be read from disk
     * @throws UnreadableJobException if it is not well-formed
     * @throws org.capwright.job.RefusedJobException if any field is refused, with every problem
     */
    public static ShopStock read(Path file) {
        return new StockFiles(JobFiles.read(file)).stock();
    }

    /**
     * Reads a stock from its texts.
     *
     * @param text what is typed in it
     * @return the stock
     * @throws org.capwright.job.RefusedJobException if any field is refused, with every problem
     */
    public static ShopStock of(JobText text) {
        return new StockFiles(text).stock();
    }

    /**
     * The texts of a stock, as its file has them.
     *
     * @param stock the stock
     * @return texts by path
     */
    public static JobText text(ShopStock stock) {
        return ShopText.of(StockTree.of(stock));
    }

    /**
     * The sample that the program brings along. Its prices are invented, and its note says so.
     *
     * @return the sample
     */
    public static ShopStock sample() {
        return new StockFiles(Samples.text("sample-stock.json")).stock();
    }

    /**
     * Writes a stock file whole or not at all.
     *
     * @param file the file, replaced if there is one
     * @param stock the stock
     * @throws StoreException if it can't be written
     */
    public static void write(Path file, ShopStock stock) {
        JobFiles.writeWhole(file, PrettyJson.print(StockTree.of(stock)));
    }

    private ShopStock stock() {
        in.count("capwrightStock", 1, NEWEST_VERSION);
        UnitSystem units = in.word("units", List.of(UnitSystem.values()), StockTree::word);
        in.units(units);
        NestRules rules = new NestRules(in.lengthMm("layout.spacing", true), in.lengthMm("layout.margin", true),
                in.lengthMm("layout.leastRemnant", true));
        List<StockSheet> sheets = new ArrayList<>();
        sheets("sheets", false, sheets);
        sheets("remnants", true, sheets);
        ShopStock stock = new ShopStock(in.find("note").orElse(""), in.text("currency"), units, rules, yes("layout.keepGrain"),
                yes("layout.remnantsFirst"), in.lengthMm("saw.kerf", true), sheets, bars(), hardware());
        in.done("stock file");
        return stock;
    }

    private boolean yes(String path) {
        return in.word(path, List.of(true, false), value -> value ? "yes" : "no");
    }

    private void sheets(String list, boolean remnant, List<StockSheet> sheets) {
        for (int i = 0; i < in.listSize(list); i++) {
            String at = list + "[" + i + "].";
            Sheet sheet = sheet(at);
            OptionalInt count = in.count(at + "count", 1, MOST);
            sheets.add(new StockSheet(sheet, in.lengthMm(at + "length", false), in.lengthMm(at + "width", false), price(at),
                    remnant && count.isEmpty() ? OptionalInt.of(1) : count, remnant));
        }
    }

    /** By gauge, or by thickness where none is given. */
    private Sheet sheet(String at) {
        Metal metal = in.word(at + "metal", List.of(Metal.values()), Metal::word);
        if (!in.has(at + "gauge")) {
            return new Sheet(metal, OptionalInt.empty(), in.lengthMm(at + "thickness", false));
        }
        OptionalInt gauge = in.count(at + "gauge", 10, 28);
        Optional<Length> thickness = gauge.isPresent() ? GaugeTable.of(metal).flatMap(table -> table.thickness(gauge.getAsInt()))
                : Optional.empty();
        if (gauge.isPresent() && thickness.isEmpty()) {
            in.refuse(at + "gauge", Integer.toString(gauge.getAsInt()), "there is no such gauge of " + metal.word(),
                    "Give its thickness instead");
        }
        return new Sheet(metal, gauge, thickness.orElse(Length.ofMm(1)).mm());
    }

    private Optional<SheetPrice> price(String at) {
        OptionalDouble sheet = in.amount(at + "perSheet");
        OptionalDouble kg = in.amount(at + "perKg");
        if (sheet.isPresent() && kg.isPresent()) {
            in.refuse(at + "perKg", Double.toString(kg.getAsDouble()), "a sheet has one price", "Take out perKg or perSheet");
        }
        return sheet.isPresent() ? Optional.of(new SheetPrice(SheetPrice.Per.SHEET, sheet.getAsDouble()))
                : kg.isPresent() ? Optional.of(new SheetPrice(SheetPrice.Per.KG, kg.getAsDouble())) : Optional.empty();
    }

    private List<StockBar> bars() {
        List<StockBar> bars = new ArrayList<>();
        for (int i = 0; i < in.listSize("bars"); i++) {
            String at = "bars[" + i + "].";
            bars.add(new StockBar(in.word(at + "metal", List.of(Metal.values()), Metal::word),
                    in.lengthMm(at + "diameter", false),
                    in.lengthMm(at + "length", false), in.amount(at + "price")));
        }
        return bars;
    }

    private List<HardwarePrice> hardware() {
        List<HardwarePrice> hardware = new ArrayList<>();
        for (int i = 0; i < in.listSize("hardware"); i++) {
            String at = "hardware[" + i + "].";
            hardware.add(new HardwarePrice(in.word(at + "kind", List.of(HardwareKind.values()), HardwareKind::word),
                    in.has(at + "size") ? in.lengthMm(at + "size", false) : 0, in.amount(at + "price")));
        }
        return hardware;
    }
}

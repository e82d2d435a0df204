package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.capwright.export.JobTag;
import org.capwright.export.Money;
import org.capwright.price.Line;
import org.capwright.price.Names;
import org.capwright.price.Price;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.StockPlan;
import org.capwright.units.ShopFormat;

/** Writes the inner sheet: every line of a price, the sheets and bars, masses. For the shop, not for the customer. */
public final class PriceBook {
    private static final List<Double> SHARES = List.of(0.36, 0.1, 0.1, 0.13, 0.13, 0.18);

    private final Price price;
    private final ShopFormat format;
    private final Money money;
    private final List<Block> blocks = new ArrayList<>();

    private PriceBook(Price price, ShopFormat format) {
        this.price = price;
        this.format = format;
        this.money = new Money(price.currency());
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param prices prices for several numbers of caps, at least one; the first is shown line by line
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, List<Price> prices, PrintSetup setup, JobTag tag, ShopFormat format) throws IOException {
        try (PdfBook book = new PdfBook("Inner sheet", tag, setup.scale())) {
            List<Block> blocks = new PriceBook(prices.get(0), format).blocks(prices);
            book.write(Flow.pages(blocks, setup.paper(), "Inner sheet: not for the customer",
                    "every line of the price; amounts in " + prices.get(0).currency(), book.typeface()), file);
        }
    }

    private List<Block> blocks(List<Price> prices) {
        if (!price.note().isBlank()) {
            blocks.add(Block.Paragraph.plain(price.note()));
        }
        if (!price.missing().isEmpty()) {
            blocks.add(Block.Paragraph.plain("Missing, so that the total is not known: " + String.join("; ", price.missing())));
        }
        lines("Material", price.material());
        lines("Hardware", price.hardware());
        lines("Labour", price.labour());
        sums();
        several(prices);
        sheets();
        blocks.addAll(BarBlocks.of(price.plan(), format));
        return blocks;
    }

    private void lines(String heading, List<Line> lines) {
        blocks.add(Block.Paragraph.heading(heading + (price.caps() == 1 ? "" : ", " + price.caps() + " caps")));
        blocks.addAll(TableBlocks.of(SHARES, List.of("what", "quantity", "", "each", "amount", "how"), lines.stream()
                .map(line -> List.of(line.name(), decimal(line.quantity()), line.unit(), money.plain(line.each()),
                        money.plain(line.amount()), line.note())).toList()));
    }

    private void sums() {
        blocks.add(Block.Paragraph.heading("Sum, " + price.currency()));
        List<List<String>> rows = new ArrayList<>(List.of(List.of("material", money.plain(price.materialTotal()), ""),
                List.of("hardware", money.plain(price.hardwareTotal()), ""),
                        List.of("labour", money.plain(price.labourTotal()), "")));
        for (Line line : List.of(price.overhead(), price.margin(), price.tax())) {
            rows.add(List.of(line.name(), money.plain(line.amount()), decimal(line.quantity()) + " % " + line.note()));
        }
        rows.add(List.of("total", money.plain(price.total()), ""));
        blocks.addAll(TableBlocks.of(List.of(0.3, 0.2, 0.5), List.of("", "amount", "how"), rows));
    }

    private void several(List<Price> prices) {
        blocks.add(Block.Paragraph.heading("Several caps made together"));
        blocks.addAll(TableBlocks.of(List.of(0.2, 0.2, 0.3, 0.3), List.of("caps", "sheets", "total", "each"), prices.stream()
                .map(one -> List.of(
                Integer.toString(one.caps()), Integer.toString(one.plan().sheetCount()), money.plain(one.total()),
                        money.plain(one.each()))).toList()));
    }

    private void sheets() {
        StockPlan plan = price.plan();
        blocks.add(Block.Paragraph.heading("Sheets"));
        blocks.addAll(TableBlocks.of(List.of(0.4, 0.6), List.of("from", "sheets"), plan.sheets().stream()
                .map(group -> List.of(new Names(format).of(group.sheet()), words(group))).toList()));
        blocks.add(Block.Paragraph.plain("Bought " + format.mass(plan.boughtKg()) + ", of it scrap of sheets "
                + format.mass(plan.scrapKg())
                + "; use of the sheets " + decimal(100 * plan.use()) + " %."));
    }

    private String words(SheetGroup group) {
        String use = group.nest().sheets().isEmpty() ? "" : "; use " + decimal(100 * group.nest().use()) + " %";
        String lost = group.nest().unplaced().isEmpty() ? "" : "; NO SHEET FOR "
                + String.join(", ", group.nest().unplaced().stream().map(demand -> demand.quantity() + " " + demand.piece()
                        .name()).toList());
        return group.nest().words() + use + lost + SheetWords.settled(group, price.plan().seed());
    }

    private static String decimal(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
    }
}

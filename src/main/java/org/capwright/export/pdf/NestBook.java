package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.capwright.export.Cautions;
import org.capwright.export.JobTag;
import org.capwright.geom.Bounds;
import org.capwright.price.Names;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.StockPlan;
import org.capwright.stock.nest.Placement;
import org.capwright.stock.nest.ShearCut;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/**
 * Writes the nested sheets: each on a page to scale, then where its parts lie and the order of its shear cuts, the
 * bars, cautions.
 */
public final class NestBook {
    private static final List<Double> PARTS = List.of(0.07, 0.39, 0.27, 0.135, 0.135);
    private static final List<Double> CUTS = List.of(0.07, 0.39, 0.27, 0.27);

    private final StockPlan plan;
    private final ShopFormat format;
    private final Names names;
    private final List<Block> blocks = new ArrayList<>();

    private NestBook(StockPlan plan, ShopFormat format) {
        this.plan = plan;
        this.format = format;
        this.names = new Names(format);
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param plan what to write
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, StockPlan plan, PrintSetup setup, JobTag tag, ShopFormat format) throws IOException {
        try (PdfBook book = new PdfBook("Nested sheets", tag, setup.scale())) {
            NestBook nests = new NestBook(plan, format);
            List<PrintPage> pages = nests.drawings(setup.paper(), book.typeface());
            pages.addAll(Flow.pages(nests.lists(), setup.paper(), "Nested sheets: lists",
                    "numbers as on the sheets; places from the sheet's lower left corner",
                    book.typeface()));
            book.write(pages, file);
        }
    }

    private List<PrintPage> drawings(Paper paper, Typeface typeface) {
        List<PrintPage> pages = new ArrayList<>();
        for (SheetGroup group : plan.sheets()) {
            for (SheetLayout layout : group.nest().sheets()) {
                String title = "Sheet " + (pages.size() + 1) + " of " + plan.sheetCount() + ": "
                        + names.of(group.stockOf(layout));
                pages.add(SheetPage.of(layout, title, paper, format, typeface));
            }
        }
        return pages;
    }

    private List<Block> lists() {
        if (!plan.shop().note().isBlank()) {
            blocks.add(Block.Paragraph.plain(plan.shop().note()));
        }
        int number = 0;
        for (SheetGroup group : plan.sheets()) {
            for (SheetLayout layout : group.nest().sheets()) {
                blocks.add(Block.Paragraph.heading("Sheet " + ++number + ": " + names.of(group.stockOf(layout))));
                blocks.add(Block.Paragraph.plain(SheetWords.of(layout, format)));
                parts(layout);
                cuts(layout);
            }
        }
        groups();
        blocks.addAll(BarBlocks.of(plan, format));
        blocks.add(Block.Paragraph.heading("Cautions"));
        Cautions.ALL.forEach(caution -> blocks.add(Block.Paragraph.plain(caution)));
        return blocks;
    }

    private void parts(SheetLayout layout) {
        boolean several = plan.jobs().size() > 1;
        List<List<String>> rows = new ArrayList<>();
        for (Placement one : SheetPage.numbered(layout)) {
            Bounds box = one.outline().bounds();
            rows.add(List.of(Integer.toString(rows.size() + 1), one.piece().name() + (several ? ", " + one.piece().job() : ""),
                    length(box.width()) + " x " + length(box.height()), length(box.minX()), length(box.minY())));
        }
        blocks.addAll(TableBlocks.of(PARTS, List.of("", "part", "over all, as it lies", "from the left", "from below"), rows));
    }

    private void cuts(SheetLayout layout) {
        List<List<String>> rows = new ArrayList<>();
        for (ShearCut cut : layout.cuts()) {
            boolean across = cut.from().x() == cut.to().x();
            rows.add(List.of("C" + (rows.size() + 1), across ? "across the sheet's length" : "along the sheet's length",
                    across ? length(cut.from().x()) + " from the left" : length(cut.from().y()) + " from below",
                            length(cut.lengthMm())));
        }
        if (!rows.isEmpty()) {
            blocks.addAll(TableBlocks.of(CUTS, List.of("", "shear cut, in this order", "at", "length"), rows));
        }
    }

    private void groups() {
        blocks.add(Block.Paragraph.heading("How many sheets"));
        for (SheetGroup group : plan.sheets()) {
            String lost = group.nest().unplaced().isEmpty() ? "" : "; NO SHEET FOR "
                    + String.join(", ", group.nest().unplaced().stream()
                            .map(demand -> demand.quantity() + " " + demand.piece().name()).toList());
            blocks.add(Block.Paragraph.plain(names.of(group.sheet()) + ": " + group.nest().words() + lost
                    + SheetWords.settled(group, plan.seed())));
        }
    }

    private String length(double mm) {
        return format.length(Length.ofMm(mm));
    }
}

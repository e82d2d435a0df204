package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.capwright.check.Measure;
import org.capwright.export.JobTag;
import org.capwright.export.Money;
import org.capwright.export.Sheets;
import org.capwright.job.JobInputs;
import org.capwright.job.StackInputs;
import org.capwright.part.Cap;
import org.capwright.price.Price;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/** Writes the quote for the customer: what he gets, what it costs, nothing of how the price came about. */
public final class QuoteBook {
    private static final List<String> NOTES = List.of(
            "Delivery, installation, roof work and anchorage are not included unless a line above names them.",
            "The cap is not a listed chimney or vent cap and is not for grease or for flues of burning appliances. Wind and snow"
                    + " loads, anchorage and fire rules belong to local codes and licensed practice.",
            "The size rests on the stack's outside diameter as stated above. Please measure it round with a tape before you"
                    + " order.");

    private static final String BLANK = "________________________________________";
    private static final double LINE_MM = 2.6;
    private static final double LINE_SPACE_MM = 3;

    private final Cap cap;
    private final List<Price> prices;
    private final ShopFormat format;

    private QuoteBook(Cap cap, List<Price> prices, ShopFormat format) {
        this.cap = cap;
        this.prices = prices;
        this.format = format;
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param cap the cap
     * @param prices prices for several numbers of caps, at least one; each without a missing line
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     * @throws IllegalArgumentException if a price is not complete: it can't be offered
     */
    public static void write(Path file, Cap cap, List<Price> prices, PrintSetup setup, JobTag tag,
            ShopFormat format) throws IOException {
        if (prices.isEmpty() || prices.stream().anyMatch(price -> price.total().isEmpty())) {
            throw new IllegalArgumentException("a price that is not complete can't be quoted");
        }
        try (PdfBook book = new PdfBook("Quote", tag, setup.scale())) {
            book.write(Flow.letter(new QuoteBook(cap, prices, format).blocks(), setup.paper(), "Quote",
                    "round rooftop exhaust cap", book.typeface()), file);
        }
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        // a sample's prices never leave without saying so
        if (!prices.get(0).note().isBlank()) {
            blocks.add(Block.Paragraph.plain(prices.get(0).note()));
        }
        blocks.add(new Block.Paragraph("Quote no. ________________    Date ________________    Valid until ________________",
                LINE_MM, LINE_SPACE_MM));
        blocks.add(new Block.Paragraph("From: " + BLANK, LINE_MM, LINE_SPACE_MM));
        blocks.add(new Block.Paragraph("For: " + cap.job().find(JobInputs.CUSTOMER).filter(text -> !text.isBlank())
                .orElse(BLANK), LINE_MM, LINE_SPACE_MM));
        blocks.add(new Block.Paragraph("Job: " + cap.job().get(JobInputs.NAME), LINE_MM, LINE_SPACE_MM));
        blocks.add(Block.Paragraph.heading("What you get, for each cap"));
        blocks.addAll(TableBlocks.of(List.of(0.35, 0.65), List.of("round rooftop exhaust cap with damper leaves", "as built"),
                scope()));
        blocks.add(Block.Paragraph.heading("Price, in " + prices.get(0).currency()));
        Money money = new Money(prices.get(0).currency());
        blocks.addAll(TableBlocks.of(List.of(0.2, 0.2, 0.2, 0.2, 0.2), List.of("caps ordered together", "before tax", taxName(),
                "total", "total for each cap"),
                prices.stream().map(price -> List.of(Integer.toString(price.caps()), money.plain(price.net()),
                        money.plain(price.tax().amount()),
                        money.plain(price.total()), money.plain(price.each()))).toList()));
        blocks.add(Block.Paragraph.heading("Please note"));
        NOTES.forEach(note -> blocks.add(Block.Paragraph.plain(note)));
        blocks.add(Block.Paragraph.heading("Order"));
        blocks.add(new Block.Paragraph("Delivery ____________________    Payment ____________________    Caps ordered ________",
                LINE_MM, LINE_SPACE_MM));
        blocks.add(new Block.Paragraph("Accepted ______________________________    Name ____________________    Date ____________",
                LINE_MM, 2 * LINE_SPACE_MM));
        return blocks;
    }

    private String taxName() {
        return prices.get(0).tax().name() + " " + String.format(Locale.ROOT, "%.2f", prices.get(0).tax().quantity())
                .replaceAll("\\.?0+$", "") + " %";
    }

    private List<List<String>> scope() {
        int leaves = 2 * cap.leaves().size();
        return List.of(
                List.of("for a stack of outside diameter", length(cap.job().get(StackInputs.OUTSIDE_DIAMETER).mm())),
                List.of("height over all", length(cap.heightMm())),
                List.of("largest width", length(cap.widthMm())),
                List.of("mass", "about " + mass(cap.massKg())),
                List.of("leaves", leaves + " damper leaves of " + Sheets.name(cap.leaves().get(0).sheet(), format)
                        + "; moving air lifts them, their own weight shuts them"),
                List.of("lift", "the last leaf begins to lift at about "
                        + Measure.LIFT_PRESSURE.quantity().words(Measure.LIFT_PRESSURE.of(cap), format) + " (estimate)"),
                List.of("rain", "a gutter under every hinge line drains outside the stack"),
                List.of("sleeve", Sheets.name(cap.sleeve().sheet(), format)),
                List.of("hood", Sheets.name(cap.hood().sheet(), format) + " on " + cap.standoff().count() + " riveted standoffs"),
                List.of("rods and bushings", cap.rods().get(0).metal().word() + " rods, " + length(cap.rods().get(0).diameterMm())
                        + " diameter, in flanged bushings"));
    }

    /** To the shop's fraction or a whole millimetre: a customer has no use for thousandths. */
    private String length(double mm) {
        return format.system() == UnitSystem.INCH ? format.plain(Length.ofMm(mm)) + " in" : Math.round(mm) + " mm";
    }

    private String mass(double kg) {
        return new ShopFormat(format.system(), format.denominator()).mass(kg).replaceAll("\\.\\d+", "");
    }
}

package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.capwright.export.JobTag;
import org.capwright.export.Money;
import org.capwright.export.Sheets;
import org.capwright.job.JobInputs;
import org.capwright.job.StackInputs;
import org.capwright.part.Cap;
import org.capwright.price.Price;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Writes the quote for the customer: what he gets, what it costs, nothing of how the price came about. */
public final class QuoteBook {
    private static final List<String> NOTES = List.of(
            "Delivery, installation, roof work and anchorage are not included unless a line above names them.",
            "The cap is not a listed chimney or vent cap and is not for grease or for flues of burning appliances. Wind and snow loads, anchorage and"
                    + " fire rules belong to local codes and licensed practice.",
            "The size rests on the stack's outside diameter as stated above. Please measure it round with a tape before you order.");

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
    public static void write(Path file, Cap cap, List<Price> prices, PrintSetup setup, JobTag tag, ShopFormat format) throws IOException {
        if (prices.isEmpty() || prices.stream().anyMatch(price -> price.total().isEmpty())) {
            throw new IllegalArgumentException("a price that is not complete can't be quoted");
        }
        try (PdfBook book = new PdfBook("Quote", tag, setup.scale())) {
            book.write(Flow.pages(new QuoteBook(cap, prices, format).blocks(), setup.paper(), "Quote", "round rooftop exhaust cap", book.typeface()), file);
        }
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        // a sample's prices never leave without saying so
        if (!prices.get(0).note().isBlank()) {
            blocks.add(Block.Paragraph.plain(prices.get(0).note()));
        }
        cap.job().find(JobInputs.CUSTOMER).filter(text -> !text.isBlank()).ifPresent(text -> blocks.add(Block.Paragraph.plain("For: " + text)));
        blocks.add(Block.Paragraph.plain("Job: " + cap.job().get(JobInputs.NAME)));
        blocks.add(Block.Paragraph.heading("What you get"));
        blocks.addAll(TableBlocks.of(List.of(0.35, 0.65), List.of("", ""), scope()));
        blocks.add(Block.Paragraph.heading("Price"));
        Money money = new Money(prices.get(0).currency());
        blocks.addAll(TableBlocks.of(List.of(0.16, 0.21, 0.21, 0.21, 0.21), List.of("caps", "before tax", prices.get(0).tax().name(), "total", "each"),
                prices.stream().map(price -> List.of(Integer.toString(price.caps()), money.of(price.net()), money.of(price.tax().amount()),
                        money.of(price.total()), money.of(price.each()))).toList()));
        blocks.add(Block.Paragraph.heading("Please note"));
        NOTES.forEach(note -> blocks.add(Block.Paragraph.plain(note)));
        return blocks;
    }

    private List<List<String>> scope() {
        return List.of(
                List.of("for a stack of outside diameter", length(cap.job().get(StackInputs.OUTSIDE_DIAMETER).mm())),
                List.of("height over all, largest width", length(cap.heightMm()) + ", " + length(cap.widthMm())),
                List.of("mass, about", format.mass(cap.massKg())),
                List.of("leaves", 2 * cap.leaves().size() + " damper leaves that the air opens and their own weight closes"),
                List.of("sleeve", Sheets.name(cap.sleeve().sheet(), format)),
                List.of("hood", Sheets.name(cap.hood().sheet(), format)),
                List.of("leaves of", Sheets.name(cap.leaves().get(0).sheet(), format)),
                List.of("rods, bushings", cap.rods().get(0).metal().word() + " rods of " + length(cap.rods().get(0).diameterMm()) + " in flanged bushings"));
    }

    private String length(double mm) {
        return format.length(Length.ofMm(mm));
    }
}

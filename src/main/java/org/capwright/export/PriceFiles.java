package org.capwright.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.capwright.blank.Writing;
import org.capwright.export.pdf.NestBook;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.PriceBook;
import org.capwright.export.pdf.PrintSetup;
import org.capwright.export.pdf.QuoteBook;
import org.capwright.part.Cap;
import org.capwright.price.Price;
import org.capwright.units.ShopFormat;

/** Writes the inner sheet with everything, and the customer's quote where every price is known. */
public final class PriceFiles {
    private PriceFiles() {
    }

    /**
     * Writes {@code inner-sheet.pdf}, {@code nested-sheets.pdf} of the first price, and {@code quote.pdf} where nothing is
     * missing.
     *
     * @param folder an empty folder
     * @param cap the cap
     * @param prices its prices, by number of caps, at least one
     * @param paper the paper
     * @param tag the job
     * @throws IOException if a file can't be written
     */
    public static void write(Path folder, Cap cap, List<Price> prices, Paper paper, JobTag tag) throws IOException {
        ShopFormat format = Writing.of(cap).format();
        PrintSetup setup = PrintSetup.of(paper);
        NestBook.write(folder.resolve("nested-sheets.pdf"), prices.get(0).plan(), setup, tag, format);
        PriceBook.write(folder.resolve("inner-sheet.pdf"), prices, setup, tag, format);
        if (prices.stream().allMatch(price -> price.total().isPresent())) {
            QuoteBook.write(folder.resolve("quote.pdf"), cap, prices, setup, tag, format);
        }
    }
}

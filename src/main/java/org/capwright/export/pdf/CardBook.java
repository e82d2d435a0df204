package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.capwright.blank.Card;
import org.capwright.export.JobTag;

/** Writes gauges at true size, several on a page. */
public final class CardBook {
    private CardBook() {
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param cards the gauges
     * @param advice what holds for all of them
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @throws IOException if it can't be written
     */
    public static void write(Path file, List<Card> cards, String advice, PrintSetup setup, JobTag tag) throws IOException {
        List<SharedPages.Item> items = new ArrayList<>();
        for (Card card : cards) {
            List<String> captions = new ArrayList<>(List.of(card.name()));
            captions.addAll(card.notes());
            items.add(new SharedPages.Item(card.name(), captions, card.drawing(), card.drawing().bounds()));
        }
        try (PdfBook book = new PdfBook("Cards", tag, setup.scale())) {
            book.write(SharedPages.pages(items, setup.paper(), book.typeface(), "Cards, true size", advice).stream()
                    .map(SharedPages.Shared::page).toList(), file);
        }
    }
}

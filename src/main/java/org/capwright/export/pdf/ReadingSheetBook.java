package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.capwright.export.JobTag;
import org.capwright.fitup.ReadingSheet;
import org.capwright.fitup.SheetLine;
import org.capwright.part.Cap;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Writes the reading sheet: what to measure, what it is as drawn, and room to write. */
public final class ReadingSheetBook {
    private static final String ROOM = "____________________";

    private ReadingSheetBook() {
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param cap the cap as drawn, with the readings of its job so far
     * @param paper the paper to print on
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, Cap cap, Paper paper, JobTag tag, ShopFormat format) throws IOException {
        try (PdfBook book = new PdfBook("Reading sheet", tag)) {
            book.write(Flow.pages(blocks(cap, format), paper, "Reading sheet",
                    "azimuth from +x (across the rods) towards +y, seen from above",
                    book.typeface()), file);
        }
    }

    private static List<Block> blocks(Cap cap, ShopFormat format) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Paragraph.plain("Measured on ____________________ by ____________________ with ____________________"));
        blocks.add(Block.Paragraph.plain("Leaves pinch and sheet edges cut: lock the fan out, wear gloves. Leave out what you can't reach."));
        List<SheetLine> lines = ReadingSheet.of(cap);
        for (String section : lines.stream().map(SheetLine::section).distinct().toList()) {
            List<List<String>> rows = lines.stream().filter(line -> line.section().equals(section))
                    .map(line -> List.of(line.words(), format.length(Length.ofMm(line.drawnMm())), line.typed().isEmpty() ? ROOM
                    : line.typed())).toList();
            blocks.add(Block.Paragraph.heading(section.substring(0, 1).toUpperCase(Locale.ROOT) + section.substring(1)));
            blocks.addAll(TableBlocks.of(List.of(0.55, 0.2, 0.25), List.of("what", "as drawn", "reading"), rows));
        }
        return blocks;
    }
}

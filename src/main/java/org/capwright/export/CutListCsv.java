package org.capwright.export;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.capwright.stock.CutItem;
import org.capwright.stock.CutList;
import org.capwright.stock.HardwareItem;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Writes the cut list as CSV (RFC 4180): blanks with their sizes in the shop's units and in millimetres, then hardware. */
public final class CutListCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setHeader("item", "part", "quantity", "metal", "gauge",
            "thickness mm", "length", "width", "length mm", "width mm", "mass each kg", "size", "notes").get();

    private CutListCsv() {
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param list the list
     * @param format how lengths are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, CutList list, ShopFormat format) throws IOException {
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8); CSVPrinter csv = new CSVPrinter(out, FORMAT)) {
            for (CutItem item : list.items()) {
                csv.printRecord(item.number(), item.part(), item.quantity(), item.sheet().metal().word(),
                        item.sheet().gauge().isPresent() ? item.sheet().gauge().getAsInt() : "",
                        decimal(item.sheet().thicknessMm()),
                        format.length(Length.ofMm(item.lengthMm())), format.length(Length.ofMm(item.widthMm())),
                        decimal(item.lengthMm()), decimal(item.widthMm()), decimal(item.massKg()), "",
                        item.grain() + "; " + String.join("; ", item.notes()));
            }
            int number = list.items().size();
            for (HardwareItem item : list.hardware()) {
                csv.printRecord(++number, item.name(), item.quantity(), "", "", "", "", "", "", "", "", item.size(), item.note());
            }
        }
    }

    private static String decimal(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}

package org.capwright.export.pdf;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.capwright.export.JobTag;
import org.capwright.export.Sheets;
import org.capwright.layout.Layout;
import org.capwright.layout.PartList;
import org.capwright.layout.View;
import org.capwright.metal.Metal;
import org.capwright.units.ShopFormat;

/** Writes the layout: each view on a page, then the parts. */
public final class LayoutBook {
    private LayoutBook() {
    }

    /**
     * Writes the file.
     *
     * @param file where to
     * @param layout views and parts
     * @param setup the paper to print on and the printer's error on it
     * @param tag the job
     * @param format how numbers are printed
     * @throws IOException if it can't be written
     */
    public static void write(Path file, Layout layout, PrintSetup setup, JobTag tag, ShopFormat format) throws IOException {
        try (PdfBook book = new PdfBook("Layout", tag, setup.scale())) {
            List<PrintPage> pages = new ArrayList<>();
            for (View view : layout.views()) {
                pages.add(ViewPage.of(view, setup.paper(), format, book.typeface()));
            }
            List<List<String>> rows = layout.parts().items().stream().map(item -> row(item, format)).toList();
            pages.addAll(Flow.pages(TableBlocks.of(List.of(0.08, 0.22, 0.12, 0.58), List.of("no.", "part", "quantity",
                    "from"), rows),
                    setup.paper(), "Layout: parts", "numbers as in the views; the cut list says more of the hardware",
                            book.typeface()));
            book.write(pages, file);
        }
    }

    private static List<String> row(PartList.Item item, ShopFormat format) {
        String from = item.sheet().map(sheet -> Sheets.name(sheet, format)).orElse(item.metal().map(Metal::word).orElse("bought"))
                + (item.size().isEmpty() ? "" : ", " + item.size());
        return List.of(Integer.toString(item.number()), item.name(), Integer.toString(item.quantity()), from);
    }
}

package org.capwright.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.capwright.blank.Writing;
import org.capwright.export.JobTag;
import org.capwright.export.PriceFiles;
import org.capwright.part.Cap;
import org.capwright.price.Price;
import org.capwright.price.Pricing;
import org.capwright.stock.KeptNests;
import org.capwright.stock.ShopJobs;
import org.capwright.stock.StockPlan;
import org.capwright.stock.nest.Placement;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.store.RateFiles;
import org.capwright.store.StockFiles;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nested sheets, quote and inner sheet of the demos, read back. */
class NestBookTest {
    private static final Pattern SCALE = Pattern.compile("scale 1:(\\d+), not true size");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class"})
    void sheetsAreDrawnToTheirScaleAndNothingOverlaps(String demo) throws IOException {
        Cap cap = ShopJobs.cap(demo);
        List<Price> prices = Pricing.of(cap, List.of(1, 5), StockFiles.sample(), RateFiles.sample(), ShopJobs.work(0.5),
                new KeptNests());
        PriceFiles.write(folder, cap, prices, Paper.of(Writing.of(cap).format().system()),
                new JobTag(demo, "", "0123abcd", List.of()));
        for (String name : List.of("nested-sheets.pdf", "quote.pdf", "inner-sheet.pdf")) {
            assertThat(NoOverlapTest.overlaps(folder.resolve(name))).isEmpty();
        }
        try (PDDocument document = Loader.loadPDF(folder.resolve("nested-sheets.pdf").toFile())) {
            List<SheetLayout> layouts = layouts(prices.get(0).plan());
            for (int i = 0; i < layouts.size(); i++) {
                page(document, i, layouts.get(i));
            }
        }
    }

    private static List<SheetLayout> layouts(StockPlan plan) {
        return plan.sheets().stream().flatMap(group -> group.nest().sheets().stream()).toList();
    }

    private static void page(PDDocument document, int index, SheetLayout layout) throws IOException {
        List<String> words = Texts.of(document, index + 1).stream().map(Texts.Text::words).toList();
        Matcher scale = SCALE.matcher(words.stream().collect(Collectors.joining("\n")));
        assertThat(scale.find()).isTrue();
        double by = Double.parseDouble(scale.group(1));
        List<PageStrokes.Line> lines = PageStrokes.lines(document.getPage(index));
        assertThat(lines).anyMatch(line -> Math.abs(line.from().distance(line.to()) - layout.size().lengthMm() / by) < 0.01);
        assertThat(lines).anyMatch(line -> Math.abs(line.from().distance(line.to()) - layout.size().widthMm() / by) < 0.01);
        for (Placement one : layout.placements()) {
            double wide = one.outline().bounds().width() / by;
            // what is wide enough carries its name
            if (wide > 30 && one.outline().bounds().height() / by > 8) {
                assertThat(words).anyMatch(text -> text.endsWith(one.piece().name()));
            }
        }
        for (int number = 1; number <= layout.placements().size(); number++) {
            String begin = Integer.toString(number);
            assertThat(words).as("number %s on page %s", begin, index + 1)
                    .anyMatch(text -> text.equals(begin) || text.startsWith(begin + "  "));
        }
    }
}

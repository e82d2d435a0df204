package org.capwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.capwright.job.RefusedJobException;
import org.capwright.metal.Metal;
import org.capwright.price.Operation;
import org.capwright.stock.HardwareKind;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopFilesTest {
    private static final String STOCK = """
            {"capwrightStock": 1, "units": "in", "currency": "EUR",
             "layout": {"spacing": "1/4", "margin": "6 mm", "leastRemnant": "12 in", "keepGrain": "yes", "remnantsFirst": "no"},
             "saw": {"kerf": "1/8 in"},
             "sheets": [{"metal": "galvanized", "gauge": 18, "length": "96 in", "width": "48", "perKg": 2},
                        {"metal": "aluminium", "thickness": "1.5 mm", "length": "2 m", "width": "1 m"}],
             "remnants": [{"metal": "galvanized", "gauge": 18, "length": "30 in", "width": "20 in"}],
             "bars": [{"metal": "stainless 304", "diameter": "1/2 in", "length": "144 in"}],
             "hardware": [{"kind": "rivet", "size": "3/16 in", "price": 0.1}, {"kind": "sealant"}]}""";

    @TempDir
    private Path folder;

    @Test
    void aStockFileIsReadAsTyped() throws IOException {
        ShopStock stock = StockFiles.read(file(STOCK));
        assertThat(stock.rules().spacingMm()).isEqualTo(6.35);
        assertThat(stock.rules().marginMm()).isEqualTo(6);
        StockSheet sheet = stock.sheets().get(0);
        assertThat(sheet.sheet().thicknessMm()).isEqualTo(0.0516 * 25.4);
        // 2.4384 m x 1.2192 m x 1.31064 mm x 7850 kg/m3 = 30.587 kg
        assertThat(sheet.priceEach().orElseThrow()).isCloseTo(61.17, Offset.offset(0.01));
        assertThat(stock.sheets().get(1).priceEach()).isEmpty();
        assertThat(stock.sheets().get(2).count()).hasValue(1);
        assertThat(stock.sheets().get(2).remnant()).isTrue();
        assertThat(stock.price(HardwareKind.RIVET, 4.7625)).hasValue(0.1);
        assertThat(stock.price(HardwareKind.RIVET, 4)).isEmpty();
        assertThat(stock.price(HardwareKind.SEALANT, 0)).isEmpty();
        assertThat(stock.bars().get(0).price()).isEmpty();
    }

    @Test
    void everyProblemIsToldWithFieldRangeAndRemedy() throws IOException {
        Path file = file(STOCK.replace("\"gauge\": 18, \"length\": \"96 in\"", "\"gauge\": 9, \"length\": \"no\"")
                .replace("\"price\": 0.1", "\"price\": -1, \"colour\": \"red\"").replace("\"keepGrain\": \"yes\"", "\"keepGrain\": \"maybe\""));
        assertThatThrownBy(() -> StockFiles.read(file)).isInstanceOf(RefusedJobException.class).message().contains(
                "sheets[0].gauge: \"9\": it must be a whole number from 10 to 28. Type such a number.",
                "sheets[0].length: \"no\":", "Type a length such as 48 in or 1250 mm.",
                "hardware[0].price: \"-1\": it must be at least 0. Type a larger number, or leave it out where it is not known.",
                "hardware[0].colour: \"red\": a stock file has no such field. Take it out, or mend its name.",
                "layout.keepGrain: \"maybe\": it must be one of yes, no. Choose one of them.");
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        ShopStock sample = StockFiles.sample();
        Path file = folder.resolve("stock.json");
        StockFiles.write(file, sample);
        ShopStock read = StockFiles.read(file);
        assertThat(read.sheets()).hasSameSizeAs(sample.sheets());
        assertThat(read.hardware()).hasSameSizeAs(sample.hardware());
        StockFiles.write(folder.resolve("again.json"), read);
        assertThat(folder.resolve("again.json")).hasSameTextualContentAs(file);

        Path rates = folder.resolve("rates.json");
        RateFiles.write(rates, RateFiles.sample());
        assertThat(RateFiles.read(rates)).isEqualTo(RateFiles.sample());
    }

    @Test
    void samplesSayThatTheyAre() {
        assertThat(StockFiles.sample().note()).startsWith("SAMPLE. Every price here is invented");
        assertThat(RateFiles.sample().note()).startsWith("SAMPLE. Every rate here is invented");
        assertThat(StockFiles.sample().sheets()).anyMatch(sheet -> sheet.sheet().metal() == Metal.ALUMINIUM);
        assertThat(RateFiles.sample().rate(Operation.BEND).minutesEach()).isPresent();
    }

    @Test
    void aRateCardMayLeaveOutWhatIsNotKnown() throws IOException {
        assertThat(RateFiles.read(file("{\"capwrightRates\": 1, \"labourPerHour\": 50}")).rate(Operation.BEND).minutesEach()).isEmpty();
        assertThatThrownBy(() -> RateFiles.read(file("{\"remnantCreditPercent\": 120}")))
                .hasMessage("remnantCreditPercent: \"120.0\": it must be 0 to 100. Type a smaller number.");
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("typed.json"), text);
    }
}

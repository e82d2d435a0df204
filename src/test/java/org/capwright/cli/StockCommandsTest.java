package org.capwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class StockCommandsTest {
    private static final String DEMO = Path.of("demo-jobs", "kiln-room.json").toString();
    private static final String OTHER = Path.of("demo-jobs", "woodwork-class.json").toString();

    @TempDir
    private Path folder;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void nestPrintsSheetsBoundsAndTheSampleNote() {
        assertThat(run("nest", DEMO, "--seconds", "1")).isEqualTo(0);
        assertThat(out.toString()).contains("galvanized 18 ga (0.0516 in): 1 sheet; no layout can use fewer than 1",
                "sheets 6, at least 6 whatever the layout",
                "SAMPLE. Every price here is invented", "stainless 304 round bar, diameter 1/2 in: no plan costs less");
    }

    @Test
    void nestedSheetsAreWrittenAtTrueSize() throws IOException {
        assertThat(run("nest", DEMO, OTHER, "--seconds", "60", "--to", folder.resolve("sheets").toString(), "--json"))
                .isEqualTo(0);
        JsonNode json = JsonMapper.shared().readTree(out.toString());
        int sheets = json.get("sheets").size();
        assertThat(figure(json, "stock.sheets")).isEqualTo(sheets);
        assertThat(json.get("sheets").get(0).get("pieces").get(0).get("job").stringValue()).isNotEmpty();
        try (var files = Files.list(folder.resolve("sheets"))) {
            assertThat(files.count()).isEqualTo(2L * sheets + 1);
        }
        assertThat(json.get("settled").booleanValue()).isTrue();
        assertThat(json.get("seed").intValue()).isEqualTo(1);
        assertThat(json.get("groups").get(0).get("bound").intValue()).isPositive();
        assertThat(json.get("bars").get(0).get("cuts").size()).isPositive();
        String svg = Files.readString(folder.resolve("sheets/sheet-1.svg"));
        // the sheet and 5 mm round it
        assertThat(svg).contains("width=\"2448.4000mm\"").contains(">sleeve<");
        assertThat(Files.readString(folder.resolve("sheets/sheet-1.dxf"))).contains("sheet 1, galvanized 18 ga");
    }

    @Test
    void priceGivesItsFigures() {
        assertThat(run("price", DEMO, "--seconds", "0.5", "--json")).isEqualTo(0);
        JsonNode json = JsonMapper.shared().readTree(out.toString());
        double total = figure(json, "price.total");
        assertThat(total).isGreaterThan(figure(json, "price.material") + figure(json, "price.labour"));
        assertThat(figure(json, "stock.cost")).isPositive();
        assertThat(figure(json, "stock.bound")).isLessThanOrEqualTo(figure(json, "stock.sheets"));
        assertThat(figure(json, "stock.use")).isBetween(0.0, 1.0);
        assertThat(json.get("caps")).hasSize(4);
        assertThat(json.get("caps").get(3).get("each").doubleValue()).isLessThan(total);
    }

    @Test
    void theQuoteShowsNothingOfTheInnerSheet() throws IOException {
        assertThat(run("price", DEMO, "--seconds", "0.5", "--to", folder.toString())).isEqualTo(0);
        String quote = text(folder.resolve("quote.pdf").toFile());
        String inner = text(folder.resolve("inner-sheet.pdf").toFile());
        String total = out.toString().lines().filter(line -> line.startsWith("caps 1:")).findFirst().orElseThrow().split(" ")[3];
        assertThat(quote).contains(total, "SAMPLE", "damper leaves", "licensed practice")
                .doesNotContain("margin", "overhead", "labour", "set-up", "min each");
        assertThat(inner).contains(total, "SAMPLE", "margin", "overhead", "set-up, bending");
    }

    @Test
    void theSheetsAreDrawnWithTheirParts() throws IOException {
        assertThat(run("nest", DEMO, "--seconds", "1", "--to", folder.resolve("sheets").toString())).isEqualTo(0);
        String sheets = text(folder.resolve("sheets/nested-sheets.pdf").toFile());
        assertThat(sheets).contains("Sheet 1 of 6: galvanized 18 ga (0.0516 in), 96 in x 48 in", "scale 1:12, not true size",
                "1  sleeve", "remnant", "along the grain",
                "shear cut, in this order", "stamp ", "SAMPLE", "licensed practice", "stainless 304 round bar");
    }

    /** Without time the clock ends the search, and both forms say so. */
    @Test
    void aSearchCutShortSaysSo() {
        assertThat(run("nest", DEMO, "--seconds", "0", "--seed", "7")).isEqualTo(0);
        assertThat(out.toString()).contains("the clock ended the search (seed 7), another run may give another layout");
        out.getBuffer().setLength(0);
        assertThat(run("nest", DEMO, "--seconds", "0", "--seed", "7", "--json")).isEqualTo(0);
        JsonNode json = JsonMapper.shared().readTree(out.toString());
        assertThat(json.get("settled").booleanValue()).isFalse();
        assertThat(json.get("seed").intValue()).isEqualTo(7);
    }

    @Test
    void figuresOfStockAndPriceStandAmongTheOthers() {
        assertThat(run("figures", DEMO, "--seconds", "0.5")).isEqualTo(0);
        JsonNode json = JsonMapper.shared().readTree(out.toString());
        assertThat(json.get("note").stringValue()).contains("SAMPLE. Every price here is invented",
                "SAMPLE. Every rate here is invented");
        assertThat(figure(json, "stock.sheets")).isGreaterThanOrEqualTo(figure(json, "stock.bound"));
        assertThat(figure(json, "price.total")).isGreaterThan(figure(json, "price.material") + figure(json, "price.labour"));
        assertThat(figure(json, "stock.use")).isBetween(0.0, 1.0);
        assertThat(figure(json, "stock.cost")).isPositive();
        assertThat(figure(json, "cap.height")).isPositive();
    }

    /** A stock of narrow sheets: the same fouls from check, figures and cut, with what would do. */
    @Test
    void checksAgainstAStockFileStandAmongTheOthers() throws IOException {
        Path stock = folder.resolve("stock.json");
        Files.writeString(stock, Files.readString(Path.of("docs/samples/sample-stock.json")).replace("48 in", "9 in")
                .replace("60 in", "9 in"));
        assertThat(run("check", DEMO)).isEqualTo(0);
        assertThat(run("check", DEMO, "--stock", stock.toString())).isEqualTo(1);
        assertThat(out.toString()).contains("sheet width for sleeve", "or larger would do",
                "put a sheet that is large enough into the stock file");
        assertThat(run("cut", DEMO, "--stock", stock.toString(), "--to", folder.resolve("cut").toString())).isEqualTo(1);
        assertThat(err.toString()).contains("foul: sheet width for sleeve");
        out.getBuffer().setLength(0);
        assertThat(run("figures", DEMO, "--stock", stock.toString(), "--seconds", "0.2")).isEqualTo(0);
        assertThat(out.toString()).contains("\"stock.sleeve.width\"", "put a sheet that is large enough into the stock file");
    }

    @Test
    void alternativesThatCannotExistSayWhy() throws IOException {
        Path job = Files.writeString(folder.resolve("job.json"),
                "{\"stack\": {\"outsideDiameter\": \"18 in\"}, \"hood\": {\"gauge\": \"27\", \"annulus\": \"3/4 in\"}}");
        assertThat(run("price", job.toString(), "--compare", "--seconds", "0.5")).isEqualTo(0);
        assertThat(out.toString()).contains("hood 29 ga             can't exist", "hood.gauge:",
                "annulus 1/4 in         can't exist", "hood.annulus:",
                "no price: missing");
        out.getBuffer().setLength(0);
        assertThat(run("price", job.toString(), "--compare", "--seconds", "0.5", "--json")).isEqualTo(0);
        JsonNode ways = JsonMapper.shared().readTree(out.toString()).get("alternatives");
        boolean told = false;
        for (JsonNode way : ways) {
            assertThat(way.has("massKg")).isEqualTo(way.get("possible").booleanValue());
            assertThat(way.has("total")).isNotEqualTo(way.has("reason"));
            told |= way.get("name").stringValue().equals("hood 29 ga") && !way.get("possible").booleanValue()
                    && way.get("reason").stringValue().startsWith("hood.gauge: \"29\":");
        }
        assertThat(told).isTrue();
    }

    @Test
    void withoutAPriceThereIsNoQuote() throws IOException {
        Path stock = folder.resolve("stock.json");
        Files.writeString(stock, Files.readString(Path.of("docs/samples/sample-stock.json"))
                .replaceAll(",\\s*\"perKg\": [0-9.]+", ""));
        Path to = folder.resolve("out");
        assertThat(run("price", DEMO, "--seconds", "0.5", "--stock", stock.toString(), "--to", to.toString())).isEqualTo(0);
        assertThat(out.toString()).contains("missing: galvanized 18 ga", "caps 1: missing in all",
                "No quote was written: a price is missing.");
        assertThat(to.resolve("inner-sheet.pdf")).exists();
        assertThat(to.resolve("quote.pdf")).doesNotExist();
    }

    @Test
    void aBlankWithoutASheetIsAFoul() throws IOException {
        Path stock = folder.resolve("stock.json");
        Files.writeString(stock, Files.readString(Path.of("docs/samples/sample-stock.json")).replace("48 in", "9 in")
                .replace("60 in", "9 in"));
        assertThat(run("nest", DEMO, "--seconds", "0.2", "--stock", stock.toString())).isEqualTo(1);
        assertThat(out.toString()).contains("foul: sheet width for sleeve").contains("no sheet for 1 sleeve");
    }

    @Test
    void aBadStockFileIsRefused() throws IOException {
        Path stock = Files.writeString(folder.resolve("stock.json"), "{\"sheets\": 3}");
        assertThat(run("nest", DEMO, "--stock", stock.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("currency: it must be given. Add it.");
        assertThat(run("price", DEMO, "--rates", folder.resolve("none.json").toString())).isEqualTo(3);
    }

    private static double figure(JsonNode json, String id) {
        for (JsonNode figure : json.get("figures")) {
            if (figure.get("id").stringValue().equals(id)) {
                return figure.get("value").doubleValue();
            }
        }
        throw new AssertionError("no figure " + id);
    }

    private static String text(File file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private int run(String... words) {
        return Main.run(words, new PrintWriter(out, true), new PrintWriter(err, true));
    }
}

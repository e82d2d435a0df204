package org.capwright.desk.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.desk.session.StockDesk.Wish;
import org.capwright.fitup.FitUp;
import org.capwright.fitup.SheetLine;
import org.capwright.fitup.tolerance.Progress;
import org.capwright.fitup.tolerance.ToleranceRun;
import org.capwright.job.GutterInputs;
import org.capwright.job.HoodInputs;
import org.capwright.job.RefusedJobException;
import org.capwright.metal.Metal;
import org.capwright.price.Price;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockSheet;
import org.capwright.store.DeskFolder;
import org.capwright.store.JobFiles;
import org.capwright.store.StockFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window's views of fit-up, stock and price show, without a screen: every request is answered on the spot. */
class DesksTest {
    private static final Path DEMO = Path.of("demo-jobs", "kiln-room.json");

    @TempDir
    private Path folder;
    private DeskFolder desk;
    private Session session;

    @BeforeEach
    void open() {
        desk = new DeskFolder(folder);
        session = new Session(JobFiles.read(DEMO), Shop.of(desk));
    }

    private static Latest atOnce() {
        return new Latest(Runnable::run, Runnable::run);
    }

    private static SheetLine line(FitDesk fit, String path) {
        return fit.linesProperty().get().stream().filter(one -> one.path().equals(path)).findFirst().orElseThrow();
    }

    /** Leaves no sheet and no remnant of a gauge. */
    private void removeSheets(String gauge) {
        ShopFile<ShopStock> file = session.shop().stock();
        for (String list : List.of("sheets", "remnants")) {
            for (int i = file.textProperty().get().listSize(list) - 1; i >= 0; i--) {
                if (file.textProperty().get().at(list + "[" + i + "].gauge").filter(gauge::equals).isPresent()) {
                    file.remove(list, i);
                }
            }
        }
    }

    @Test
    void nothingIsFittedWhileNobodyLooks() {
        FitDesk fit = new FitDesk(session, atOnce());
        assertThat(fit.fittedProperty().get()).isNull();
        fit.watchedProperty().set(true);
        assertThat(fit.measured()).isTrue();
        assertThat(fit.fittedProperty().get().fitUp().verdict()).isEqualTo(FitUp.of(session.solvedProperty().get().cap().job()).verdict());
    }

    @Test
    void aReadingIsTypedUndoneAndRefused() {
        FitDesk fit = new FitDesk(session, atOnce());
        fit.watchedProperty().set(true);
        double before = fit.fittedProperty().get().fitUp().work().hood().radiusMm();
        String path = "fit.hoodBore[0].diameter";
        fit.type(line(fit, path), "21 in");
        assertThat(fit.fittedProperty().get().fitUp().work().hood().radiusMm()).isLessThan(before);
        fit.type(line(fit, path), "twenty");
        assertThat(fit.refused(path)).hasValueSatisfying(words -> assertThat(words).contains("can't be read"));
        assertThat(fit.fittedProperty().get()).isNotNull();
        session.undo();
        assertThat(fit.refused(path)).isEmpty();
        assertThat(fit.fittedProperty().get().fitUp().work().hood().radiusMm()).isCloseTo(before, within(1e-12));
    }

    @Test
    void aReadingBringsItsAzimuthAlong() {
        FitDesk fit = new FitDesk(session, atOnce());
        fit.watchedProperty().set(true);
        SheetLine sleeve = line(fit, "fit.sleeve[1].diameter");
        fit.type(sleeve, "18 1/4 in");
        assertThat(session.textProperty().get().at("fit.sleeve[1].azimuth")).contains("90.0 deg");
        fit.type(line(fit, "fit.sleeve[1].diameter"), "");
        assertThat(session.textProperty().get().at("fit.sleeve[1].diameter")).isEmpty();
    }

    @Test
    void aToleranceRunIsTheSameAsTheCommands() {
        ToleranceDesk tolerance = new ToleranceDesk(session, atOnce());
        tolerance.start(500, 7);
        ToleranceRun run = tolerance.runProperty().get();
        assertThat(run.share()).isEqualTo(ToleranceRun.of(session.solvedProperty().get().cap(), 500, 7,
                Progress.NONE).orElseThrow().share());
        assertThat(tolerance.progressProperty().get()).isNegative();
        session.type(HoodInputs.ANNULUS, "3 in");
        assertThat(tolerance.runProperty().get()).as("a run of another cap").isNull();
    }

    @Test
    void sheetsFollowTheJobAndTheWish() {
        StockDesk stock = new StockDesk(session, atOnce());
        stock.watchedProperty().set(true);
        stock.wishProperty().set(new Wish(1, 0.1, 1, List.of()));
        int one = stock.nestedProperty().get().plan().orElseThrow().sheetCount();
        stock.wishProperty().set(new Wish(5, 0.1, 1, List.of(Path.of("demo-jobs", "bakery-oven-room.json"))));
        assertThat(stock.nestedProperty().get().plan().orElseThrow().sheetCount()).isGreaterThan(one);
        assertThat(stock.nestedProperty().get().plan().orElseThrow().jobs()).hasSize(2);
        assertThat(stock.searchingProperty().get()).isFalse();
    }

    @Test
    void aHoodLongerThanAnySheetIsNestedInPiecesAndTheJobCanBeToldSo() {
        StockDesk stock = new StockDesk(session, atOnce());
        stock.wishProperty().set(new Wish(1, 0.1, 1, List.of()));
        stock.watchedProperty().set(true);
        assertThat(stock.nestedProperty().get().split()).isEmpty();
        removeSheets("22");
        session.shop().stock().add("sheets", Map.of("metal", Metal.GALVANIZED.word(), "gauge", "22", "length", "48 in", "width",
                "48 in"));
        Map<String, String> split = stock.nestedProperty().get().split();
        assertThat(split).containsEntry(HoodInputs.PIECES.path(), "2");
        session.type(split);
        assertThat(stock.nestedProperty().get().split()).isEmpty();
    }

    @Test
    void aBlankThatFitsOnNoSheetIsAFoulCheck() {
        ShopFile<ShopStock> file = session.shop().stock();
        removeSheets("20");
        List<Check> fouls = session.solvedProperty().get().checks().stream().filter(check -> check.verdict() == Verdict.FOUL).toList();
        assertThat(fouls).isNotEmpty().allSatisfy(check -> assertThat(check.id()).startsWith("stock.leaf"));
        file.undo();
        file.redo();
        assertThat(file.problemsProperty().get()).isEmpty();
    }

    @Test
    void pricesFollowTheRatesWithoutNestingAgain() {
        PriceDesk price = new PriceDesk(session, atOnce(), atOnce());
        price.watchedProperty().set(true);
        List<Price> before = price.pricesProperty().get();
        assertThat(before).extracting(Price::caps).isEqualTo(PriceDesk.CAPS);
        session.shop().rates().type("labourPerHour", "100");
        List<Price> after = price.pricesProperty().get();
        assertThat(after.get(0).total().orElseThrow()).isGreaterThan(before.get(0).total().orElseThrow());
        assertThat(after.get(0).plan()).isSameAs(before.get(0).plan());
        session.shop().rates().type("labourPerHour", "");
        assertThat(price.pricesProperty().get().get(0).total()).isEmpty();
    }

    @Test
    void aGaugeChangesThePrice() {
        PriceDesk price = new PriceDesk(session, atOnce(), atOnce());
        price.watchedProperty().set(true);
        double before = price.pricesProperty().get().get(0).total().orElseThrow();
        session.type(Map.of("hood.gauge", "18"));
        assertThat(price.pricesProperty().get().get(0).total().orElseThrow()).isNotEqualTo(before);
    }

    @Test
    void theShopsFilesAreKeptAndTheSampleOnlyStandsIn() {
        ShopFile<ShopStock> file = session.shop().stock();
        assertThat(file.sampleProperty().get()).isTrue();
        assertThat(desk.stockFile()).doesNotExist();
        file.add("bars", Map.of("metal", Metal.STAINLESS_304.word(), "diameter", "3/8 in", "length", "100 in"));
        assertThat(file.sampleProperty().get()).isFalse();
        assertThat(Shop.of(desk).stock().valueProperty().get().bars()).hasSameSizeAs(file.valueProperty().get().bars());
    }

    @Test
    void refusedTextStaysAndTheFileDoesNotChange() throws Exception {
        ShopFile<ShopStock> file = session.shop().stock();
        file.type("layout.spacing", "1/4 in");
        byte[] kept = Files.readAllBytes(desk.stockFile());
        file.type("layout.spacing", "wide");
        assertThat(file.textProperty().get().at("layout.spacing")).contains("wide");
        assertThat(file.problemsProperty().get()).singleElement().satisfies(problem -> assertThat(problem.path()).isEqualTo("layout.spacing"));
        assertThat(file.valueProperty().get().rules().spacingMm()).isCloseTo(25.4 / 4, within(1e-9));
        assertThat(Files.readAllBytes(desk.stockFile())).isEqualTo(kept);
    }

    @Test
    void aFileIsTakenWhollyOrNotAtAll() throws Exception {
        Path bad = folder.resolve("bad.json");
        Files.writeString(bad, "{\"capwrightStock\": 1, \"units\": \"in\"}");
        ShopFile<ShopStock> file = session.shop().stock();
        assertThatThrownBy(() -> file.take(bad)).isInstanceOf(RefusedJobException.class);
        assertThat(file.sampleProperty().get()).isTrue();
        Path good = folder.resolve("good.json");
        ShopStock small = StockFiles.sample();
        List<StockSheet> few = Stream.concat(small.sheets().stream().limit(3), Stream.empty()).toList();
        StockFiles.write(good, new ShopStock("ours", "CAD", small.units(), small.rules(), true, false, 3, few, small.bars(),
                small.hardware()));
        file.take(good);
        assertThat(file.valueProperty().get().currency()).isEqualTo("CAD");
        assertThat(file.valueProperty().get().sheets()).hasSize(3);
        file.undo();
        assertThat(file.valueProperty().get().currency()).isEqualTo("USD");
    }

    @Test
    void aFileThatCantBeReadLeavesTheSampleAndSaysSo() throws Exception {
        Files.createDirectories(folder);
        Files.writeString(desk.stockFile(), "not json");
        ShopFile<ShopStock> file = Shop.of(desk).stock();
        assertThat(file.valueProperty().get()).isEqualTo(StockFiles.sample());
        assertThat(file.problemsProperty().get()).hasSize(1);
        assertThat(Files.readString(desk.stockFile())).isEqualTo("not json");
    }

    @Test
    void theFirstTypedGutterIsNotLostWhileStockIsEdited() {
        session.type(GutterInputs.INSIDE_WIDTH, "2 1/2 in");
        session.shop().stock().type("layout.spacing", "1/4 in");
        assertThat(session.textProperty().get().at("gutter.insideWidth")).contains("2 1/2 in");
        assertThat(session.canUndo()).isTrue();
    }
}

package org.capwright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.RandomCaps;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.job.JobReader;
import org.capwright.metal.GaugeTable;
import org.capwright.metal.Metal;
import org.capwright.part.Cap;
import org.capwright.part.Sheet;
import org.capwright.stock.nest.NestCheck;
import org.capwright.stock.nest.NestRules;
import org.capwright.store.StockFiles;
import org.capwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StockPlanTest {
    private static final StockPlan.Options QUICK = ShopJobs.work(1);

    @ParameterizedTest
    @ValueSource(strings = {"kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class"})
    void aDemoIsPlannedWhole(String demo) {
        Cap cap = ShopJobs.cap(demo);
        StockPlan plan = StockPlan.of(List.of(StockJob.of(cap, 1)), StockFiles.sample(), QUICK);

        assertThat(plan.complete()).isTrue();
        assertThat(plan.sheetCount()).isBetween(plan.sheetBound(), plan.sheetBound() + 1);
        assertThat(plan.settled()).isTrue();
        assertThat(plan.sheetPrice()).isPresent();
        double cut = Blanks.of(cap).stream().mapToDouble(blank -> blank.quantity() * blank.massKg()).sum();
        // stock may be a little thicker or thinner than the blank asks for
        assertThat(plan.sheets().stream().mapToDouble(SheetGroup::usedKg).sum()).isCloseTo(cut, Offset.offset(0.03 * cut));
        assertThat(plan.boughtKg()).isGreaterThan(cut);
    }

    /** Seeded shop jobs of 10 to 60 parts on one size of sheet: valid, and one sheet over the bound at most. */
    @Test
    void shopJobsStayWithinOneSheetOfTheBound() {
        for (RandomCaps.Drawn drawn : RandomCaps.of(700, 8)) {
            Random random = new Random(drawn.seed());
            Cap cap = StockFit.split(JobReader.read(drawn.cap().job().text().without("hood.pieces").without("sleeve.pieces"))
                    .orThrow(), everyMetal());
            int each = Blanks.of(cap).stream().mapToInt(Blank::quantity).sum();
            int caps = 1 + random.nextInt(Math.max(1, 60 / each));
            assertThat(each * caps).as("%s", drawn).isBetween(10, 60);
            StockPlan plan = StockPlan.of(List.of(StockJob.of(cap, caps)), everyMetal(), ShopJobs.work(2));
            assertThat(plan.complete()).as("%s", drawn).isTrue();
            for (SheetGroup group : plan.sheets()) {
                assertThat(group.nest().sheets().size()).as("%s, %s", drawn, group.sheet())
                        .isLessThanOrEqualTo(group.nest().bound().orElseThrow().sheets() + 1);
                group.nest().sheets().forEach(sheet -> assertThat(NestCheck.problems(sheet, group.nest().task().rules()))
                        .as("%s", drawn).isEmpty());
            }
        }
    }

    /** One size of sheet in every gauge that random caps use. */
    private static ShopStock everyMetal() {
        List<StockSheet> sheets = new ArrayList<>();
        for (Metal metal : Metal.values()) {
            sheets.add(sheet(metal, 3.175));
            GaugeTable.of(metal).ifPresent(table -> table.gauges().stream().filter(gauge -> gauge >= 14 && gauge <= 24)
                    .forEach(gauge -> sheets.add(sheet(metal, table.thickness(gauge).orElseThrow().mm()))));
        }
        return stock(sheets);
    }

    private static StockSheet sheet(Metal metal, double thicknessMm) {
        return new StockSheet(new Sheet(metal, OptionalInt.empty(), thicknessMm), 3048, 1524, Optional.empty(),
                OptionalInt.empty(), false);
    }

    private static ShopStock stock(List<StockSheet> sheets) {
        List<StockBar> bars = List.of(9.525, 12.7, 15.875).stream()
                .map(diameter -> new StockBar(Metal.STAINLESS_304, diameter, 3657.6, OptionalDouble.empty())).toList();
        return new ShopStock("", "EUR", UnitSystem.METRIC, new NestRules(4.8, 6.4, 300), true, false, 3, sheets, bars, List.of());
    }

    /** What is told on the way is valid, the last told of is kept, and a cancel ends all groups. */
    @Test
    void aCancelEndsTheWholePlan() {
        List<SheetGroup> heard = new ArrayList<>();
        StockPlan.Options options = new StockPlan.Options(100, 600, 3, heard::add, () -> !heard.isEmpty());
        StockPlan plan = StockPlan.of(List.of(StockJob.of(ShopJobs.cap("grain-dryer-hall"), 3)), StockFiles.sample(), options);
        assertThat(plan.settled()).isFalse();
        assertThat(plan.seed()).isEqualTo(3);
        assertThat(heard).hasSize(1);
        assertThat(plan.sheets().get(0).nest().sheets()).isEqualTo(heard.get(0).nest().sheets());
        assertThat(plan.sheets().subList(1, plan.sheets().size())).allMatch(group -> group.nest().sheets().isEmpty());
        heard.forEach(group -> group.nest().sheets().forEach(sheet -> assertThat(NestCheck.problems(sheet, group.nest().task()
                .rules())).isEmpty()));
    }

    @Test
    void twoJobsShareSheets() {
        StockJob one = StockJob.of(ShopJobs.cap("kiln-room"), 1);
        ShopStock shop = StockFiles.sample();
        int apart = 2 * StockPlan.of(List.of(one), shop, QUICK).sheetCount();
        StockPlan together = StockPlan.of(List.of(one, StockJob.of(ShopJobs.cap("kiln-room"), 1)), shop, QUICK);
        assertThat(together.sheetCount()).isLessThan(apart);
        assertThat(together.jobs()).hasSize(2);
    }

    @Test
    void aMissingPriceIsMissing() {
        StockPlan plan = StockPlan.of(List.of(StockJob.of(ShopJobs.cap("kiln-room"), 1)), everyMetal(), QUICK);
        assertThat(plan.complete()).isTrue();
        assertThat(plan.sheetPrice()).isEmpty();
    }

    /** The cylinders of the kiln cap are some 58 and 71 in long: on sheets of 40 in each takes two pieces. */
    @Test
    void cylindersAreSplitForShortSheets() {
        ShopStock shortSheets = stock(everyMetal().sheets().stream()
                .map(one -> new StockSheet(one.sheet(), 1016, 1016, one.price(), one.count(), false)).toList());
        Cap cap = StockFit.split(JobReader.read(ShopJobs.text("kiln-room")).orThrow(), shortSheets);
        assertThat(cap.sleeve().flat().pieces()).isEqualTo(2);
        assertThat(cap.hood().flat().pieces()).isEqualTo(2);
        assertThat(StockFit.misfits(Blanks.of(cap), shortSheets)).isEmpty();
    }

    /** Pieces are shorter, not lower: where no number of them helps, none are made. */
    @Test
    void cylindersThatAreTooHighStayWhole() {
        ShopStock narrow = stock(everyMetal().sheets().stream()
                .map(one -> new StockSheet(one.sheet(), 3048, 300, one.price(), one.count(), false)).toList());
        Cap cap = StockFit.split(JobReader.read(ShopJobs.text("kiln-room")).orThrow(), narrow);
        assertThat(cap.sleeve().flat().pieces()).isEqualTo(1);
        assertThat(cap.hood().flat().pieces()).isEqualTo(1);
        assertThat(StockFit.checks(cap, narrow)).extracting(Check::id).contains("stock.hood.width")
                .doesNotContain("stock.sleeve.width");
    }

    @Test
    void whatFitsOnNoSheetIsFoulAndSaysWhatWould() {
        ShopStock narrow = stock(everyMetal().sheets().stream()
                .map(one -> new StockSheet(one.sheet(), 3048, 200, one.price(), one.count(), false)).toList());
        List<Check> checks = StockFit.checks(Blanks.of(ShopJobs.cap("kiln-room")), narrow);
        assertThat(checks).extracting(Check::id).contains("stock.sleeve.width", "stock.hood.width", "stock.leaf-1.width");
        assertThat(checks).allMatch(check -> check.verdict() == Verdict.FOUL);
        assertThat(checks.get(0).limit().source()).isEqualTo("stock file; the nearest sheet of galvanized 1.31 mm."
                + " One of 1464 mm x 272 mm or larger would do");
        ShopStock enough = stock(everyMetal().sheets().stream()
                .map(one -> new StockSheet(one.sheet(), 1464, 272, one.price(), one.count(), false)).toList());
        assertThat(StockFit.misfits(Blanks.of(ShopJobs.cap("kiln-room")), enough)).extracting(misfit -> misfit.blank().id())
                .doesNotContain("sleeve");
        List<Check> none = StockFit.checks(Blanks.of(ShopJobs.cap("kiln-room")), stock(List.of()));
        assertThat(none).hasSameSizeAs(Blanks.of(ShopJobs.cap("kiln-room")));
        assertThat(none.get(0).limit().source())
                .isEqualTo("stock file; it has no galvanized 1.31 mm. A sheet of 1464 mm x 272 mm or larger would do");
    }

    /** Cylinders are judged in as many pieces as the stock asks for, whatever cap is asked about. */
    @Test
    void theChecksOfACapAreThoseOfItsSplitParts() {
        ShopStock shortSheets = stock(everyMetal().sheets().stream()
                .map(one -> new StockSheet(one.sheet(), 1016, 1016, one.price(), one.count(), false)).toList());
        Cap cap = ShopJobs.cap("kiln-room");
        assertThat(StockFit.checks(Blanks.of(cap), shortSheets)).isNotEmpty();
        assertThat(StockFit.checks(cap, shortSheets)).isEmpty();
    }

    /**
     * Counted by hand from the job: 6 standoffs of 2 rivets and 2 bends, 2 leaves of 3 passes, 2 beads of the hood and
     * 1 of the sleeve.
     */
    @Test
    void theWorkIsCountedFromTheCap() {
        Cap cap = ShopJobs.cap("kiln-room");
        Work work = Work.of(cap, Blanks.of(cap));
        assertThat(work.rivets()).isEqualTo(12);
        assertThat(work.crimpPasses()).isEqualTo(6);
        assertThat(work.barCuts()).isEqualTo(2);
        assertThat(work.rolls()).isEqualTo(2);
        // standoffs 12, gutter 2, stop bar 2, hinge flanges 2
        assertThat(work.bends()).isEqualTo(18);
        double beads = Math.PI * (2 * 2 * cap.hood().flat().neutralRadiusMm() + 2 * cap.sleeve().flat().neutralRadiusMm()) / 1000;
        assertThat(work.beadM()).isCloseTo(beads, Offset.offset(1e-9));
        // butt seam of the sleeve, 10 in high
        assertThat(work.buttM()).isCloseTo(0.254, Offset.offset(1e-9));
    }
}

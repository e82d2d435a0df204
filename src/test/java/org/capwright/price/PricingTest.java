package org.capwright.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.capwright.blank.Blanks;
import org.capwright.job.JobReader;
import org.capwright.metal.Metal;
import org.capwright.part.Cap;
import org.capwright.stock.KeptNests;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.ShopJobs;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockBar;
import org.capwright.stock.StockPlan;
import org.capwright.stock.Work;
import org.capwright.stock.nest.Nest;
import org.capwright.store.RateFiles;
import org.capwright.store.StockFiles;
import org.junit.jupiter.api.Test;

class PricingTest {
    private static final StockPlan.Options QUICK = ShopJobs.work(1);
    private static final Offset<Double> CENT = Offset.offset(0.0051);
    private final Cap cap = ShopJobs.cap("kiln-room");
    private final ShopStock shop = StockFiles.sample();

    /** Reckoned again from the lines and the card. */
    @Test
    void sumsAddUp() {
        RateCard card = RateFiles.sample();
        Price price = Pricing.of(cap, 1, shop, card, QUICK);
        double material = sum(price.material());
        double labour = sum(price.labour());
        double cost = material + sum(price.hardware()) + labour + labour * card.overhead().orElseThrow();
        double net = cost * (1 + card.margin().orElseThrow());
        assertThat(price.materialTotal().orElseThrow()).isCloseTo(material, CENT);
        assertThat(price.net().orElseThrow()).isCloseTo(net, Offset.offset(0.02));
        assertThat(price.total().orElseThrow()).isCloseTo(net * (1 + card.tax().orElseThrow()), Offset.offset(0.02));
        assertThat(price.missing()).isEmpty();
        Stream.of(price.material(), price.hardware(), price.labour()).flatMap(List::stream).forEach(line ->
                assertThat(line.amount().orElseThrow()).as(line.name()).isCloseTo(line.quantity() * line.each().orElseThrow(),
                        CENT));
    }

    private static double sum(List<Line> lines) {
        return lines.stream().mapToDouble(line -> line.amount().orElseThrow()).sum();
    }

    /** 12 rivets at .8 min and 68 an hour. */
    @Test
    void labourIsMinutesTimesQuantity() {
        Price price = Pricing.of(cap, 1, shop, RateFiles.sample(), QUICK);
        assertThat(line(price.labour(), "riveting").amount().orElseThrow()).isEqualTo(10.88);
        assertThat(line(price.labour(), "set-up, riveting").amount().orElseThrow()).isEqualTo(4.53);
        assertThat(line(price.hardware(), "blind rivet, standoff to hood").amount().orElseThrow()).isEqualTo(1.44);
        double cut = Work.of(cap, Blanks.of(cap)).cutM();
        assertThat(line(price.labour(), "cutting").quantity()).isEqualTo(cut);
    }

    @Test
    void severalCapsShareSetUpsAndSheets() {
        Price one = Pricing.of(cap, 1, shop, RateFiles.sample(), QUICK);
        Price five = Pricing.of(cap, 5, shop, RateFiles.sample(), QUICK);
        assertThat(line(five.labour(), "set-up, bending").amount()).isEqualTo(line(one.labour(), "set-up, bending").amount());
        assertThat(line(five.labour(), "bending").quantity()).isEqualTo(5 * line(one.labour(), "bending").quantity());
        assertThat(five.each().orElseThrow()).isLessThan(one.each().orElseThrow());
        assertThat(five.plan().sheetCount()).isLessThan(5 * one.plan().sheetCount());
    }

    @Test
    void whatIsNotKnownIsMissingAndNeverZero() {
        ShopStock bare = new ShopStock("", "EUR", shop.units(), shop.rules(), true, false, 3, shop.sheets(), shop.bars(),
                List.of());
        Price price = Pricing.of(cap, 1, bare, RateFiles.sample(), QUICK);
        assertThat(price.missing()).containsExactly("flanged bushing", "blind rivet, standoff to hood",
                "fastener, sleeve to stack", "sealant");
        assertThat(price.hardwareTotal()).isEmpty();
        assertThat(price.total()).isEmpty();
        assertThat(price.each()).isEmpty();
        assertThat(price.labourTotal()).isPresent();

        RateCard empty = new RateCard("", OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "tax",
                OptionalDouble.empty(),
                OptionalDouble.empty(), Map.of());
        Price noRates = Pricing.of(cap, 1, shop, empty, QUICK);
        assertThat(noRates.missing()).contains("cutting", "set-up, cutting", "assembly and trial fit");
        assertThat(noRates.labourTotal()).isEmpty();
        assertThat(noRates.materialTotal()).isPresent();
    }

    @Test
    void aMissingSheetIsNamed() {
        ShopStock noThick = new ShopStock("", "EUR", shop.units(), shop.rules(), true, false, 3, shop.sheets().stream()
                .filter(sheet -> sheet.sheet().thicknessMm() < 3).toList(), shop.bars(), shop.hardware());
        Price price = Pricing.of(cap, 1, noThick, RateFiles.sample(), QUICK);
        assertThat(price.missing()).containsExactly("doubler 1, galvanized 0.1250 in");
    }

    @Test
    void remnantsAreCreditedByTheirArea() {
        RateCard card = RateFiles.sample();
        RateCard without = new RateCard("", card.labourPerHour(), card.overhead(), card.margin(), "tax", card.tax(),
                OptionalDouble.empty(), card.rates());
        StockPlan plan = Pricing.of(cap, 1, shop, card, QUICK).plan();
        double worth = plan.sheets().stream().flatMap(group -> group.nest().sheets().stream().map(sheet -> sheet.remnantMm2()
                / sheet.size().areaMm2() * group.stockOf(sheet).priceEach().orElseThrow())).mapToDouble(one -> one).sum();
        double credit = worth * card.remnantCredit().orElseThrow();
        double saved = Pricing.of(plan, without).materialTotal().orElseThrow() - Pricing.of(plan, card).materialTotal()
                .orElseThrow();
        assertThat(saved).isCloseTo(credit, Offset.offset(0.05));
    }

    @Test
    void alternativesStandSideBySide() {
        List<Variant> variants = List.of(new Variant("as it is", Map.of()), new Variant("hood 18 ga", Map.of("hood.gauge", "18")),
                new Variant("impossible", Map.of("leaves.count", "3")));
        List<Alternative> all = Alternative.of(cap.job().text(), variants, shop, RateFiles.sample(), QUICK);
        assertThat(all).extracting(one -> one.variant().name()).containsExactly("as it is", "hood 18 ga");
        assertThat(all.get(1).massKg()).isGreaterThan(all.get(0).massKg());
        assertThat(all.get(0).massKg()).isEqualTo(cap.massKg());
        assertThat(all.get(1).heightMm()).isEqualTo(all.get(0).heightMm());
        List<Compared> compared = Compared.of(cap.job().text(), variants, shop, RateFiles.sample(), QUICK, new KeptNests());
        assertThat(compared).extracting(one -> one.variant().name()).containsExactly("as it is", "hood 18 ga", "impossible");
        assertThat(compared.get(0).reason()).isEmpty();
        assertThat(compared.get(2).alternative()).isEmpty();
        assertThat(compared.get(2).reason()).startsWith("leaves.count: \"3\":");
    }

    @Test
    void variantsChangeOneThingAtATime() {
        assertThat(Variants.of(cap.job())).extracting(Variant::name).startsWith("as it is", "hood 20 ga", "hood 24 ga")
                .contains("all stainless 304", "4 leaves", "annulus 1 1/2 in");
        // by thickness and in millimetres where the job is
        assertThat(Variants.of(ShopJobs.cap("bakery-oven-room").job(), shop)).extracting(Variant::name)
                .contains("hood 0.95 mm", "annulus 40.0 mm", "annulus 60.0 mm");
    }

    /** What does not change is nested once: a thicker hood leaves sleeve, leaves and small parts as they are. */
    @Test
    void groupsThatStayAreNestedOnce() {
        KeptNests kept = new KeptNests();
        Price first = Pricing.of(cap, List.of(1), shop, RateFiles.sample(), QUICK, kept).get(0);
        Cap thicker = Cap.solve(JobReader.read(cap.job().text().with("hood.gauge", "18")).orThrow());
        Price second = Pricing.of(thicker, List.of(1), shop, RateFiles.sample(), QUICK, kept).get(0);
        List<Nest> nests = first.plan().sheets().stream().map(SheetGroup::nest).toList();
        assertThat(second.plan().sheets().stream().map(SheetGroup::nest)
                .filter(nest -> nests.stream().anyMatch(one -> one == nest))).hasSizeGreaterThanOrEqualTo(3);
        Price again = Pricing.of(cap, List.of(1), shop, RateFiles.sample(), QUICK, kept).get(0);
        assertThat(again.total()).isEqualTo(first.total());
    }

    /**
     * Two rods come from the bar of two at 20, not from two bars at 12; eight from one of six and one of two, not from
     * four of two at 80.
     */
    @Test
    void barsArePricedAsTheyAreUsed() {
        Cap cap = ShopJobs.cap("kiln-room");
        double rod = cap.rods().get(0).lengthMm();
        List<StockBar> bars = List.of(bar(2 * rod + 10, OptionalDouble.of(20)), bar(rod + 10, OptionalDouble.of(12)));
        Price price = Pricing.of(cap, 1, withBars(bars), RateFiles.sample(), QUICK);
        assertThat(price.material()).filteredOn(line -> line.unit().equals("bars"))
                .extracting(line -> line.quantity() + " at " + line.each().orElseThrow())
                .containsExactly("1.0 at 20.0");
        List<StockBar> three = List.of(bar(6 * rod + 18, OptionalDouble.of(55)), bar(2 * rod + 10, OptionalDouble.of(20)));
        Price four = Pricing.of(cap, 4, withBars(three), RateFiles.sample(), QUICK);
        assertThat(four.material()).filteredOn(line -> line.unit().equals("bars"))
                .extracting(line -> line.quantity() + " at " + line.each().orElseThrow())
                .containsExactlyInAnyOrder("1.0 at 55.0", "1.0 at 20.0");
        assertThat(price.material()).filteredOn(line -> line.unit().equals("bars"))
                .allMatch(line -> line.name().endsWith(" long"));
    }

    @Test
    void aBarWithoutAPriceAndARodWithoutABarAreMissing() {
        Cap cap = ShopJobs.cap("kiln-room");
        double rod = cap.rods().get(0).lengthMm();
        Price unpriced = Pricing.of(cap, 1, withBars(List.of(bar(4 * rod, OptionalDouble.empty()))), RateFiles.sample(), QUICK);
        assertThat(unpriced.missing()).hasSize(1).allMatch(name -> name.startsWith("stainless 304 round bar, diameter 1/2 in, "));
        Price none = Pricing.of(cap, 1, withBars(List.of(bar(rod - 10, OptionalDouble.of(5)))), RateFiles.sample(), QUICK);
        assertThat(none.missing()).hasSize(1)
                .allMatch(name -> name.startsWith("stainless 304 round bar, diameter 1/2 in, rod of "));
        assertThat(none.total()).isEmpty();
    }

    private static StockBar bar(double lengthMm, OptionalDouble price) {
        return new StockBar(Metal.STAINLESS_304, 12.7, lengthMm, price);
    }

    private ShopStock withBars(List<StockBar> bars) {
        return new ShopStock("", "EUR", shop.units(), shop.rules(), true, false, 3, shop.sheets(), bars, shop.hardware());
    }

    @Test
    void ratesBelowZeroAreRefused() {
        assertThatThrownBy(() -> new Rate(OptionalDouble.of(-1), OptionalDouble.empty()))
                .hasMessage("minutes must be at least 0");
    }

    private static Line line(List<Line> lines, String name) {
        return lines.stream().filter(line -> line.name().equals(name)).findFirst().orElseThrow();
    }
}

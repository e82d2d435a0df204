package org.capwright.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.capwright.blank.Blanks;
import org.capwright.part.Cap;
import org.capwright.stock.ShopJobs;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockPlan;
import org.capwright.stock.Work;
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
                assertThat(line.amount().orElseThrow()).as(line.name()).isCloseTo(line.quantity() * line.each().orElseThrow(), CENT));
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
        ShopStock bare = new ShopStock("", "EUR", shop.units(), shop.rules(), true, false, 3, shop.sheets(), shop.bars(), List.of());
        Price price = Pricing.of(cap, 1, bare, RateFiles.sample(), QUICK);
        assertThat(price.missing()).containsExactly("flanged bushing", "blind rivet, standoff to hood", "fastener, sleeve to stack", "sealant");
        assertThat(price.hardwareTotal()).isEmpty();
        assertThat(price.total()).isEmpty();
        assertThat(price.each()).isEmpty();
        assertThat(price.labourTotal()).isPresent();

        RateCard empty = new RateCard("", OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "tax", OptionalDouble.empty(),
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
        RateCard without = new RateCard("", card.labourPerHour(), card.overhead(), card.margin(), "tax", card.tax(), OptionalDouble.empty(), card.rates());
        StockPlan plan = Pricing.of(cap, 1, shop, card, QUICK).plan();
        double credit = plan.sheets().stream().flatMap(group -> group.nest().sheets().stream().map(sheet -> sheet.remnantMm2() / sheet.size().areaMm2()
                * group.stockOf(sheet).priceEach().orElseThrow())).mapToDouble(one -> one).sum() * card.remnantCredit().orElseThrow();
        double saved = Pricing.of(plan, without).materialTotal().orElseThrow() - Pricing.of(plan, card).materialTotal().orElseThrow();
        assertThat(saved).isCloseTo(credit, Offset.offset(0.05));
    }

    @Test
    void alternativesStandSideBySide() {
        List<Alternative> all = Alternative.of(cap.job().text(), List.of(new Variant("as it is", Map.of()), new Variant("hood 18 ga", Map.of("hood.gauge", "18")),
                new Variant("impossible", Map.of("leaves.count", "3"))), shop, RateFiles.sample(), QUICK);
        assertThat(all).extracting(one -> one.variant().name()).containsExactly("as it is", "hood 18 ga");
        assertThat(all.get(1).massKg()).isGreaterThan(all.get(0).massKg());
        assertThat(all.get(0).massKg()).isEqualTo(cap.massKg());
        assertThat(all.get(1).heightMm()).isEqualTo(all.get(0).heightMm());
        assertThat(Variants.of(cap.job())).extracting(Variant::name).startsWith("as it is", "hood 20 ga", "hood 24 ga")
                .contains("all stainless 304", "4 leaves", "annulus 1 1/2 in");
    }

    @Test
    void ratesBelowZeroAreRefused() {
        assertThatThrownBy(() -> new Rate(OptionalDouble.of(-1), OptionalDouble.empty())).hasMessage("minutes must be at least 0");
    }

    private static Line line(List<Line> lines, String name) {
        return lines.stream().filter(line -> line.name().equals(name)).findFirst().orElseThrow();
    }
}

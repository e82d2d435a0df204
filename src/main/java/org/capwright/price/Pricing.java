package org.capwright.price;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.capwright.blank.Writing;
import org.capwright.part.Cap;
import org.capwright.stock.BarGroup;
import org.capwright.stock.CutList;
import org.capwright.stock.HardwareItem;
import org.capwright.stock.HardwareKind;
import org.capwright.stock.KeptNests;
import org.capwright.stock.Shares;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockBar;
import org.capwright.stock.StockJob;
import org.capwright.stock.StockPlan;
import org.capwright.stock.StockSheet;
import org.capwright.stock.Work;
import org.capwright.stock.nest.Demand;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.units.ShopFormat;

/** Prices caps. */
public final class Pricing {
    private static final double MINUTES = 60;
    /** Stock sizes are printed to sixteenths of an inch. */
    private static final int FRACTION = 16;
    /** Part of the search that does not grow with the number of caps, in caps. */
    private static final double EVERY_NUMBER = 2;

    private final StockPlan plan;
    private final StockJob job;
    private final RateCard card;
    private final Names names;

    private Pricing(StockPlan plan, StockJob job, RateCard card) {
        this.plan = plan;
        this.job = job;
        this.card = card;
        this.names = new Names(new ShopFormat(Writing.of(job.cap()).format().system(), FRACTION));
    }

    /**
     * The price of some caps of one job, nested together and set up once.
     *
     * @param cap the cap
     * @param caps how many
     * @param shop the stock
     * @param card the rates
     * @param options how long to nest
     * @return the price
     */
    public static Price of(Cap cap, int caps, ShopStock shop, RateCard card, StockPlan.Options options) {
        StockJob job = StockJob.of(cap, caps);
        return of(StockPlan.of(List.of(job), shop, options), card);
    }

    /**
     * Prices for several numbers of caps, each nested together; the time is shared out among them.
     *
     * @param cap the cap
     * @param caps numbers of caps
     * @param shop the stock
     * @param card the rates
     * @param options how long to nest, for all of them together
     * @param kept nests made before, and those made now
     * @return a price for each number, in their order
     */
    public static List<Price> of(Cap cap, List<Integer> caps, ShopStock shop, RateCard card, StockPlan.Options options,
            KeptNests kept) {
        StockJob one = StockJob.of(cap, 1);
        Shares shares = new Shares(options, caps.stream().map(number -> number + EVERY_NUMBER).toList());
        List<Price> prices = new ArrayList<>();
        for (int i = 0; i < caps.size(); i++) {
            StockJob job = new StockJob(one.name(), cap, one.blanks(), caps.get(i));
            prices.add(of(StockPlan.of(List.of(job), shop, shares.of(i), kept), card));
        }
        return prices;
    }

    /**
     * The price of a plan of one job.
     *
     * @param plan what it is cut from
     * @param card the rates
     * @return the price
     */
    public static Price of(StockPlan plan, RateCard card) {
        if (plan.jobs().size() != 1) {
            throw new IllegalArgumentException("a price is of one job, not of " + plan.jobs().size());
        }
        return new Pricing(plan, plan.jobs().get(0), card).price();
    }

    private Price price() {
        List<Line> material = material();
        List<Line> hardware = hardware();
        List<Line> labour = labour();
        Line overhead = Line.share("overhead", card.overhead(), Line.sum(labour), "of labour");
        List<Line> cost = Stream.of(material, hardware, labour, List.of(overhead)).flatMap(List::stream).toList();
        Line margin = Line.share("margin", card.margin(), Line.sum(cost), "of material, hardware, labour and overhead");
        OptionalDouble net = Line.sum(Stream.concat(cost.stream(), Stream.of(margin)).toList());
        Line tax = Line.share(card.taxName(), card.tax(), net, "of everything above");
        return new Price(job.caps(), plan, plan.shop().currency(), note(), material, hardware, labour, overhead, margin, tax);
    }

    private String note() {
        return Stream.of(plan.shop().note(), card.note()).filter(note -> !note.isBlank()).distinct()
                .collect(Collectors.joining(" "));
    }

    private List<Line> material() {
        List<Line> lines = new ArrayList<>();
        for (SheetGroup group : plan.sheets()) {
            Map<StockSheet, Integer> counts = new LinkedHashMap<>();
            group.nest().sheets().forEach(layout -> counts.merge(group.stockOf(layout), 1, Integer::sum));
            counts.forEach((sheet, count) -> lines.add(Line.of(names.of(sheet), count, "sheets", sheet.priceEach(), "")));
            for (Demand lost : group.nest().unplaced()) {
                lines.add(Line.of(lost.piece().name() + ", " + names.of(group.sheet()), lost.quantity(), "blanks",
                        OptionalDouble.empty(), "no sheet for it"));
            }
        }
        card.remnantCredit().ifPresent(share -> lines.addAll(credits(share)));
        plan.bars().forEach(group -> lines.addAll(bars(group)));
        return lines;
    }

    /** A line for each kind of bar that is really cut up, and one for each rod that no bar is long enough for. */
    private List<Line> bars(BarGroup group) {
        Map<StockBar, Integer> counts = new LinkedHashMap<>();
        group.plan().bars().forEach(bar -> counts.merge(group.stockOf(bar), 1, Integer::sum));
        List<Line> lines = new ArrayList<>();
        counts.forEach((bar, count) -> lines.add(Line.of(names.of(bar), count, "bars", bar.price(), "")));
        Map<Double, Integer> tooLong = new TreeMap<>();
        group.plan().tooLongMm().forEach(mm -> tooLong.merge(mm, 1, Integer::sum));
        tooLong.forEach((mm, count) -> lines.add(Line.of(names.bar(group) + ", rod of " + names.length(mm), count, "rods",
                OptionalDouble.empty(), "no bar for it")));
        return lines;
    }

    /** Usable remnants that go back to stock, by their area. */
    private List<Line> credits(double share) {
        List<Line> lines = new ArrayList<>();
        for (SheetGroup group : plan.sheets()) {
            for (SheetLayout layout : group.nest().sheets()) {
                OptionalDouble price = group.stockOf(layout).priceEach();
                if (layout.remnant().isPresent() && price.isPresent()) {
                    double credit = -share * price.getAsDouble() * layout.remnantMm2() / layout.size().areaMm2();
                    lines.add(Line.of("remnant back to stock, " + names.of(group.sheet()), 1, "piece", OptionalDouble.of(credit),
                            ""));
                }
            }
        }
        return lines;
    }

    private List<Line> hardware() {
        List<Line> lines = new ArrayList<>();
        for (HardwareItem item : CutList.of(job.cap(), job.blanks()).hardware()) {
            OptionalDouble price = plan.shop().price(item.kind(), item.sizeMm());
            if (item.kind() == HardwareKind.SEALANT) {
                lines.add(Line.of(item.name(), item.lengthMm() / 1000 * job.caps(), "m", price, ""));
            } else if (item.kind() != HardwareKind.BAR) {
                lines.add(Line.of(item.name(), (double) item.quantity() * job.caps(), "pieces", price, item.size()));
            }
        }
        return lines;
    }

    /** Each operation by its quantity, then its set-up; what there is nothing of is left out. */
    private List<Line> labour() {
        Work work = Work.of(job.cap(), job.blanks());
        List<Line> lines = new ArrayList<>();
        for (Operation operation : Operation.values()) {
            double quantity = operation.of(work) * job.caps();
            if (quantity > 0) {
                Rate rate = card.rate(operation);
                lines.add(Line.of(operation.words(), quantity, operation.unit(), cost(rate.minutesEach()),
                        minutes(rate.minutesEach(), "each")));
                lines.add(Line.of("set-up, " + operation.words(), 1, "time", cost(rate.setUpMinutes()),
                        minutes(rate.setUpMinutes(), "")));
            }
        }
        lines.removeIf(line -> line.amount().isPresent() && line.amount().getAsDouble() == 0 && line.unit().equals("time"));
        return lines;
    }

    private OptionalDouble cost(OptionalDouble minutes) {
        return minutes.isPresent() && card.labourPerHour().isPresent()
                ? OptionalDouble.of(minutes.getAsDouble() * card.labourPerHour().getAsDouble() / MINUTES)
                        : OptionalDouble.empty();
    }

    private static String minutes(OptionalDouble minutes, String each) {
        return minutes.isPresent() ? Names.number(minutes.getAsDouble()) + " min" + (each.isEmpty() ? "" : " " + each)
                : "no rate";
    }
}

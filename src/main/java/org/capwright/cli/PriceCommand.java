package org.capwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Measure;
import org.capwright.export.JobTag;
import org.capwright.export.Money;
import org.capwright.export.PriceFiles;
import org.capwright.export.figure.StockJson;
import org.capwright.export.pdf.Paper;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.price.Alternative;
import org.capwright.price.Compared;
import org.capwright.price.Line;
import org.capwright.price.Price;
import org.capwright.price.Pricing;
import org.capwright.price.RateCard;
import org.capwright.price.Variants;
import org.capwright.stock.KeptNests;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.store.JobStamp;
import org.capwright.store.StagedFolder;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prices a job for several numbers of caps. */
@Command(name = "price", description = "Price a job: material, hardware, labour, overhead, margin, tax, for 1, 2, 5 and 10 caps.")
final class PriceCommand implements Callable<Integer> {
    private static final List<Integer> CAPS = List.of(1, 2, 5, 10);

    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption jobOption;

    @Mixin
    private StockOption stock;

    @Mixin
    private RatesOption rates;

    @Option(names = "--to", paramLabel = "DIR",
            description = "A folder to write quote, inner sheet and the nested sheets of one cap into, as PDF.")
    private Optional<Path> folder;

    @Option(names = "--compare", description = "Compare gauges, metals, numbers of leaves and annuli side by side instead.")
    private boolean compare;

    @Option(names = "--json", description = "Print everything as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        CapJob job = jobOption.load();
        ShopStock shop = stock.load();
        RateCard card = rates.load();
        if (compare) {
            return compare(job, shop, card);
        }
        Cap cap = StockFit.split(job, shop);
        List<Price> prices = Pricing.of(cap, CAPS, shop, card, stock.options(), new KeptNests());
        List<Check> checks = Stream.concat(Checks.of(cap).stream(), StockFit.checks(cap, shop).stream()).toList();
        print(prices);
        folder.ifPresent(to -> write(to, cap, prices, JobTag.of(job, JobStamp.of(job.text()), checks)));
        return prices.get(0).plan().complete() ? Exit.DONE : Exit.FOUL;
    }

    private void write(Path to, Cap cap, List<Price> prices, JobTag tag) {
        List<Path> files = StagedFolder.fill(to, staging -> PriceFiles.write(staging, cap, prices,
                Paper.of(Writing.of(cap).format().system()), tag));
        PrintWriter out = json ? spec.commandLine().getErr() : spec.commandLine().getOut();
        files.forEach(out::println);
        if (prices.stream().anyMatch(price -> price.total().isEmpty())) {
            out.println("No quote was written: a price is missing.");
        }
    }

    private void print(List<Price> prices) {
        PrintWriter out = spec.commandLine().getOut();
        Price first = prices.get(0);
        if (json) {
            out.println(StockJson.of(prices));
            return;
        }
        Money money = new Money(first.currency());
        List<Line> lines = new ArrayList<>(first.material());
        lines.addAll(first.hardware());
        lines.addAll(first.labour());
        lines.addAll(List.of(first.overhead(), first.margin(), first.tax()));
        lines.forEach(line -> out.println(String.format(Locale.ROOT, "%12s  %8.2f %-7s %s", money.plain(line.amount()),
                line.quantity(), line.unit(), line.name())));
        first.missing().forEach(name -> out.println("missing: " + name));
        prices.forEach(price -> out.println(String.format(Locale.ROOT, "caps %d: %s in all, %s each, sheets %d%s", price.caps(),
                money.of(price.total()),
                money.of(price.each()), price.plan().sheetCount(), price.plan().settled() ? ""
                        : ", the clock ended the search (seed " + price.plan().seed() + ")")));
        out.println(first.note());
    }

    private int compare(CapJob job, ShopStock shop, RateCard card) {
        PrintWriter out = spec.commandLine().getOut();
        List<Compared> all = Compared.of(job.text(), Variants.of(job, shop), shop, card, stock.options(), new KeptNests());
        if (json) {
            out.println(StockJson.compared(all, shop));
            return Exit.DONE;
        }
        ShopFormat format = Writing.of(job).format();
        out.println(String.format(Locale.ROOT, "%-22s %14s %10s %6s %14s %16s %s", "", "price", "mass", "sheets", "lift",
                "height", "fouls"));
        for (Compared one : all) {
            out.println(one.alternative().map(made -> row(made, shop, format))
                    .orElseGet(() -> String.format(Locale.ROOT, "%-22s can't exist", one.variant().name())));
            if (!one.reason().isEmpty()) {
                out.println("    " + one.reason());
            }
        }
        List<String> cut = all.stream().flatMap(one -> one.alternative().stream()).filter(one -> !one.price().plan().settled())
                .map(one -> one.variant().name()).toList();
        if (!cut.isEmpty()) {
            out.println("the clock ended the search (seed " + stock.options().seed() + "), another run may give others: "
                    + String.join("; ", cut));
        }
        out.println(shop.note());
        return Exit.DONE;
    }

    private static String row(Alternative one, ShopStock shop, ShopFormat format) {
        return String.format(Locale.ROOT, "%-22s %14s %10s %6d %14s %16s %d", one.variant().name(), new Money(shop.currency())
                .of(one.price().total()),
                format.mass(one.massKg()), one.price().plan().sheetCount(), Measure.LIFT_PRESSURE.quantity()
                        .words(one.liftPressurePa(), format),
                format.length(Length.ofMm(one.heightMm())), one.fouls());
    }
}

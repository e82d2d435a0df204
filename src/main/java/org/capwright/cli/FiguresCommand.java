package org.capwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.capwright.export.figure.FiguresJson;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.price.Price;
import org.capwright.price.Pricing;
import org.capwright.stock.KeptNests;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.store.JobStamp;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a job's figures. */
@Command(name = "figures",
        description = "Print the figures of a job as JSON; those of stock and price from the shop's files, else from samples"
        + " with invented prices, which \"note\" then says.")
final class FiguresCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption jobOption;

    @Mixin
    private StockOption stock;

    @Mixin
    private RatesOption rates;

    @Override
    public Integer call() {
        CapJob job = jobOption.load();
        ShopStock shop = stock.load();
        Price price = Pricing.of(StockFit.split(job, shop), List.of(1), shop, rates.load(), stock.options(), new KeptNests())
                .get(0);
        spec.commandLine().getOut().println(FiguresJson.of(Cap.solve(job), JobStamp.of(job.text()), price));
        return Exit.DONE;
    }
}

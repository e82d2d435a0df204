package org.capwright.cli;

import org.capwright.stock.ShopStock;
import org.capwright.stock.StockPlan;
import org.capwright.store.StockFiles;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The stock that a command cuts from, and how long it may search. */
final class StockOption {
    @Mixin
    private StockFileOption file;

    @Option(names = "--seconds", paramLabel = "S", defaultValue = "2",
            description = "How long to search at most. Default: ${DEFAULT-VALUE}.")
    private double seconds;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1",
            description = "Seed of the search: the same seed gives the same layout."
            + " Default: ${DEFAULT-VALUE}.")
    private long seed;

    /** The shop's stock, else the sample. */
    ShopStock load() {
        return file.find().orElseGet(StockFiles::sample);
    }

    StockPlan.Options options() {
        return StockPlan.Options.of(seconds, seed);
    }
}

package org.capwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.capwright.stock.ShopStock;
import org.capwright.store.StockFiles;
import picocli.CommandLine.Option;

/** The stock that a command cuts from, and how long it may search. */
final class StockOption {
    @Option(names = "--stock", paramLabel = "FILE", description = "The shop's stock file. Without it a sample with invented prices is used.")
    private Optional<Path> stockFile;

    @Option(names = "--seconds", paramLabel = "S", defaultValue = "2", description = "How long to search at most. Default: ${DEFAULT-VALUE}.")
    private double seconds;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of the search: the same seed gives the same layout."
            + " Default: ${DEFAULT-VALUE}.")
    private long seed;

    ShopStock load() {
        return stockFile.map(StockFiles::read).orElseGet(StockFiles::sample);
    }

    double seconds() {
        return seconds;
    }

    long seed() {
        return seed;
    }
}

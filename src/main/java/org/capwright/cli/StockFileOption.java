package org.capwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.store.DeskFolder;
import org.capwright.store.StockFiles;
import picocli.CommandLine.Option;

/** The shop's stock file: the one that is named, else the one that the window keeps beside its settings. */
final class StockFileOption {
    @Option(names = "--stock", paramLabel = "FILE",
            description = "The shop's stock file. Default: the one edited in the window, if any.")
    private Optional<Path> file;

    /** The stock, if the shop has one. */
    Optional<ShopStock> find() {
        return file.or(() -> Optional.of(DeskFolder.ofUser().stockFile()).filter(Files::exists)).map(StockFiles::read);
    }

    /** The cap, its cylinders in as many pieces as the shop's sheets ask for. */
    static Cap cap(CapJob job, Optional<ShopStock> stock) {
        return stock.map(shop -> StockFit.split(job, shop)).orElseGet(() -> Cap.solve(job));
    }
}

package org.capwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.capwright.price.RateCard;
import org.capwright.store.DeskFolder;
import org.capwright.store.RateFiles;
import picocli.CommandLine.Option;

/** The shop's rate card: the one that is named, else the one that the window keeps beside its settings, else the sample. */
final class RatesOption {
    @Option(names = "--rates", paramLabel = "FILE",
            description = "The shop's rate card. Default: the one edited in the window; without any"
            + " a sample with invented rates.")
    private Optional<Path> file;

    RateCard load() {
        return file.or(() -> Optional.of(DeskFolder.ofUser().ratesFile()).filter(Files::exists)).map(RateFiles::read)
                .orElseGet(RateFiles::sample);
    }
}

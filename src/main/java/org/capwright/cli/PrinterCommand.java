package org.capwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.PrinterPage;
import org.capwright.export.pdf.PrinterScale;
import org.capwright.store.PrinterFile;
import org.capwright.store.StoreException;
import org.capwright.units.Length;
import org.capwright.units.QuantityParser;
import org.capwright.units.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keeps what printers get wrong. */
@Command(name = "printer", subcommands = {PrinterCommand.PageCommand.class, PrinterCommand.SetCommand.class,
        PrinterCommand.ListCommand.class},
        synopsisSubcommandLabel = "COMMAND",
        description = "Check a printer: print the page, measure its two bars, and let cut --printer put right"
                + " what it gets wrong.")
final class PrinterCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** The paper and the units of the bars. */
    static final class Bars {
        @Option(names = "--paper", paramLabel = "P", defaultValue = "LETTER",
                description = "Paper: LETTER, LEGAL, TABLOID, A4 or A3. Default: ${DEFAULT-VALUE}.")
        private Paper paper;

        @Option(names = "--units", paramLabel = "U", defaultValue = "in",
                description = "in or mm: what the bars are a round number"
                + " of. Default: ${DEFAULT-VALUE}.")
        private String units;

        UnitSystem system(CommandSpec spec) {
            if (paper == Paper.ONE) {
                throw new ParameterException(spec.commandLine(),
                        "--paper ONE has no printer check: set the plotter's own scale.");
            }
            return switch (units.toLowerCase(Locale.ROOT)) {
                case "in" -> UnitSystem.INCH;
                case "mm" -> UnitSystem.METRIC;
                default -> throw new ParameterException(spec.commandLine(), "--units: \"" + units + "\" is neither in nor mm.");
            };
        }
    }

    /** Where printers are kept. */
    static final class Kept {
        @Option(names = "--printers", paramLabel = "FILE", description = "The file in which printers are kept. Default:"
                + " .capwright/printers.json in your home folder.")
        private Optional<Path> file;

        PrinterFile printers() {
            return new PrinterFile(file.orElseGet(PrinterFile::usual));
        }
    }

    /** Writes the page to measure. */
    @Command(name = "page", description = "Write the page with the bars to measure.")
    static final class PageCommand implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private Bars bars;

        @Parameters(index = "0", paramLabel = "FILE", description = "The PDF file to write.")
        private Path file;

        @Override
        public Integer call() {
            try {
                PrinterPage.write(file, bars.paper, bars.system(spec));
            } catch (IOException e) {
                throw StoreException.writing(file, e);
            }
            spec.commandLine().getOut().println(file);
            return Exit.DONE;
        }
    }

    /** Keeps what was measured. */
    @Command(name = "set", description = "Keep what the two bars measured. A bar left out is taken as true.")
    static final class SetCommand implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private Bars bars;

        @Mixin
        private Kept kept;

        @Parameters(index = "0", paramLabel = "NAME", description = "What to call the printer.")
        private String name;

        @Option(names = "--across", paramLabel = "L", description = "What the bar along the shorter side measures.")
        private Optional<String> across;

        @Option(names = "--along", paramLabel = "L", description = "What the bar along the longer side measures.")
        private Optional<String> along;

        @Override
        public Integer call() {
            if (!PrinterScale.isName(name)) {
                throw new ParameterException(spec.commandLine(), "\"" + name
                        + "\" can't be a printer's name: 1 to 24 letters, digits,"
                        + " blanks, points, lines.");
            }
            UnitSystem units = bars.system(spec);
            PrinterScale scale = new PrinterScale(name, factor("across", PrinterPage.across(bars.paper, units), across, units),
                    factor("along", PrinterPage.along(bars.paper, units), along, units));
            kept.printers().put(new PrinterFile.Entry(bars.paper, scale));
            spec.commandLine().getOut().println(words(bars.paper, scale));
            return Exit.DONE;
        }

        private double factor(String bar, Length drawn, Optional<String> measured, UnitSystem units) {
            try {
                return measured.isEmpty() ? 1 : PrinterScale.factor(bar, drawn, QuantityParser.length(measured.get(), units));
            } catch (IllegalArgumentException e) {
                throw new ParameterException(spec.commandLine(), e.getMessage(), e);
            }
        }
    }

    /** Prints the printers. */
    @Command(name = "list", description = "Print the printers that were measured.")
    static final class ListCommand implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private Kept kept;

        @Override
        public Integer call() {
            List<PrinterFile.Entry> all = kept.printers().all();
            all.forEach(entry -> spec.commandLine().getOut().println(words(entry.paper(), entry.scale())));
            return Exit.DONE;
        }
    }

    private static String words(Paper paper, PrinterScale scale) {
        return String.format(Locale.ROOT, "%s, %s: across %+.3f %%, along %+.3f %%", scale.printer(), paper,
                (scale.across() - 1) * 100,
                (scale.along() - 1) * 100);
    }
}

package org.capwright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program itself: without a command it prints how it is used. */
@Command(name = "capwright", subcommands = {CheckCommand.class, BuysCommand.class, FiguresCommand.class, CutCommand.class,
        FitCommand.class, ToleranceCommand.class, PrinterCommand.class, StampCommand.class, NestCommand.class,
        PriceCommand.class},
        versionProvider = Version.class, description = "Sizes, proves, lays out and prints round rooftop exhaust caps.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "Exit codes: 0 done, 1 a check is foul, 2 bad input, 3 a file could not be read or written."})
final class RootCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Print this.", scope = ScopeType.INHERIT)
    private boolean help;

    @Option(names = {"-V", "--version"}, versionHelp = true, description = "Print the version.")
    private boolean version;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}

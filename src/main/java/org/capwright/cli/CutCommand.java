package org.capwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Verdict;
import org.capwright.export.CutFiles;
import org.capwright.export.dxf.DxfUnit;
import org.capwright.export.pdf.Paper;
import org.capwright.export.pdf.PrintSetup;
import org.capwright.export.pdf.PrinterScale;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.store.JobFiles;
import org.capwright.store.JobStamp;
import org.capwright.store.StagedFolder;
import org.capwright.units.ShopFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes everything that a shop needs to cut a job, wholly or not at all. */
@Command(name = "cut", description = "Write the patterns and lists of a job into a folder.")
final class CutCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption jobOption;

    @Mixin
    private StockFileOption stock;

    @Option(names = "--to", required = true, paramLabel = "DIR", description = "The folder to write into.")
    private Path folder;

    @Option(names = "--paper", paramLabel = "P", defaultValue = "LETTER",
            description = "Paper to print on: ${COMPLETION-CANDIDATES}; ONE is one page a part, as large as it needs. Default: ${DEFAULT-VALUE}.")
    private Paper paper;

    @Option(names = "--printer", paramLabel = "NAME",
            description = "A printer measured on this paper (see printer --help): pages are"
            + " drawn so that it prints them true.")
    private Optional<String> printer;

    @Mixin
    private PrinterCommand.Kept kept;

    @Option(names = "--dxf", paramLabel = "U", description = "Unit of DXF files, ${COMPLETION-CANDIDATES}. Default: the job's.")
    private Optional<DxfUnit> dxfUnit;

    @Option(names = "--whole",
            description = "Draw long parts at true size as a whole too, not only their notches, holes and ends.")
    private boolean whole;

    @Option(names = "--anyway", description = "Write even where a check is foul; every page then says so and why.")
    private boolean anyway;

    @Override
    public Integer call() {
        CapJob job = jobOption.load();
        Optional<ShopStock> shop = stock.find();
        Cap cap = StockFileOption.cap(job, shop);
        List<Check> checks = new ArrayList<>(Checks.of(cap));
        shop.ifPresent(one -> checks.addAll(StockFit.checks(cap, one)));
        boolean foul = Checks.worst(checks) == Verdict.FOUL;
        if (foul && !anyway) {
            refuse(checks, Writing.of(job).format());
            return Exit.FOUL;
        }
        CutFiles.Choice choice = choice(Writing.of(job).format());
        StagedFolder.fill(folder, staging -> writeAll(cap, checks, choice, staging))
                .forEach(file -> spec.commandLine().getOut().println(file));
        return Exit.DONE;
    }

    private void refuse(List<Check> checks, ShopFormat format) {
        PrintWriter err = spec.commandLine().getErr();
        checks.stream().filter(check -> check.verdict() == Verdict.FOUL)
                .forEach(check -> err.println("foul: " + check.line(format)));
        err.println("Nothing was written. Mend the fouls (the check command says how), or add --anyway: then every page says so.");
    }

    private CutFiles.Choice choice(ShopFormat format) {
        PrinterScale scale = printer.map(name -> kept.printers().find(name, paper).orElseThrow(() -> new ParameterException(
                spec.commandLine(), "The printer " + name + " was not measured on " + paper + ". Print its page and measure it:"
                + " capwright printer --help says how."))).orElse(PrinterScale.NONE);
        return CutFiles.Choice.all(new PrintSetup(paper, scale), whole, dxfUnit.orElse(DxfUnit.of(format.system())));
    }

    /** The one place where files are written. */
    private void writeAll(Cap cap, List<Check> checks, CutFiles.Choice choice, Path staging) throws IOException {
        JobFiles.write(staging.resolve("job.json"), cap.job().text());
        CutFiles.write(staging, cap, checks, choice, JobStamp.of(cap.job().text()));
    }
}

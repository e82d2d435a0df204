package org.capwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.capwright.blank.Writing;
import org.capwright.check.Quantity;
import org.capwright.export.figure.FitJson;
import org.capwright.fitup.tolerance.MarginSpread;
import org.capwright.fitup.tolerance.Percentile;
import org.capwright.fitup.tolerance.Progress;
import org.capwright.fitup.tolerance.Source;
import org.capwright.fitup.tolerance.ToleranceRun;
import org.capwright.fitup.tolerance.VarianceShare;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.store.JobStamp;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Draws many builds and says how many clear. */
@Command(name = "tolerance", description = "Draw many builds within the job's tolerances: how many clear, and which tolerance matters most.")
final class ToleranceCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption jobOption;

    @Option(names = "--builds", paramLabel = "N", defaultValue = "100000",
            description = "How many builds. Default: ${DEFAULT-VALUE}.")
    private int builds;

    @Option(names = "--seed", paramLabel = "S", defaultValue = "1",
            description = "The same seed gives the same answer. Default: ${DEFAULT-VALUE}.")
    private long seed;

    @Option(names = "--json", description = "Print everything as JSON.")
    private boolean json;

    private ShopFormat format;

    @Override
    public Integer call() {
        if (builds < ToleranceRun.FEWEST || builds > ToleranceRun.MOST) {
            throw new ParameterException(spec.commandLine(), "--builds: \"" + builds + "\": must be " + ToleranceRun.FEWEST
                    + " to "
                    + ToleranceRun.MOST + ". Type a number in that range.");
        }
        CapJob job = jobOption.load();
        format = Writing.of(job).format();
        ToleranceRun run = ToleranceRun.of(Cap.solve(job), builds, seed, Progress.NONE).orElseThrow();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(FitJson.of(job, run, JobStamp.of(job.text())));
        } else {
            print(out, job, run);
        }
        return Exit.DONE;
    }

    private void print(PrintWriter out, CapJob job, ToleranceRun run) {
        out.println(String.format(Locale.ROOT, "%.2f %% of %d builds keep every limit (give or take %.2f %%)", 100 * run.share(),
                run.builds(),
                200 * run.shareError()));
        out.println("margin beyond its limit: 1st, 5th and 50th percentile, each with its sampling error");
        spread(out, run.least());
        run.margins().forEach(margin -> spread(out, margin));
        for (VarianceShare one : run.least().shares()) {
            out.println(String.format(Locale.ROOT, "%5.1f %% of the spread of the least margin: %s, within %s", 100 * one.share(),
                    one.source().input().label(), length(job.get(one.source().input()).mm())));
        }
        String wanted = String.format(Locale.ROOT, "%.2f %%", 100 * run.wantedShare());
        out.println(run.annulus().map(mm -> "an annulus of " + length(mm) + " would let " + wanted + " clear")
                .orElse("no annulus would let " + wanted + " clear: the other margins fail more often"));
        out.println("for the clearance of leaf and hood alone an annulus of " + length(run.hoodAnnulusMm()) + " would do");
        out.println("Tolerances are " + Source.HOOD_DIAMETER.input().path()
                + " and the like in the job; defaults are common practice, no source.");
    }

    private void spread(PrintWriter out, MarginSpread margin) {
        out.println(String.format(Locale.ROOT, "%-34s %6.2f %%  %s  %s  %s", margin.words(), 100 * margin.share(),
                percentile(margin.p01()),
                percentile(margin.p05()), percentile(margin.p50())));
    }

    private String percentile(Percentile percentile) {
        return format.thickness(Length.ofMm(percentile.mm())) + " +-" + format.thickness(Length.ofMm(percentile.errorMm()));
    }

    private String length(double mm) {
        return Quantity.LENGTH.words(mm, format);
    }
}

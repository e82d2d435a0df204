package org.capwright.cli;

import java.util.concurrent.Callable;
import org.capwright.export.figure.FiguresJson;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.store.JobStamp;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a job's figures. */
@Command(name = "figures", description = "Print the figures of a job as JSON.")
final class FiguresCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption jobOption;

    @Override
    public Integer call() {
        CapJob job = jobOption.load();
        spec.commandLine().getOut().println(FiguresJson.of(Cap.solve(job), JobStamp.of(job.text())));
        return Exit.DONE;
    }
}

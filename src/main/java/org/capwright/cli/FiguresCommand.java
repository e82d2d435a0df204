package org.capwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.capwright.job.CapJob;
import org.capwright.job.JobInputs;
import org.capwright.store.JobStamp;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a job's figures. */
@Command(name = "figures", description = "Print the figures of a job.")
final class FiguresCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job file.")
    private Path jobFile;

    @Override
    public Integer call() {
        print(JobLoader.load(jobFile), spec.commandLine().getOut());
        return Exit.DONE;
    }

    /** The one place where figures are printed. */
    private static void print(CapJob job, PrintWriter out) {
        out.println(job.get(JobInputs.NAME) + "  [" + JobStamp.of(job.text()) + "]");
    }
}

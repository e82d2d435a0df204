package org.capwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a job and says whether every input is good. */
@Command(name = "check", description = "Read a job and name every input that is refused.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job file.")
    private Path jobFile;

    @Override
    public Integer call() {
        JobLoader.load(jobFile);
        spec.commandLine().getOut().println(jobFile + ": every input is good");
        return Exit.DONE;
    }
}

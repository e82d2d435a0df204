package org.capwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.capwright.export.StampReader;
import org.capwright.store.JobFiles;
import org.capwright.store.JobStamp;
import org.capwright.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells which job a file came from. */
@Command(name = "stamp", description = "Tell which job a PDF, SVG or DXF came from; with job files, tell which of them it is.")
final class StampCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "The PDF, SVG or DXF file.")
    private Path file;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "JOB",
            description = "Job files to compare with. Where a shop file was used,"
            + " compare with the job.json beside the file: it holds both.")
    private List<Path> jobs = List.of();

    @Override
    public Integer call() {
        Optional<StampReader.Found> found = read();
        if (found.isEmpty()) {
            spec.commandLine().getErr()
                    .println(file + " has no stamp: it was not written by this program, or its name does not end in"
                    + " .pdf, .svg or .dxf.");
            return Exit.BAD_INPUT;
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println(found.get().job() + ", stamp " + found.get().stamp());
        for (Path job : jobs) {
            String stamp = JobStamp.of(JobFiles.read(job));
            out.println(job + ", stamp " + stamp + (stamp.equals(found.get().stamp()) ? ": this one"
                    : ": another, or changed since"));
        }
        return Exit.DONE;
    }

    private Optional<StampReader.Found> read() {
        try {
            return StampReader.read(file);
        } catch (IOException e) {
            throw StoreException.reading(file, e);
        }
    }
}

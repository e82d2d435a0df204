package org.capwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.capwright.export.CutFiles;
import org.capwright.export.pdf.Paper;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;
import org.capwright.store.JobStamp;
import org.capwright.store.StagedFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes everything that a shop needs to cut a job, wholly or not at all. */
@Command(name = "cut", description = "Write the patterns and lists of a job into a folder.")
final class CutCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private JobOption jobOption;

    @Option(names = "--to", required = true, paramLabel = "DIR", description = "The folder to write into.")
    private Path folder;

    @Option(names = "--paper", paramLabel = "P", defaultValue = "LETTER",
            description = "Paper to print on: ${COMPLETION-CANDIDATES}; ONE is one page a part, as large as it needs. Default: ${DEFAULT-VALUE}.")
    private Paper paper;

    @Option(names = "--whole", description = "Draw long parts at true size as a whole too, not only their notches, holes and ends.")
    private boolean whole;

    @Override
    public Integer call() {
        CapJob job = jobOption.load();
        StagedFolder.fill(folder, staging -> writeAll(job, staging))
                .forEach(file -> spec.commandLine().getOut().println(file));
        return Exit.DONE;
    }

    /** The one place where files are written. */
    private void writeAll(CapJob job, Path staging) throws IOException {
        JobFiles.write(staging.resolve("job.json"), job.text());
        CutFiles.write(staging, Cap.solve(job), paper, whole, JobStamp.of(job.text()));
    }
}

package org.capwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.export.JobTag;
import org.capwright.export.SvgFile;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;
import org.capwright.store.JobStamp;
import org.capwright.store.StagedFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes everything that a shop needs to cut a job, wholly or not at all. */
@Command(name = "cut", description = "Write the patterns and lists of a job into a folder.")
final class CutCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job file.")
    private Path jobFile;

    @Option(names = "--to", required = true, paramLabel = "DIR", description = "The folder to write into.")
    private Path folder;

    @Option(names = "--paper", paramLabel = "P", defaultValue = "LETTER",
            description = "Paper of the tiled patterns: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private PaperSize paper;

    @Option(names = "--whole", description = "Also write each pattern on one sheet of its own size.")
    private boolean whole;

    @Override
    public Integer call() {
        CapJob job = JobLoader.load(jobFile);
        StagedFolder.fill(folder, staging -> writeAll(job, staging))
                .forEach(file -> spec.commandLine().getOut().println(file));
        return Exit.DONE;
    }

    /** The one place where files are written. */
    private void writeAll(CapJob job, Path staging) throws IOException {
        JobFiles.write(staging.resolve("job.json"), job.text());
        JobTag tag = JobTag.of(job, JobStamp.of(job.text()));
        Path blanksFolder = Files.createDirectory(staging.resolve("blanks"));
        for (Blank blank : Blanks.of(Cap.solve(job))) {
            SvgFile.write(blanksFolder.resolve(blank.id() + ".svg"), blank, tag, Writing.of(job).format());
        }
    }
}

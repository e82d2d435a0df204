package org.capwright.cli;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.RefusedJobException;
import org.capwright.store.JobFiles;
import org.capwright.store.StoreException;
import org.capwright.store.UnreadableJobException;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The job that a command works on, and the shop whose inputs stand in for what the job leaves out. */
final class JobOption {
    @Parameters(index = "0", paramLabel = "JOB", description = "The job file.")
    private Path jobFile;

    @Option(names = "--shop", paramLabel = "FILE", description = "A file of the same form with the shop's own inputs and limits; they"
            + " hold where the job leaves an input out.")
    private Optional<Path> shopFile;

    /**
     * Reads the job and every input in it.
     *
     * @return the job
     * @throws StoreException if a file can't be read from disk
     * @throws UnreadableJobException if one is not well-formed
     * @throws RefusedJobException if any input is refused, with every problem
     */
    CapJob load() {
        JobText text = JobFiles.read(jobFile);
        return JobReader.read(shopFile.map(file -> withShop(text, file)).orElse(text)).orThrow();
    }

    private static JobText withShop(JobText job, Path file) {
        JobText text = job;
        for (Map.Entry<String, String> one : JobFiles.read(file).texts().entrySet()) {
            text = text.at(one.getKey()).isPresent() ? text : text.with(one.getKey(), one.getValue());
        }
        return text;
    }
}

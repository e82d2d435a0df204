package org.capwright.cli;

import java.nio.file.Path;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.job.RefusedJobException;
import org.capwright.store.JobFiles;
import org.capwright.store.StoreException;
import org.capwright.store.UnreadableJobException;

/** From a job file to a job whose every input is good. */
final class JobLoader {
    private JobLoader() {
    }

    /**
     * Reads a job file and every input in it.
     *
     * @param file the job file
     * @return the job
     * @throws StoreException if the file can't be read from disk
     * @throws UnreadableJobException if it is not well-formed
     * @throws RefusedJobException if any input is refused, with every problem
     */
    static CapJob load(Path file) {
        return JobReader.read(JobFiles.read(file)).orThrow();
    }
}

package org.capwright.job;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a job: the job, or why not.
 *
 * @param job the job; empty where there is any problem
 * @param problems every problem, in the order of the inputs
 */
public record JobReading(Optional<CapJob> job, List<Problem> problems) {
    /** Keeps its own copy. */
    public JobReading {
        problems = List.copyOf(problems);
    }

    /**
     * The job.
     *
     * @return the job
     * @throws RefusedJobException with every problem, if there is any
     */
    public CapJob orThrow() {
        return job.orElseThrow(() -> new RefusedJobException(problems));
    }
}

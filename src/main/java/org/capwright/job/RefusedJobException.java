package org.capwright.job;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown where a job can't be used; carries every problem found, not only the first. */
public final class RefusedJobException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * Refuses a job.
     *
     * @param problems what is wrong, at least one
     */
    public RefusedJobException(List<Problem> problems) {
        super(problems.stream().map(Problem::message).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /**
     * What is wrong.
     *
     * @return every problem, in the order of the job file
     */
    public List<Problem> problems() {
        return problems;
    }
}

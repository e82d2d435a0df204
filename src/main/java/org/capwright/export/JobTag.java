package org.capwright.export;

import java.util.List;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.job.CapJob;
import org.capwright.job.JobInputs;

/**
 * What every page and file says about its job.
 *
 * @param name the job's name
 * @param revision its revision mark, may be empty
 * @param stamp short fingerprint of its inputs
 * @param fouls what is foul about it, a line each
 */
public record JobTag(String name, String revision, String stamp, List<String> fouls) {
    /** Keeps its own copy. */
    public JobTag {
        fouls = List.copyOf(fouls);
    }

    /**
     * The tag of a job.
     *
     * @param job the job
     * @param stamp its fingerprint
     * @param checks its checks
     * @return the tag
     */
    public static JobTag of(CapJob job, String stamp, List<Check> checks) {
        List<String> fouls = checks.stream().filter(check -> check.verdict() == Verdict.FOUL)
                .map(check -> check.line(Writing.of(job).format())).toList();
        return new JobTag(job.get(JobInputs.NAME), job.find(JobInputs.REVISION).orElse(""), stamp, fouls);
    }

    /**
     * The tag in one line.
     *
     * @return name, revision where there is one, and stamp
     */
    public String line() {
        return name + (revision.isBlank() ? "" : ", revision " + revision) + ", stamp " + stamp;
    }
}

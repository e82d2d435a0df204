package org.capwright.export;

import org.capwright.job.CapJob;
import org.capwright.job.JobInputs;

/**
 * What every page and file says about its job.
 *
 * @param name the job's name
 * @param revision its revision mark, may be empty
 * @param stamp short fingerprint of its inputs
 */
public record JobTag(String name, String revision, String stamp) {
    /**
     * The tag of a job.
     *
     * @param job the job
     * @param stamp its fingerprint
     * @return the tag
     */
    public static JobTag of(CapJob job, String stamp) {
        return new JobTag(job.get(JobInputs.NAME), job.find(JobInputs.REVISION).orElse(""), stamp);
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

package org.capwright.stock;

import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.job.JobInputs;
import org.capwright.part.Cap;

/**
 * A job to be cut.
 *
 * @param name its name
 * @param cap the cap
 * @param blanks its blanks
 * @param caps how many of it
 */
public record StockJob(String name, Cap cap, List<Blank> blanks, int caps) {
    /** Keeps its own copy. */
    public StockJob {
        blanks = List.copyOf(blanks);
        if (caps < 1) {
            throw new IllegalArgumentException("at least 1 cap must be made, not " + caps);
        }
    }

    /**
     * A job of some caps.
     *
     * @param cap the cap
     * @param caps how many of it
     * @return the job
     */
    public static StockJob of(Cap cap, int caps) {
        return new StockJob(cap.job().get(JobInputs.NAME), cap, Blanks.of(cap), caps);
    }
}

package org.capwright.desk.session;

import java.util.List;
import org.capwright.air.Air;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.store.JobStamp;
import org.capwright.swing.Swing;
import org.capwright.units.ShopFormat;

/**
 * A cap and everything that the window shows of it.
 *
 * @param cap the cap
 * @param swing its swing
 * @param air its air
 * @param checks its checks, fouls first
 * @param blanks its blanks
 * @param stamp short fingerprint of its inputs
 * @param format how numbers are printed
 */
public record Solved(Cap cap, Swing swing, Air air, List<Check> checks, List<Blank> blanks, String stamp, ShopFormat format) {
    /** Keeps its own copies. */
    public Solved {
        checks = List.copyOf(checks);
        blanks = List.copyOf(blanks);
    }

    /**
     * Solves a job for the window.
     *
     * @param job the job
     * @return everything
     * @throws org.capwright.job.RefusedJobException where no such cap can exist
     */
    public static Solved of(CapJob job) {
        Cap cap = Cap.solve(job);
        Swing swing = Swing.of(cap);
        Air air = Air.of(cap);
        return new Solved(cap, swing, air, Checks.worstFirst(Checks.of(cap, swing, air)), Blanks.of(cap), JobStamp.of(job.text()),
                Writing.of(job).format());
    }
}

package org.capwright.desk.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.capwright.air.Air;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
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
     * @param stock what its blanks are to be cut from, where the shop has said so
     * @return everything; blanks that fit on no sheet, even in more pieces, are among the checks
     * @throws org.capwright.job.RefusedJobException where no such cap can exist
     */
    public static Solved of(CapJob job, Optional<ShopStock> stock) {
        Cap cap = Cap.solve(job);
        Swing swing = Swing.of(cap);
        Air air = Air.of(cap);
        List<Check> checks = new ArrayList<>(Checks.of(cap, swing, air));
        stock.ifPresent(it -> checks.addAll(StockFit.checks(cap, it)));
        return new Solved(cap, swing, air, Checks.worstFirst(checks), Blanks.of(cap), JobStamp.of(job.text()),
                Writing.of(job).format());
    }

    /**
     * The worst of the checks that have a place: by verdict, then by margin.
     *
     * @return the one to look at first; empty where none has a place
     */
    public Optional<Check> worstPlace() {
        return checks.stream().filter(check -> check.place().isPresent()).min(Comparator.comparing(Check::verdict).thenComparingDouble(Check::margin));
    }
}

package org.capwright.stock;

import java.nio.file.Path;
import java.util.List;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;

/** Demo jobs, with changes, and plans by work rather than by the clock. */
public final class ShopJobs {
    public static final List<String> DEMOS = List.of("kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class");

    private ShopJobs() {
    }

    /** By work, not by the clock, so that a slow machine plans the same. */
    public static StockPlan.Options work(double seconds) {
        return new StockPlan.Options(seconds, 600, 1, group -> { }, () -> false);
    }

    public static JobText text(String name) {
        return JobFiles.read(Path.of("demo-jobs", name + ".json"));
    }

    public static Cap cap(String name) {
        return Cap.solve(JobReader.read(text(name)).orThrow());
    }
}

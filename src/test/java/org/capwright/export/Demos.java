package org.capwright.export;

import java.nio.file.Path;
import java.util.List;
import org.capwright.job.JobReader;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;

/** The demo jobs, solved. */
public final class Demos {
    /** Their names. */
    public static final List<String> ALL = List.of("kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class");

    private Demos() {
    }

    /** One of them. */
    public static Cap cap(String name) {
        return Cap.solve(JobReader.read(JobFiles.read(Path.of("demo-jobs", name + ".json"))).orThrow());
    }
}

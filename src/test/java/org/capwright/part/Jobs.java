package org.capwright.part;

import java.nio.file.Path;
import java.util.Map;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.store.JobFiles;

/** Jobs for tests. */
public final class Jobs {
    private static final Path KILN = Path.of("src", "test", "resources", "cases", "worked-kiln.json");

    private Jobs() {
    }

    /** The trade handbook's worked cap, a kiln room's. */
    public static CapJob kiln() {
        return kilnWith(Map.of());
    }

    /** The same with some inputs typed anew. */
    public static CapJob kilnWith(Map<String, String> typed) {
        JobText text = JobFiles.read(KILN);
        for (Map.Entry<String, String> one : typed.entrySet()) {
            text = text.with(one.getKey(), one.getValue());
        }
        return JobReader.read(text).orThrow();
    }
}

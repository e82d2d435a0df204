package org.capwright.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;

/** The demo jobs. */
final class DemoJobs {
    static final List<String> ALL = List.of("kiln-room", "bakery-oven-room", "grain-dryer-hall", "woodwork-class");

    private DemoJobs() {
    }

    static JobText text(String name) {
        return JobFiles.read(Path.of("demo-jobs", name + ".json"));
    }

    static Cap cap(String name, Map<String, String> typed) {
        JobText text = text(name);
        for (Map.Entry<String, String> one : typed.entrySet()) {
            text = text.with(one.getKey(), one.getValue());
        }
        return Cap.solve(JobReader.read(text).orThrow());
    }
}

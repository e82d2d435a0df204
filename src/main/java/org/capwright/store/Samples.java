package org.capwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.capwright.job.JobText;

/** The sample files that the program brings along; their figures are invented. */
final class Samples {
    private Samples() {
    }

    static JobText text(String name) {
        try (InputStream in = Samples.class.getResourceAsStream(name)) {
            return JobParser.parse(Path.of(name), in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

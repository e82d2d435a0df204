package org.capwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.capwright.job.JobText;

/**
 * Job files: JSON in UTF-8. What is typed goes through unchanged: {@code "18 in"} stays {@code 18 in}, and {@code 0.330}
 * stays {@code 0.330}.
 */
public final class JobFiles {
    private JobFiles() {
    }

    /**
     * Reads a job file. Only its form is looked at; whether the inputs are good is for {@link org.capwright.job.JobReader}.
     *
     * @param file the job file
     * @return its texts by path, in the order of the file
     * @throws StoreException if it can't be read from disk
     * @throws UnreadableJobException if it is not well-formed JSON, names a field twice or names one that no path can hold
     */
    public static JobText read(Path file) {
        try {
            return JobParser.parse(file, Files.readAllBytes(file));
        } catch (IOException e) {
            throw StoreException.reading(file, e);
        }
    }

    /**
     * Writes a job file whole or not at all: into a temporary file beside it, which then takes its place.
     *
     * @param file the job file, replaced if there is one
     * @param text what to write, right or wrong
     * @throws StoreException if it can't be written
     */
    public static void write(Path file, JobText text) {
        writeWhole(file, JobPrinter.print(text));
    }

    /** Writes a text into a file, whole or not at all. */
    static void writeWhole(Path file, String whole) {
        byte[] bytes = whole.getBytes(StandardCharsets.UTF_8);
        // a plain name, not a temporary file: those can be read by their owner only
        Path staged = file.resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try {
                Files.write(staged, bytes);
                AtomicMove.replace(staged, file);
            } finally {
                Files.deleteIfExists(staged);
            }
        } catch (IOException e) {
            throw StoreException.writing(file, e);
        }
    }
}

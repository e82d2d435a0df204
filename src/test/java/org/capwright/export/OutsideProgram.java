package org.capwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Other people's programs, run to read what was written. */
public final class OutsideProgram {
    private OutsideProgram() {
    }

    /** Whether a command runs and ends well. */
    public static boolean works(String... command) {
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getInputStream().readAllBytes();
            return process.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The lines that a command prints, with files as its last words; fails if the command does. */
    public static List<String> lines(List<String> command, List<Path> files) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(command);
        files.forEach(file -> words.add(file.toString()));
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(text).isZero();
        return text.lines().toList();
    }
}

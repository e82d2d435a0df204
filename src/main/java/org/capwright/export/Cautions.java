package org.capwright.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The usual cautions, in one place. */
public final class Cautions {
    /** Each caution, a sentence or two. */
    public static final List<String> ALL = read();

    private Cautions() {
    }

    private static List<String> read() {
        try (InputStream stream = Cautions.class.getResourceAsStream("cautions.txt")) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

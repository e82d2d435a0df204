package org.capwright.metal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table of resources: lines of fields between bars; lines that begin with # are its source.
 *
 * @param source where its numbers are from, and how sure they are
 * @param rows its rows, the heading left out
 */
record Table(String source, List<List<String>> rows) {
    /** Reads a table that the program carries. */
    static Table read(String name) {
        try (InputStream in = Table.class.getResourceAsStream(name)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.isBlank()).toList();
            String source = lines.stream().filter(line -> line.startsWith("#")).map(line -> line.substring(1).strip())
                    .collect(Collectors.joining(" "));
            List<List<String>> rows = lines.stream().filter(line -> !line.startsWith("#")).skip(1)
                    .map(line -> List.of(line.strip().split("\\s*\\|\\s*"))).toList();
            return new Table(source, rows);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own table " + name + " can't be read", e);
        }
    }
}

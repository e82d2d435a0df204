package org.capwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What each check is, why it matters, and how to measure it on the work: the resource beside this package is the one home of
 * what help shows beside a check.
 */
final class Explanations {
    private static final Map<String, String> BY_KEY = read();

    private Explanations() {
    }

    /** The explanation of a check, by its id; empty for an id that is none of ours. */
    static String of(String id) {
        return BY_KEY.getOrDefault(key(id), "");
    }

    private static String key(String id) {
        if (id.startsWith("stock.") || id.startsWith("bend.")) {
            return id.substring(0, id.indexOf('.')) + ".part";
        }
        if (id.startsWith("held.")) {
            return BY_KEY.containsKey(id) ? id : "held.size";
        }
        if (id.matches("(sleeve|hood)\\.(lap|seam)")) {
            return "part" + id.substring(id.indexOf('.'));
        }
        return id.replaceAll("\\.(plus|minus)$", "").replaceAll("\\.\\d+(?=\\.|$)", ".N");
    }

    private static Map<String, String> read() {
        try (InputStream in = Explanations.class.getResourceAsStream("explanations.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#")).skip(1)
                    .map(line -> line.split(" \\| ", 2)).collect(Collectors.toUnmodifiableMap(pair -> pair[0], pair -> pair[1]));
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own explanations can't be read", e);
        }
    }
}

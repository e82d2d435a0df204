package org.capwright.layout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;

/** What a shop may be out by, from the table in the resource, which names its sources. */
public final class Tolerances {
    private static final List<String[]> ROWS = read();

    private Tolerances() {
    }

    private static List<String[]> read() {
        try (InputStream stream = Tolerances.class.getResourceAsStream("tolerances.txt")) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).map(line -> line.split(" ")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * General tolerance of a linear dimension, class c of ISO 2768-1 (from memory).
     *
     * @param nominalMm nominal size
     * @return plus and minus, mm; empty beyond the table, 4 m
     */
    public static OptionalDouble linearMm(double nominalMm) {
        return find("linear", nominalMm);
    }

    /**
     * Tolerance of a round bore after EN 1506.
     *
     * @param nominalMm nominal inside diameter
     * @return plus, minus nothing, mm; empty beyond the table, 1250 mm
     */
    public static OptionalDouble boreMm(double nominalMm) {
        return find("bore", nominalMm);
    }

    private static OptionalDouble find(String kind, double nominalMm) {
        return ROWS.stream().filter(row -> row[0].equals(kind) && nominalMm <= Double.parseDouble(row[1]))
                .mapToDouble(row -> Double.parseDouble(row[2])).findFirst();
    }
}

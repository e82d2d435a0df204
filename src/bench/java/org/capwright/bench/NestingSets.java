package org.capwright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import java.util.stream.Stream;
import org.capwright.stock.nest.Nest;
import org.capwright.stock.nest.NestTask;
import org.capwright.stock.nest.Nester;
import org.capwright.stock.nest.OpenSets;

/**
 * Nests the open sets and prints a table: {@code terashima2} (pieces of sheets cut apart without waste; Lopez-Camacho 2012)
 * against the sheets they were cut from, and {@code 2dvsbpp} (rectangles on sheets of several sizes; Pisinger and Sigurd 2005)
 * against the lower bound on cost. Both CC0-1.0. No spacing, no margin.
 */
public final class NestingSets {
    private NestingSets() {
    }

    /**
     * Runs both sets.
     *
     * @param args folder that holds both, seconds for each instance, seed
     * @throws IOException if a file can't be read
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        double seconds = Double.parseDouble(args[1]);
        long seed = Long.parseLong(args[2]);
        System.out.println("| set | pieces | sheets | optimum | bound | use | cost | cost bound | CPU s |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
        for (Path file : files(folder.resolve("terashima2"), "T")) {
            Path cut = file.resolveSibling("Op" + file.getFileName());
            print(file, OpenSets.irregular(Files.readString(file)), new Scanner(Files.readString(cut)).nextInt(), seconds, seed);
        }
        for (Path file : files(folder.resolve("2dvsbpp"), "M")) {
            print(file, OpenSets.rectangles(Files.readString(file)), 0, seconds, seed);
        }
    }

    private static List<Path> files(Path folder, String begin) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith(begin)).sorted().toList();
        }
    }

    private static void print(Path file, NestTask task, int optimum, double seconds, long seed) {
        long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        // by work, not by the clock: the same table on every machine
        Nest nest = Nester.nest(task, new Nester.Options(seconds, 60 * seconds, seed, better -> { }, () -> false));
        double time = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begin) * 1e-9;
        if (!nest.unplaced().isEmpty()) {
            throw new IllegalStateException(file + ": pieces left over");
        }
        System.out.println(String.format(Locale.ROOT, "| %s | %d | %d | %s | %d | %.3f | %.0f | %.0f | %.2f |",
                file.getFileName().toString().replace(".txt", ""), task.pieces(), nest.sheets().size(), optimum == 0 ? "" : Integer.toString(optimum),
                nest.bound().orElseThrow().sheets(), nest.use(), nest.cost(), nest.bound().orElseThrow().cost(), time));
    }
}

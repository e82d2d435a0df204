package org.capwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import java.util.stream.Stream;
import org.capwright.geom.Vec2;
import org.capwright.stock.nest.Demand;
import org.capwright.stock.nest.Nest;
import org.capwright.stock.nest.NestRules;
import org.capwright.stock.nest.NestTask;
import org.capwright.stock.nest.Nester;
import org.capwright.stock.nest.Piece;
import org.capwright.stock.nest.SheetSize;

/**
 * Nests the open sets and prints a table: {@code terashima2} (pieces of sheets cut apart without waste; Lopez-Camacho 2012)
 * against the sheets they were cut from, and {@code 2dvsbpp} (rectangles on sheets of several sizes; Pisinger and Sigurd 2005)
 * against the lower bound on cost. Both CC0-1.0. No spacing, no margin.
 */
public final class NestingSets {
    private static final NestRules RULES = new NestRules(0, 0, 0);
    private static final List<Integer> TURNS = List.of(0, 1, 2, 3);

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
        System.out.println("| set | pieces | sheets | optimum | bound | use | cost | cost bound | time s |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
        for (Path file : files(folder.resolve("terashima2"), "T")) {
            Path cut = file.resolveSibling("Op" + file.getFileName());
            print(file, irregular(Files.readString(file)), new Scanner(Files.readString(cut)).nextInt(), seconds, seed);
        }
        for (Path file : files(folder.resolve("2dvsbpp"), "M")) {
            print(file, rectangles(Files.readString(file)), 0, seconds, seed);
        }
    }

    private static List<Path> files(Path folder, String begin) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith(begin)).sorted().toList();
        }
    }

    private static void print(Path file, NestTask task, int optimum, double seconds, long seed) {
        long begin = System.nanoTime();
        Nest nest = Nester.nest(task, Nester.Options.of(seconds, seed));
        double time = (System.nanoTime() - begin) * 1e-9;
        if (!nest.unplaced().isEmpty()) {
            throw new IllegalStateException(file + ": pieces left over");
        }
        System.out.println(String.format(Locale.ROOT, "| %s | %d | %d | %s | %d | %.3f | %.0f | %.0f | %.2f |",
                file.getFileName().toString().replace(".txt", ""), task.pieces(), nest.sheets().size(), optimum == 0 ? "" : Integer.toString(optimum),
                nest.bound().orElseThrow().sheets(), nest.use(), nest.cost(), nest.bound().orElseThrow().cost(), time));
    }

    /** First pieces, sheet width and height; then corner count and corners of each piece. */
    static NestTask irregular(String text) {
        Scanner in = new Scanner(text).useLocale(Locale.ROOT);
        int count = in.nextInt();
        SheetSize sheet = new SheetSize("sheet", in.nextDouble(), in.nextDouble(), 1, Integer.MAX_VALUE, false);
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Vec2> corners = new ArrayList<>();
            for (int left = in.nextInt(); left > 0; left--) {
                corners.add(new Vec2(in.nextDouble(), in.nextDouble()));
            }
            demands.add(demand("piece " + (i + 1), corners));
        }
        return new NestTask(demands, List.of(sheet), RULES);
    }

    /** First pieces and sizes; then length, width, 1 and cost of each size; then number, length, width, 1 of each piece. */
    static NestTask rectangles(String text) {
        Scanner in = new Scanner(text).useLocale(Locale.ROOT);
        int count = in.nextInt();
        int sizes = in.nextInt();
        in.nextLine();
        List<SheetSize> sheets = new ArrayList<>();
        for (int i = 0; i < sizes; i++) {
            double length = in.nextDouble();
            double width = in.nextDouble();
            in.nextInt();
            sheets.add(new SheetSize("size " + (i + 1), length, width, in.nextDouble(), Integer.MAX_VALUE, false));
        }
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String name = "piece " + in.next();
            double x = in.nextDouble();
            double y = in.nextDouble();
            in.nextInt();
            demands.add(demand(name, List.of(Vec2.ZERO, new Vec2(x, 0), new Vec2(x, y), new Vec2(0, y))));
        }
        return new NestTask(demands, List.of(sheets.toArray(new SheetSize[0])), RULES);
    }

    private static Demand demand(String name, List<Vec2> corners) {
        return new Demand(new Piece("", name, org.capwright.geom.Path.polyline(corners, true), List.of(), TURNS), 1);
    }
}

package org.capwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.capwright.geom.Vec2;
import org.capwright.stock.nest.Demand;
import org.capwright.stock.nest.Nest;
import org.capwright.stock.nest.NestRules;
import org.capwright.stock.nest.NestTask;
import org.capwright.stock.nest.Nester;
import org.capwright.stock.nest.Piece;
import org.capwright.stock.nest.SheetSize;

/**
 * Seeded jobs of 10 to 60 rectangles on one size of sheet, nested; what was asked and how many sheets it took goes into a file, a line
 * a job, for {@code src/bench/peer/rectangles.mjs} to pack again. See {@code docs/nesting-benchmark.md}.
 */
public final class RectangleJobs {
    private static final NestRules RULES = new NestRules(5, 6, 300);
    private static final SheetSize SHEET = new SheetSize("sheet", 3048, 1219, 1, Integer.MAX_VALUE, false);
    private static final int JOBS = 40;

    private RectangleJobs() {
    }

    /**
     * Nests the jobs.
     *
     * @param args file to write, seconds of work for each
     * @throws IOException if the file can't be written
     */
    public static void main(String[] args) throws IOException {
        List<String> lines = new ArrayList<>();
        for (int seed = 1; seed <= JOBS; seed++) {
            lines.add(line(seed, Double.parseDouble(args[1])));
        }
        Files.write(Path.of(args[0]), lines);
    }

    private static String line(int seed, double seconds) {
        Random random = new Random(seed);
        List<Demand> demands = new ArrayList<>();
        StringBuilder sizes = new StringBuilder();
        for (int i = 10 + random.nextInt(51); i > 0; i--) {
            int length = 60 + random.nextInt(random.nextInt(4) == 0 ? 2000 : 600);
            int width = 40 + random.nextInt(500);
            demands.add(new Demand(new Piece("", "piece " + i, org.capwright.geom.Path.polyline(List.of(Vec2.ZERO, new Vec2(length, 0),
                    new Vec2(length, width), new Vec2(0, width)), true), List.of(), List.of(0, 1)), 1));
            sizes.append(' ').append(length).append('x').append(width);
        }
        Nest nest = Nester.nest(new NestTask(demands, List.of(SHEET), RULES), new Nester.Options(seconds, 60 * seconds, seed, better -> { }, () -> false));
        return String.format(Locale.ROOT, "%d %d %d%s", seed, nest.sheets().size(), nest.bound().orElseThrow().sheets(), sizes);
    }
}

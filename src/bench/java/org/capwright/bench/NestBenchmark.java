package org.capwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.capwright.stock.nest.Demand;
import org.capwright.stock.nest.Nest;
import org.capwright.stock.nest.NestRules;
import org.capwright.stock.nest.NestTask;
import org.capwright.stock.nest.Nester;
import org.capwright.stock.nest.Piece;
import org.capwright.stock.nest.SheetSize;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Times a first valid layout with its bound and its check: half discs, notched strips, bars of channel, brackets, discs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class NestBenchmark {
    private static final List<Integer> ALONG = List.of(0, 2);
    private static final List<Integer> ANY = List.of(0, 1, 2, 3);

    /** How many parts. */
    @Param({"30", "60"})
    public int parts;
    private NestTask task;

    /** Makes a job: of every ten parts two half discs, one strip, two channels, three brackets, two discs. */
    @Setup
    public void job() {
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < parts / 10; i++) {
            double r = 220 + 15 * i;
            demands.add(new Demand(piece(PathBuilder.from(new Vec2(0, -r)).arcTo(new Vec2(0, r), Vec2.ZERO, true).close(), ALONG), 2));
            demands.add(new Demand(piece(strip(1500 + 60 * i, 260), ALONG), 1));
            demands.add(new Demand(piece(box(500 + 10 * i, 90), ALONG), 2));
            demands.add(new Demand(piece(box(110 + i, 51), ALONG), 3));
            demands.add(new Demand(piece(Path.circle(Vec2.ZERO, 30 + i), ANY), 2));
        }
        task = new NestTask(demands, List.of(new SheetSize("sheet", 3048, 1219, 1, Integer.MAX_VALUE, false)), new NestRules(5, 6, 300));
    }

    private static Piece piece(Path outline, List<Integer> turns) {
        return new Piece("", "part", outline, List.of(), turns);
    }

    private static Path box(double length, double width) {
        return Path.polyline(List.of(Vec2.ZERO, new Vec2(length, 0), new Vec2(length, width), new Vec2(0, width)), true);
    }

    private static Path strip(double length, double width) {
        double a = length / 4;
        return Path.polyline(List.of(Vec2.ZERO, new Vec2(length, 0), new Vec2(length, width), new Vec2(3 * a + 60, width), new Vec2(3 * a + 60, width - 20),
                new Vec2(3 * a, width - 20), new Vec2(3 * a, width), new Vec2(a, width), new Vec2(a, width - 20), new Vec2(a - 60, width - 20),
                new Vec2(a - 60, width), new Vec2(0, width)), true);
    }

    /** The first layout. */
    @Benchmark
    public Nest firstLayout() {
        return Nester.nest(task, Nester.Options.of(0, 1));
    }
}

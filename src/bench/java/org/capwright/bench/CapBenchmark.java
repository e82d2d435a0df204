package org.capwright.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.capwright.air.Air;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.check.Check;
import org.capwright.check.Checks;
import org.capwright.check.Influence;
import org.capwright.check.Influences;
import org.capwright.check.Measure;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;
import org.capwright.swing.Swing;
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

/** Times the core, warm: solving, swing, air, checks, blanks, what buys what. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CapBenchmark {
    /** Two leaves and four. */
    @Param({"kiln-room", "grain-dryer-hall"})
    public String demo;
    private CapJob job;
    private Cap cap;

    /** Reads the demo. */
    @Setup
    public void read() {
        job = JobReader.read(JobFiles.read(Path.of("demo-jobs", demo + ".json"))).orThrow();
        cap = Cap.solve(job);
    }

    /** Solves every part. */
    @Benchmark
    public Cap solve() {
        return Cap.solve(job);
    }

    /** Reads every input again. */
    @Benchmark
    public CapJob readInputs() {
        return JobReader.read(job.text()).orThrow();
    }

    /** The swing alone. */
    @Benchmark
    public Swing swing() {
        return Swing.of(cap);
    }

    /** The air alone. */
    @Benchmark
    public Air air() {
        return Air.of(cap);
    }

    /** Solves, swings, blows and checks. */
    @Benchmark
    public List<Check> solveAndCheck() {
        return Checks.of(Cap.solve(job));
    }

    /** All blanks. */
    @Benchmark
    public List<Blank> blanks() {
        return Blanks.of(cap);
    }

    /** What buys lift pressure. */
    @Benchmark
    public List<Influence> influences() {
        return Influences.of(cap, Measure.LIFT_PRESSURE);
    }
}

package org.capwright.bench;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.capwright.fitup.Advice;
import org.capwright.fitup.FitUp;
import org.capwright.fitup.tolerance.Progress;
import org.capwright.fitup.tolerance.ToleranceRun;
import org.capwright.job.CapJob;
import org.capwright.job.JobReader;
import org.capwright.part.Cap;
import org.capwright.store.JobFiles;
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

/** Times fit-up, warm: fit and verdict under 20 ms; 100 000 builds of the kiln job under 2 s on two cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FitBenchmark {
    /** Two leaves and four, with readings. */
    @Param({"kiln-room", "grain-dryer-hall"})
    public String demo;
    private CapJob job;
    private Cap cap;
    private FitUp fitUp;

    /** Reads the demo. */
    @Setup
    public void read() {
        job = JobReader.read(JobFiles.read(Path.of("demo-jobs", demo + ".json"))).orThrow();
        cap = Cap.solve(job);
        fitUp = FitUp.of(job);
    }

    /** Fits the readings, derives the rest anew, swings and judges. */
    @Benchmark
    public FitUp fitAndVerdict() {
        return FitUp.of(job);
    }

    /** Finds the best shift and, where something is not clear, tries what helps. */
    @Benchmark
    public Advice advice() {
        return Advice.of(fitUp);
    }

    /** A hundred thousand builds on all cores. */
    @Benchmark
    public ToleranceRun builds100000() {
        return ToleranceRun.of(cap, 100_000, 1, Progress.NONE).orElseThrow();
    }
}

package org.stillrail.electrical.spread;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Time of random banks on one core; {@link #main} prints it beside its target. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class MonteCarloBenchmark {

    private static final Map<String, Double> TARGET_MS = Map.of("tenThousandBanksOfThreeBranches", 2000.0);

    private final RandomBank bank = MonteCarloTest.threeBranches();

    @Benchmark
    public MonteCarlo tenThousandBanksOfThreeBranches() {
        return MonteCarlo.of(bank, List.of(), 10_000, 42, 1);
    }

    /** Runs it; about half a minute. */
    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                .include(MonteCarloBenchmark.class.getName())
                .forks(1)
                .warmupIterations(2)
                .warmupTime(TimeValue.seconds(2))
                .measurementIterations(3)
                .measurementTime(TimeValue.seconds(2))
                .build()).run();
        for (RunResult result : results) {
            String name = result.getPrimaryResult().getLabel();
            double time = result.getPrimaryResult().getScore();
            System.out.printf("%-32s %9.1f ms, %.2f of the target of %.0f ms%n",
                    name, time, time / TARGET_MS.get(name), TARGET_MS.get(name));
        }
    }
}

package org.stillrail.electrical.spread;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.runner.RunnerException;
import org.stillrail.support.Speed;

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

    public static void main(String[] arguments) throws RunnerException {
        Speed.print(MonteCarloBenchmark.class, TARGET_MS);
    }
}

package org.stillrail.electrical.fit;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.runner.RunnerException;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.support.Speed;

/** One typical part of 400 points, order search and passivity included, on one core. The target is 10 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class VectorFittingBenchmark {

    private static final Map<String, Double> TARGET_MS = Map.of("fit", 10.0);

    @Param({"ceramic", "inner resonance", "polymer", "wet aluminium", "double layer"})
    public String part;

    /** Up to this share of |Z| at each point. */
    @Param({"0", "0.001", "0.005"})
    public double noise;

    private Curve curve;

    @Setup
    public void sample() {
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e3, 1e8, 400);
        curve = switch (part) {
            case "ceramic" -> Synthetic.noisy(Synthetic.ceramic(), grid, noise, 1);
            case "inner resonance" -> Synthetic.noisy(Synthetic.ceramicWithInnerResonance(), grid, noise, 1);
            case "polymer" -> Synthetic.noisy(Synthetic.polymer(), grid, noise, 1);
            case "wet aluminium" -> Synthetic.noisy(Synthetic.wetAluminium(), grid, noise, 1);
            default -> Synthetic.noisy(Synthetic.doubleLayer(), FrequencyGrid.logSpaced(0.01, 1e6, 400), noise, 1);
        };
    }

    @Benchmark
    public RationalFit fit() {
        return VectorFitting.fit(curve);
    }

    public static void main(String[] arguments) throws RunnerException {
        Speed.print(VectorFittingBenchmark.class, TARGET_MS);
    }
}

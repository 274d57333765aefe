package org.stillrail.support;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs the benchmarks of a class on one core and prints each time beside its target, with the processor time beside it. */
public final class Speed {

    /** Enough that what the compiler still does no longer counts. */
    private static final int WARM_UPS = 12;
    private static final int MEASURED = 4;

    private Speed() {
    }

    /** @param targets by name of the benchmark, in the unit of its class */
    public static void print(Class<?> benchmarks, Map<String, Double> targets) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                .include(benchmarks.getName())
                .verbosity(VerboseMode.SILENT)
                .addProfiler(ProcessorTime.class)
                .forks(1)
                // Without workers of the common pool a parallel stream stays in its caller: one core.
                .jvmArgsAppend("-XX:ActiveProcessorCount=1", "-Djava.util.concurrent.ForkJoinPool.common.parallelism=0")
                .warmupIterations(WARM_UPS)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(MEASURED)
                .measurementTime(TimeValue.seconds(1))
                .build()).run();
        for (RunResult result : results) {
            String name = result.getPrimaryResult().getLabel();
            double time = result.getPrimaryResult().getScore();
            String unit = result.getPrimaryResult().getScoreUnit().replace("/op", "");
            StringBuilder parameters = new StringBuilder();
            result.getParams().getParamsKeys().forEach(key -> parameters.append(", ").append(key).append(' ').append(result.getParams().getParam(key)));
            System.out.printf(Locale.ROOT, "%-58s %10.3f %s, %.2f of the target of %.0f %s; processor %.3f ms%n", name + parameters, time,
                    unit, time / targets.get(name), targets.get(name), unit, processorMs(result));
        }
    }

    private static double processorMs(RunResult result) {
        return result.getSecondaryResults().entrySet().stream().filter(each -> each.getKey().endsWith(ProcessorTime.NAME))
                .mapToDouble(each -> each.getValue().getScore()).findFirst().orElse(Double.NaN);
    }
}

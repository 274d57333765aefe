package org.stillrail.support;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/** Processor time of the whole process for one operation: on a busy machine it tells a slow calculation from a slow neighbour. */
public final class ProcessorTime implements InternalProfiler {

    static final String NAME = "cpu";

    private static final double NS_PER_MS = 1e6;

    private final OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private long startedNs;

    @Override
    public String getDescription() {
        return "Processor time of an operation in ms, compilation and collection included";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        startedNs = system.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result> afterIteration(BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double ms = (system.getProcessCpuTime() - startedNs) / NS_PER_MS / result.getMetadata().getAllOps();
        return List.of(new ScalarResult(NAME, ms, "ms", AggregationPolicy.AVG));
    }
}

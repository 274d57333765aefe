package org.stillrail;

import java.lang.management.ManagementFactory;
import org.openjdk.jmh.runner.RunnerException;
import org.stillrail.electrical.bank.BankBenchmark;
import org.stillrail.electrical.evaluation.EvaluationBenchmark;
import org.stillrail.electrical.fit.VectorFittingBenchmark;
import org.stillrail.electrical.spread.MonteCarloBenchmark;

/** Every time that the physics is held to, on one core, beside its target: some ten minutes. */
public final class SpeedBenchmarks {

    private SpeedBenchmarks() {
    }

    public static void main(String[] arguments) throws RunnerException {
        System.out.printf("%d processors, load average %.2f%n", Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        BankBenchmark.main(arguments);
        EvaluationBenchmark.main(arguments);
        MonteCarloBenchmark.main(arguments);
        VectorFittingBenchmark.main(arguments);
    }
}

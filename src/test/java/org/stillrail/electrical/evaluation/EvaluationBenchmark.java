package org.stillrail.electrical.evaluation;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.curve.FrequencyGrid;

/** Processor time of a whole evaluation of six branches, remedies and all; {@link #main} prints it beside its target. */
public final class EvaluationBenchmark {

    private static final double TARGET_MS = 120;
    private static final int RUNS = 40;

    private EvaluationBenchmark() {
    }

    public static void main(String[] arguments) {
        EvaluationInput mixed = Rails.input(Rails.everything(),
                Rails.part("wet", 1, Technology.WET_ALUMINIUM, 10, Rails.datasheet(4.7e-4, 0.12, 0.05, 8e-9)),
                Rails.part("polymer", 2, Technology.POLYMER_ALUMINIUM, 6.3, Rails.datasheet(2.2e-4, 0.08, 0.015, 3e-9)),
                Rails.part("bulk ceramic", 4, Technology.CERAMIC_CLASS_2, 10, table(new SeriesRlc(2.2e-5, 0.003, 8e-10))),
                Rails.part("ceramic", 2, Technology.CERAMIC_CLASS_2, 10, table(new SeriesRlc(1e-5, 0.003, 6e-10))),
                Rails.part("small", 2, Technology.CERAMIC_CLASS_2, 16, new SeriesRlc(1e-6, 0.01, 5e-10)),
                Rails.part("smallest", 2, Technology.CERAMIC_CLASS_2, 16, new SeriesRlc(1e-7, 0.03, 4e-10)));
        EvaluationInput circuits = Rails.input(Rails.everything(), Rails.polymer(2), Rails.ceramic(4),
                Rails.part("c", 2, Technology.CERAMIC_CLASS_2, 16, new SeriesRlc(1e-6, 0.01, 5e-10)),
                Rails.part("d", 2, Technology.CERAMIC_CLASS_2, 16, new SeriesRlc(2.2e-6, 0.01, 5e-10)),
                Rails.part("e", 2, Technology.CERAMIC_CLASS_2, 16, new SeriesRlc(4.7e-7, 0.02, 5e-10)),
                Rails.part("f", 2, Technology.CERAMIC_CLASS_2, 16, new SeriesRlc(1e-7, 0.03, 4e-10)));
        print("six mixed models", mixed);
        print("six circuits", circuits);
    }

    private static void print(String name, EvaluationInput input) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double[] ms = new double[RUNS];
        for (int i = 0; i < RUNS; i++) {
            long start = clock.getCurrentThreadCpuTime();
            Evaluation evaluation = Evaluation.evaluate(input);
            ms[i] = (clock.getCurrentThreadCpuTime() - start) / 1e6;
            if (i == RUNS - 1) {
                System.out.println(evaluation.claim().sentence());
            }
        }
        System.out.printf("%-18s first %.0f ms%n", name, ms[0]);
        double[] warm = Arrays.copyOfRange(ms, RUNS / 2, RUNS);
        Arrays.sort(warm);
        System.out.printf("%-18s median %.1f ms, %.2f of the target of %.0f ms%n", name, warm[warm.length / 2],
                warm[warm.length / 2] / TARGET_MS, TARGET_MS);
    }

    private static ImpedanceModel table(SeriesRlc part) {
        FrequencyGrid points = FrequencyGrid.logSpaced(100, 1e8, 401);
        double[] r = new double[401];
        double[] x = new double[401];
        part.addImpedanceTo(points, r, x);
        return TableModel.of(points.toArray(), r, x);
    }
}

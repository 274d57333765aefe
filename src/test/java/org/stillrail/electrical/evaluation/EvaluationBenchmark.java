package org.stillrail.electrical.evaluation;

import java.util.List;
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
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.support.Speed;

/** Verdicts of six branches at all corners, at least 24 of them, and the whole evaluation with curves and remedies, on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class EvaluationBenchmark {

    private static final Map<String, Double> TARGET_MS = Map.of("verdictsAtAllCorners", 150.0, "wholeEvaluation", 150.0);
    private static final int FEWEST_CORNERS = 24;

    @Param({"mixed models", "circuits"})
    public String bank;

    private EvaluationInput input;

    @Setup
    public void compose() {
        input = bank.equals("circuits") ? circuits() : mixed();
        int corners = Evaluation.evaluate(input).corners().size();
        if (corners < FEWEST_CORNERS) {
            throw new IllegalStateException("The benchmark is about at least " + FEWEST_CORNERS + " corners, this bank has " + corners);
        }
    }

    /** A rail that everything is asked of, with tolerances of the converter. */
    private static RailFigures rail() {
        ConverterFigures converter = new ConverterFigures(Topology.BUCK, 2.2e-6, 20, 0.01, 1, Rails.SWITCHING_HZ, 10, Rails.placed(40e3, 60), 15.0);
        return Rails.with(Rails.everything(), converter);
    }

    private static EvaluationInput mixed() {
        return Rails.input(rail(),
                part("wet", 1, Technology.WET_ALUMINIUM, 10, 4.7e-4, Rails.datasheet(4.7e-4, 0.12, 0.05, 8e-9)),
                part("polymer", 2, Technology.POLYMER_ALUMINIUM, 6.3, 2.2e-4, Rails.datasheet(2.2e-4, 0.08, 0.015, 3e-9)),
                part("bulk ceramic", 4, Technology.CERAMIC_CLASS_2, 10, 2.2e-5, table(new SeriesRlc(2.2e-5, 0.003, 8e-10))),
                part("ceramic", 2, Technology.CERAMIC_CLASS_2, 10, 1e-5, table(new SeriesRlc(1e-5, 0.003, 6e-10))),
                part("small", 2, Technology.CERAMIC_CLASS_2, 16, 1e-6, new SeriesRlc(1e-6, 0.01, 5e-10)),
                part("smallest", 2, Technology.CERAMIC_CLASS_2, 16, 1e-7, new SeriesRlc(1e-7, 0.03, 4e-10)));
    }

    private static EvaluationInput circuits() {
        return Rails.input(rail(),
                part("polymer", 2, Technology.POLYMER_ALUMINIUM, 6.3, 220e-6, new SeriesRlc(220e-6, 0.012, 3e-9)),
                part("ceramic", 4, Technology.CERAMIC_CLASS_2, 10, 15e-6, new SeriesRlc(15e-6, 0.003, 0.7e-9)),
                part("c", 2, Technology.CERAMIC_CLASS_2, 16, 1e-6, new SeriesRlc(1e-6, 0.01, 5e-10)),
                part("d", 2, Technology.CERAMIC_CLASS_2, 16, 2.2e-6, new SeriesRlc(2.2e-6, 0.01, 5e-10)),
                part("e", 2, Technology.CERAMIC_CLASS_2, 16, 4.7e-7, new SeriesRlc(4.7e-7, 0.02, 5e-10)),
                part("f", 2, Technology.CERAMIC_CLASS_2, 16, 1e-7, new SeriesRlc(1e-7, 0.03, 4e-10)));
    }

    /** With a tolerance of 20 %, ESR between half and one and a half times, and a curve over bias. */
    private static BranchInput part(String label, int count, Technology technology, double ratedV, double capacitanceF, ImpedanceModel model) {
        Characteristics characteristics = new Characteristics(
                CharacteristicCurve.linear(0, 1, ratedV, 0.7), CharacteristicCurve.linear(-20, 0.95, 25, 1, 60, 0.97), null, null, null, null);
        PartInput part = new PartInput(List.of(new PartInput.Member(OperatingPoint.REFERENCE, ModelInput.of(model))), 120, capacitanceF, false,
                characteristics, -0.2, 0.2, 0.5, 1.5);
        return new BranchInput(label, count, "BENCH-" + label, technology, ratedV, part, SeriesPath.NONE, SeriesPath.NONE, "benchmark", false);
    }

    @Benchmark
    public Object verdictsAtAllCorners() {
        return Rails.verdicts(input);
    }

    @Benchmark
    public Evaluation wholeEvaluation() {
        return Evaluation.evaluate(input);
    }

    public static void main(String[] arguments) throws RunnerException {
        Speed.print(EvaluationBenchmark.class, TARGET_MS);
    }

    private static ImpedanceModel table(SeriesRlc part) {
        FrequencyGrid points = FrequencyGrid.logSpaced(100, 1e8, 401);
        double[] r = new double[401];
        double[] x = new double[401];
        part.addImpedanceTo(points, r, x);
        return TableModel.of(points.toArray(), r, x);
    }
}

package org.stillrail.electrical.bank;

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
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.support.Speed;

/** Times of what a bank page works out, on one core; {@link #main} prints them beside their targets. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class BankBenchmark {

    private static final Map<String, Double> TARGET_US = Map.of(
            "impedanceOfSixCircuits", 200.0,
            "impedanceOfSixMixedModels", 200.0,
            "extremaOfSixMixedModels", 10_000.0,
            "rippleOfSixMixedModels", 5_000.0,
            "effectsOfSixMixedModels", 30_000.0);

    private final FrequencyGrid grid = FrequencyGrid.logSpaced(100, 1e9, 1000);
    private final Bank circuits = circuits();
    private final Bank mixed = mixed();
    private final PeriodicCurrent current = new BuckCurrent(12, 3.3, 4.7e-6, 300e3, 2);
    private final List<BankFigure> figures = List.of(
            BankFigure.impedanceAt("|Z| at crossover", 30e3),
            BankFigure.resistanceAt("ESR at crossover", 30e3),
            BankFigure.impedanceAt("|Z| at switching", 300e3),
            BankFigure.resistanceAt("ESR at switching", 300e3),
            new BankFigure("Ripple", "V", bank -> Ripple.quickPeakToPeakV(bank, current)));

    private static Bank circuits() {
        return Banks.of(
                Banks.branch(4.7e-4, 0.03, 8e-9), Banks.branch(2.2e-4, 0.2, 5e-9), Banks.branch(4.7e-5, 0.004, 1e-9),
                Banks.branch(1e-5, 0.003, 6e-10), Banks.branch(1e-6, 0.01, 5e-10), Banks.branch(1e-7, 0.03, 4e-10));
    }

    private static Bank mixed() {
        return Banks.of(
                Banks.branch("wet", 2, datasheet(4.7e-4, 0.12, 0.05, 8e-9)),
                Banks.branch("polymer", 1, datasheet(2.2e-4, 0.08, 0.015, 3e-9)),
                Banks.branch("bulk ceramic", 4, table(new SeriesRlc(2.2e-5, 0.003, 8e-10))),
                Banks.branch("ceramic", 2, table(new SeriesRlc(1e-5, 0.003, 6e-10))),
                Banks.branch("small", 2, new SeriesRlc(1e-6, 0.01, 5e-10)),
                Banks.branch("smallest", 2, new SeriesRlc(1e-7, 0.03, 4e-10)));
    }

    private static ImpedanceModel datasheet(double c, double tangent, double r, double l) {
        return DatasheetModel.of(new LossFigures(c, tangent, 120, r, 100e3), l);
    }

    private static ImpedanceModel table(SeriesRlc part) {
        FrequencyGrid points = FrequencyGrid.logSpaced(100, 1e8, 401);
        double[] r = new double[401];
        double[] x = new double[401];
        part.addImpedanceTo(points, r, x);
        return TableModel.of(points.toArray(), r, x);
    }

    @Benchmark
    public BankCurves impedanceOfSixCircuits() {
        return circuits.on(grid);
    }

    @Benchmark
    public BankCurves impedanceOfSixMixedModels() {
        return mixed.on(grid);
    }

    @Benchmark
    public List<Extremum> extremaOfSixMixedModels() {
        return mixed.extrema(100, 1e9);
    }

    @Benchmark
    public Ripple rippleOfSixMixedModels() {
        return Ripple.of(mixed, current, 1000);
    }

    @Benchmark
    public List<BranchEffect> effectsOfSixMixedModels() {
        return BranchEffect.of(mixed, figures);
    }

    public static void main(String[] arguments) throws RunnerException {
        Speed.print(BankBenchmark.class, TARGET_US);
    }
}

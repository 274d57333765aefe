package org.stillrail.electrical.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class MonteCarloTest {

    private static final BuckCurrent BUCK = new BuckCurrent(12, 3.3, 4.7e-6, 300e3, 1);

    private static RandomBranch random(int count, ImpedanceModel part, double c, Tolerance capacitance, Tolerance resistance) {
        return new RandomBranch(Banks.branch("branch of " + c, count, part), c, capacitance, resistance, 100e3);
    }

    static RandomBank threeBranches() {
        DatasheetModel bulk = DatasheetModel.of(new LossFigures(4.7e-4, 0.1, 120, 0.02, 100e3), 6e-9);
        return new RandomBank(List.of(
                random(2, bulk, 4.7e-4, Tolerance.uniform(0.2), new Tolerance(-0.5, 0.3, Tolerance.Shape.TRIANGULAR)),
                random(3, table(new SeriesRlc(2.2e-5, 0.003, 8e-10)), 2.2e-5, Tolerance.triangular(0.2), Tolerance.uniform(0.3)),
                random(4, new SeriesRlc(1e-6, 0.01, 5e-10), 1e-6, Tolerance.uniform(0.1), Tolerance.NONE)),
                true, BUCK, Tolerance.uniform(0.2), 30e3, 300e3);
    }

    /** The same branches, the last of them at the load beyond a path, with a fixed capacitance there or without. */
    private static RandomBank apart(SeriesRlc load) {
        RandomBank together = threeBranches();
        List<RandomBranch> branches = new ArrayList<>(together.branches());
        RandomBranch last = branches.remove(2);
        Branch branch = last.branch();
        branches.add(new RandomBranch(new Branch(branch.label(), branch.count(), branch.part(), branch.mounting(), branch.shared(), Node.LOAD),
                last.capacitanceF(), last.capacitance(), last.resistance(), last.resistanceHz()));
        return new RandomBank(branches, true, BUCK, together.inductance(), 30e3, 300e3, new Distance(new SeriesPath(1e-3, 5e-9), Node.LOAD, load));
    }

    static Stream<RandomBank> banks() {
        return Stream.of(threeBranches(), apart(null), apart(new SeriesRlc(2e-6, 0.002, 1e-10)));
    }

    private static ImpedanceModel table(SeriesRlc part) {
        FrequencyGrid points = FrequencyGrid.logSpaced(100, 1e8, 201);
        double[] r = new double[201];
        double[] x = new double[201];
        part.addImpedanceTo(points, r, x);
        return TableModel.of(points.toArray(), r, x);
    }

    private static int place(Draws draws, RandomFigure kind) {
        return draws.figures().indexOf(DrawnFigure.ofBank(kind));
    }

    private static List<double[]> values(MonteCarlo result) {
        return result.figures().stream().map(FigureSpread::values).toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 7})
    void sameSeedGivesTheSameOnAnyNumberOfThreads(int threads) {
        List<RandomLimit> limits = List.of(new RandomLimit(RandomFigure.RIPPLE, Bound.AT_MOST, 0.012));
        MonteCarlo one = MonteCarlo.of(threeBranches(), limits, 301, 42, 1);
        MonteCarlo many = MonteCarlo.of(threeBranches(), limits, 301, 42, threads);
        assertThat(values(many)).hasSameSizeAs(values(one));
        for (int i = 0; i < values(one).size(); i++) {
            assertThat(values(many).get(i)).containsExactly(values(one).get(i));
        }
        assertThat(many.together()).isEqualTo(one.together());
        assertThat(many.yields()).isEqualTo(one.yields());
    }

    /** Capacitances too large to matter leave three resistances: one at the converter, the path's, one at the load. */
    @Test
    void twoResistancesAndAPathAreADivider() {
        double near = 0.02;
        double far = 0.005;
        double path = 0.003;
        RandomBranch atConverter = random(1, new SeriesRlc(100, near, 0), 100, Tolerance.NONE, Tolerance.NONE);
        RandomBranch atLoad = new RandomBranch(
                new Branch("far", 1, new SeriesRlc(100, far, 0), SeriesPath.NONE, SeriesPath.NONE, Node.LOAD), 100, Tolerance.NONE, Tolerance.NONE, 1e5);
        MonteCarlo result = MonteCarlo.of(new RandomBank(List.of(atConverter, atLoad), true, BUCK, Tolerance.NONE, 30e3, 300e3,
                new Distance(new SeriesPath(path, 0), Node.LOAD, null)), List.of(), 3, 1, 1);
        double sum = near + path + far;
        double currentA = BUCK.inductorPeakToPeakA().getAsDouble();
        Source divider = Source.fromMemory("circuit theory, current divider");
        Check.that(Topic.SPREAD, "Random banks of 20 mohm, a path of 3 mohm and 5 mohm at the load: ripple there, dI R1 R2 / (R1 + Rp + R2)").source(divider)
                .expected("V", currentA * near * far / sum).relative(1e-4).got(result.figure(RandomFigure.RIPPLE).most());
        Check.that(Topic.SPREAD, "The same: ESR that the load sees, that the converter sees, |Z| from one to the other").source(divider)
                .expected("ohm", far * (near + path) / sum, near * (far + path) / sum, near * far / sum).relative(1e-6)
                .got(result.figure(RandomFigure.ESR_AT_CROSSOVER).most(), result.figure(RandomFigure.ESR_FOR_CONVERTER_AT_CROSSOVER).most(),
                        result.figure(RandomFigure.TRANSFER_AT_SWITCHING).most());
    }

    @Test
    void anotherSeedGivesAnother() {
        assertThat(values(MonteCarlo.of(threeBranches(), List.of(), 50, 1, 1)).get(0))
                .isNotEqualTo(values(MonteCarlo.of(threeBranches(), List.of(), 50, 2, 1)).get(0));
    }

    /** Each draw again by the models themselves and the exact ripple; what the quick ripple leaves out stays within its stated error. */
    @ParameterizedTest
    @MethodSource("banks")
    void quickFiguresAreThoseOfTheBankItself(RandomBank bank) {
        Draws draws = new Draws(bank, List.of());
        assertThat(draws.rippleError()).isLessThan(1e-3);
        int runs = 40;
        double[][] quick = new double[draws.figures().size()][runs];
        for (int i = 0; i < runs; i++) {
            draws.draw(9, i, quick);
            CounterRandom random = new CounterRandom(9, i);
            List<Branch> branches = new ArrayList<>();
            int variable = 0;
            for (RandomBranch branch : bank.branches()) {
                double c = branch.capacitance().at(random.uniform(variable++));
                double r = branch.resistance().at(random.uniform(variable++));
                branches.add(Draws.changed(branch, 1 + c, r));
            }
            Bank whole = new Bank(branches, bank.distance());
            double l = 4.7e-6 * (1 + bank.inductance().at(random.uniform(variable)));
            double ripple = Ripple.of(whole, new BuckCurrent(12, 3.3, l, 300e3, 1), 10).peakToPeakV();
            assertThat(quick[place(draws, RandomFigure.RIPPLE)][i]).isCloseTo(ripple, withPercentage(100 * draws.rippleError()));
            double[] read = {whole.at(30e3).resistanceOhm(), Math.sqrt(whole.at(30e3).squaredMagnitude()),
                whole.at(300e3).resistanceOhm(), Math.sqrt(whole.at(300e3).squaredMagnitude())};
            for (int k = 0; k < read.length; k++) {
                assertThat(quick[place(draws, RandomFigure.ESR_AT_CROSSOVER) + k][i]).isCloseTo(read[k], withPercentage(1e-7));
            }
            if (bank.distance() != null) {
                assertThat(quick[place(draws, RandomFigure.ESR_FOR_CONVERTER_AT_CROSSOVER)][i])
                        .isCloseTo(whole.seenByConverter().at(30e3).resistanceOhm(), withPercentage(1e-7));
                assertThat(quick[place(draws, RandomFigure.TRANSFER_AT_SWITCHING)][i])
                        .isCloseTo(Math.sqrt(whole.response(Node.CONVERTER, Node.LOAD).at(300e3).squaredMagnitude()), withPercentage(1e-7));
            }
        }
    }

    /** With interleaved phases, and a resonance far above the switching frequency. */
    @ParameterizedTest
    @CsvSource({"1, 1e-7, 0.002, 3e-10", "3, 1e-5, 0.003, 6e-10", "2, 1e-7, 0.03, 4e-10"})
    void quickRippleHoldsForOtherBanks(int phases, double c, double r, double l) {
        BuckCurrent current = new BuckCurrent(12, 1.8, 2.2e-6, 500e3, phases);
        RandomBank bank = new RandomBank(List.of(
                random(1, new SeriesRlc(3.3e-4, 0.008, 2e-9), 3.3e-4, Tolerance.NONE, Tolerance.NONE),
                random(1, new SeriesRlc(c, r, l), c, Tolerance.NONE, Tolerance.NONE)), true, current, Tolerance.NONE, 50e3, 500e3);
        MonteCarlo result = MonteCarlo.of(bank, List.of(), 1, 0, 1);
        double exact = Ripple.of(bank.nominal(), current, 10).peakToPeakV();
        assertThat(result.rippleError()).isLessThan(1e-2);
        assertThat(result.figure(RandomFigure.RIPPLE).least()).isCloseTo(exact, withPercentage(100 * Math.max(1e-6, result.rippleError())));
    }

    /**
     * ST-07: independent parts of 20 %, relative sigma 0.2 / sqrt(3 m), derived from the variance; a lot strays as one part does.
     * |Z| far below resonance is 1 / (w C).
     */
    @ParameterizedTest
    @CsvSource({
        "1, false, 0.11547005383792516", "4, false, 0.05773502691896258", "10, false, 0.03651483716701107",
        "10, true, 0.11547005383792516"})
    void independentPartsAverageOut(int count, boolean lots, double sigma) {
        RandomBank bank = new RandomBank(
                List.of(random(count, new SeriesRlc(1e-5, 1e-6, 1e-12), 1e-5, Tolerance.uniform(0.2), Tolerance.NONE)),
                lots, BUCK, Tolerance.NONE, 1e3, 1e3);
        double[] ohm = MonteCarlo.of(bank, List.of(), 20_000, 3, 2).figure(RandomFigure.IMPEDANCE_AT_SWITCHING).values();
        double sum = 0;
        double squares = 0;
        for (double z : ohm) {
            double relative = 1 / (2 * Math.PI * 1e3 * z) / (count * 1e-5);
            sum += relative;
            squares += relative * relative;
        }
        double mean = sum / ohm.length;
        assertThat(mean).isCloseTo(1, within(5 * sigma / Math.sqrt(ohm.length)));
        Check.that(Topic.SPREAD, "Relative sigma of %d parts within 20 %%, %s, 20 000 draws".formatted(count, lots ? "all of one lot" : "independent: 0.2 / sqrt(3 m)"))
                .source(Source.fromMemory("variance of a sum, derived")).expected("", sigma).relative(0.03)
                .got(Math.sqrt(squares / ohm.length - mean * mean));
    }

    /** |Z| = 1 / (w C) with C even within 20 %: it is at most 1 / (w C0) in half of all banks, and ripple goes with 1 / L. */
    @Test
    void yieldIsTheShareThatKeepsTheLimit() {
        RandomBank bank = new RandomBank(List.of(random(1, new SeriesRlc(1e-5, 1e-6, 1e-12), 1e-5, Tolerance.uniform(0.2), Tolerance.NONE)),
                true, BUCK, Tolerance.NONE, 1e3, 1e3);
        double nominal = 1 / (2 * Math.PI * 1e3 * 1e-5);
        MonteCarlo result = MonteCarlo.of(bank, List.of(
                new RandomLimit(RandomFigure.IMPEDANCE_AT_SWITCHING, Bound.AT_MOST, nominal),
                new RandomLimit(RandomFigure.IMPEDANCE_AT_SWITCHING, Bound.AT_LEAST, nominal),
                new RandomLimit(RandomFigure.IMPEDANCE_AT_SWITCHING, Bound.AT_MOST, nominal * 1.3)), 4000, 8, 1);
        assertThat(result.yields().get(0).yield().least()).isLessThan(0.5);
        assertThat(result.yields().get(0).yield().most()).isGreaterThan(0.5);
        assertThat(result.yields().get(0).yield().kept() + result.yields().get(1).yield().kept()).isEqualTo(4000);
        assertThat(result.yields().get(2).yield().share()).isEqualTo(1);
        assertThat(result.together().kept()).isZero();
    }

    @Test
    void inductorsToleranceScalesTheRipple() {
        RandomBank bank = new RandomBank(List.of(random(1, new SeriesRlc(1e-4, 0.01, 0), 1e-4, Tolerance.NONE, Tolerance.NONE)),
                true, BUCK, Tolerance.uniform(0.2), 30e3, 300e3);
        double nominal = Ripple.of(bank.nominal(), BUCK, 10).peakToPeakV();
        FigureSpread ripple = MonteCarlo.of(bank, List.of(), 2000, 1, 1).figure(RandomFigure.RIPPLE);
        assertThat(ripple.least()).isBetween(nominal / 1.2, nominal / 1.19);
        assertThat(ripple.most()).isBetween(nominal / 0.81, nominal / 0.8 * 1.001);
    }

    /** Nothing strays in the nominal figures, and every one of them lies inside what the draws reach. */
    @Test
    void nominalFiguresAreThoseOfTheBankWhereNothingStrays() {
        MonteCarlo result = MonteCarlo.of(threeBranches(), List.of(), 2000, 5, 2);
        Bank bank = threeBranches().nominal();
        assertThat(result.figure(RandomFigure.RIPPLE).nominal()).isCloseTo(Ripple.of(bank, BUCK, 10).peakToPeakV(), withPercentage(0.1));
        assertThat(result.figure(RandomFigure.ESR_AT_SWITCHING).nominal()).isCloseTo(bank.at(300e3).resistanceOhm(), withPercentage(1e-7));
        for (FigureSpread spread : result.figures()) {
            assertThat(spread.nominal()).isBetween(spread.least(), spread.most());
        }
    }

    @Test
    void withoutACurrentThereIsNoRippleAndNoLimitOnIt() {
        RandomBank with = threeBranches();
        RandomBank bank = new RandomBank(with.branches(), true, null, Tolerance.NONE, 30e3, 300e3);
        MonteCarlo result = MonteCarlo.of(bank, List.of(), 10, 1, 1);
        assertThat(result.figures()).extracting(figure -> figure.figure().kind()).containsExactly(RandomFigure.ESR_AT_CROSSOVER,
                RandomFigure.IMPEDANCE_AT_CROSSOVER, RandomFigure.ESR_AT_SWITCHING, RandomFigure.IMPEDANCE_AT_SWITCHING);
        assertThat(values(result).get(3)).containsExactly(
                MonteCarlo.of(with, List.of(), 10, 1, 1).figure(RandomFigure.IMPEDANCE_AT_SWITCHING).values());
        assertThatThrownBy(() -> MonteCarlo.of(bank, List.of(new RandomLimit(RandomFigure.RIPPLE, Bound.AT_MOST, 1)), 1, 1, 1))
                .hasMessageContaining("limits must not hold 'Ripple");
    }

    @Test
    void boundsAndInterruptionAreKept() {
        assertThatThrownBy(() -> MonteCarlo.of(threeBranches(), List.of(), 0, 1, 1)).hasMessageContaining("runs");
        assertThatThrownBy(() -> MonteCarlo.of(threeBranches(), List.of(), 1, 1, 65)).hasMessageContaining("threads");
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> MonteCarlo.of(threeBranches(), List.of(), 10, 1, 1)).isInstanceOf(CancellationException.class);
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }
}

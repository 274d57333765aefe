package org.stillrail.electrical.ripple;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/**
 * Ripple against the exact periodic solution of the network's state equations. The expected values were made in Python:
 * matrix exponential of each straight piece with the current and its slope as two more states, the periodic state by least
 * squares, then both ends of every piece among the points. It shares nothing with the sum over harmonics.
 */
class RippleStateSpaceTest {

    static final Source PERIODIC_SOLUTION =
            Source.independent("exact periodic solution of the state equations in Python: matrix exponential of each straight piece, 40 000 points a period");

    private static final Bank RINGING_FAR_ABOVE = Banks.of(
            Banks.branch(2.2e-4, 0.05, 5e-9), Banks.branch(1e-5, 0.002, 6e-10), Banks.branch(1e-7, 1e-4, 3e-10));
    private static final Bank ONE_WITHOUT_INDUCTANCE = Banks.of(Banks.branch(2.2e-4, 0.05, 5e-9), Banks.branch(1e-5, 0.002, 0));
    private static final Bank TWO_WITHOUT_INDUCTANCE = Banks.of(
            Banks.branch(2.2e-4, 0.05, 0), Banks.branch(1e-5, 0.002, 0), Banks.branch(1e-6, 0.02, 1e-9));
    private static final Bank SHARP = Banks.of(Banks.branch(4.7e-5, 1e-4, 2e-9), Banks.branch(1e-6, 1e-4, 5e-10));
    private static final Bank BULK_AND_CERAMIC = Banks.of(Banks.branch(4.7e-4, 0.02, 8e-9), Banks.branch(2e-5, 0.002, 5e-10));
    private static final PeriodicCurrent EDGES =
            PiecewiseLinearCurrent.of(2e-6, new double[] {0, 1e-8, 0.8e-6, 0.81e-6}, new double[] {0, 6, 4, 0});

    static Stream<Arguments> cases() {
        return Stream.of(
                Arguments.of("a sharp resonance at a hundred times the switching frequency", RINGING_FAR_ABOVE,
                        new BuckCurrent(12, 3.3, 10e-6, 50e3, 1), 0.214737902, 0.0672794908,
                        List.of(1.30655275, 0.248829531, 0.00265232873)),
                Arguments.of("one branch without inductance", ONE_WITHOUT_INDUCTANCE,
                        new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1), 0.0247588147, 0.00855517222,
                        List.of(0.163901848, 0.282820675)),
                Arguments.of("two branches without inductance", TWO_WITHOUT_INDUCTANCE,
                        new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1), 0.0196088259, 0.00682494785,
                        List.of(0.136443257, 0.225019903, 0.0228667063)),
                Arguments.of("two phases into a sharp ring", SHARP,
                        new BuckCurrent(5, 1, 1e-6, 1e6, 2), 0.0169404450, 0.00608906271,
                        List.of(0.252511198, 0.100739318)),
                Arguments.of("edges of ten nanoseconds", BULK_AND_CERAMIC, EDGES, 0.363594674, 0.0469115382,
                        List.of(1.28898434, 3.0581334)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void periodicSolution(String name, Bank bank, PeriodicCurrent current, double peakToPeak, double rms, List<Double> branchRms) {
        Ripple ripple = Ripple.of(bank, current, 500);
        Check.that(Topic.RIPPLE, "Several branches, " + name + ": ripple, peak to peak")
                .source(PERIODIC_SOLUTION).expected("V", peakToPeak).relative(1e-4).got(ripple.peakToPeakV());
        Check.that(Topic.RIPPLE, "Several branches, " + name + ": ripple, rms")
                .source(PERIODIC_SOLUTION).expected("V", rms).relative(5e-5).got(ripple.rmsV());
        Check.that(Topic.RIPPLE, "Several branches, " + name + ": current of each, rms")
                .source(PERIODIC_SOLUTION).expected("A", branchRms.stream().mapToDouble(Double::doubleValue).toArray()).relative(5e-5)
                .got(ripple.branches().stream().mapToDouble(BranchRipple::rmsA).toArray());
        assertThat(Ripple.quickPeakToPeakV(bank, current)).isCloseTo(peakToPeak, withPercentage(0.3));
    }

    /** The same branches known only point by point must give the same ripple; 200 points a decade keep them within 2e-4. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void tablesOfTheSameBranches(String name, Bank bank, PeriodicCurrent current, double peakToPeak, double rms, List<Double> branchRms) {
        Bank tables = new Bank(bank.branches().stream().map(RippleStateSpaceTest::asTable).toList());
        Ripple ripple = Ripple.of(tables, current, 500);
        Check.that(Topic.RIPPLE, "The same branches as tables of 200 points a decade, " + name + ": ripple, peak to peak")
                .source(PERIODIC_SOLUTION).expected("V", peakToPeak).relative(1e-3).got(ripple.peakToPeakV());
        assertThat(ripple.rmsV()).isCloseTo(rms, withPercentage(0.1));
        assertThat(ripple.branches().get(1).rmsA()).isCloseTo(branchRms.get(1), withPercentage(0.1));
        assertThat(ripple.warnings()).isEmpty();
    }

    @Test
    void tableThatEndsEarlyWarnsOfTheStepOfItsInductance() {
        TableModel table = table(Banks.branch(1e-5, 0.002, 6e-10), 1e3, 9e6);
        Ripple ripple = Ripple.of(Banks.of(Banks.branch("ceramic", 1, table)), new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1), 100);
        assertThat(ripple.warnings()).singleElement().asString().contains("'ceramic'", "20 times the switching frequency", "ESL");
        TableModel longer = table(Banks.branch(1e-5, 0.002, 6e-10), 1e3, 1.1e7);
        assertThat(Ripple.of(Banks.of(Banks.branch("ceramic", 1, longer)), new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1), 100).warnings())
                .isEmpty();
    }

    private static Branch asTable(Branch branch) {
        return Banks.branch(branch.label(), 1, table(branch, 1e3, 1e10));
    }

    private static TableModel table(Branch branch, double fromHz, double toHz) {
        FrequencyGrid grid = FrequencyGrid.logSpaced(fromHz, toHz, (int) Math.ceil(200 * Math.log10(toHz / fromHz)) + 1);
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        branch.addImpedanceTo(grid, r, x);
        return TableModel.of(grid.toArray(), r, x);
    }
}

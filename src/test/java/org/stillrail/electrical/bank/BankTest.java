package org.stillrail.electrical.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Impedance and current share against circuit theory written out with complex numbers, to 1e-9. */
class BankTest {

    private static final Source THEORY = Source.fromMemory("circuit theory, Z1 Z2 / (Z1 + Z2) and the current divider in complex numbers");

    private static final Branch BULK = new Branch("bulk", 3, new SeriesRlc(2.2e-4, 0.05, 4e-9),
            new SeriesPath(0.001, 1e-9), new SeriesPath(0.0005, 0.3e-9));
    private static final Branch CERAMIC = new Branch("ceramic", 4, new SeriesRlc(2.2e-5, 0.003, 6e-10),
            new SeriesPath(0.0004, 2e-10), SeriesPath.NONE);

    private static Complex series(double hz, double r, double l, double c) {
        double w = 2 * Math.PI * hz;
        return new Complex(r, w * l - 1 / (w * c));
    }

    @Test
    void impedanceIsThatOfTheBranchesInParallel() {
        FrequencyGrid grid = FrequencyGrid.logSpaced(10, 1e9, 161);
        BankCurves curves = Banks.of(BULK, CERAMIC).on(grid);
        for (int i = 0; i < grid.size(); i++) {
            double hz = grid.hz(i);
            Complex bulk = series(hz, 0.051 / 3 + 0.0005, 5e-9 / 3 + 0.3e-9, 3 * 2.2e-4);
            Complex ceramic = series(hz, 0.0034 / 4, 8e-10 / 4, 4 * 2.2e-5);
            Complex z = bulk.times(ceramic).over(bulk.plus(ceramic));
            Complex share = ceramic.over(bulk.plus(ceramic));
            Check.that(Topic.IMPEDANCE, "Two branches with counts, mounting and shared path, 10 Hz to 1 GHz: error of Z over |Z|")
                    .source(THEORY).expected("the same complex Z at 161 frequencies").absolute(1e-9)
                    .compare("", 0, error(curves.bank(), i, z));
            Check.that(Topic.IMPEDANCE, "Impedance of a branch of three parts with mounting and shared path: error of Z over |Z|")
                    .source(THEORY).expected("the same complex Z at 161 frequencies").absolute(1e-9)
                    .compare("", 0, error(curves.branches().get(0), i, bulk));
            Check.that(Topic.IMPEDANCE, "Share of the current in a branch: error over the share")
                    .source(THEORY).expected("the same complex share at 161 frequencies").absolute(1e-9)
                    .compare("", 0, error(curves.shares().get(0), i, share));
        }
    }

    private static double error(Curve curve, int i, Complex expected) {
        return new Complex(curve.real(i), curve.imaginary(i)).minus(expected).magnitude() / expected.magnitude();
    }

    @Test
    void sharesMayExceedOneButTheirComplexSumIsOne() {
        Bank bank = Banks.of(Banks.branch(1e-5, 0.001, 1e-9), Banks.branch(1e-7, 0.001, 5e-10));
        FrequencyGrid grid = FrequencyGrid.of(12.9e6);
        BankCurves curves = bank.on(grid);
        assertThat(curves.shares().get(0).magnitude(0)).isGreaterThan(5);
        assertThat(curves.shares().get(0).real(0) + curves.shares().get(1).real(0)).isCloseTo(1, within(1e-10));
        assertThat(curves.shares().get(0).imaginary(0) + curves.shares().get(1).imaginary(0)).isCloseTo(0, within(1e-10));
    }

    @Test
    void singleFrequencyAgreesWithTheGridAndItsSlopeWithDifferences() {
        Bank bank = Banks.of(BULK, CERAMIC);
        FrequencyGrid grid = FrequencyGrid.logSpaced(100, 1e8, 61);
        BankCurves curves = bank.on(grid);
        for (int i = 0; i < grid.size(); i++) {
            double hz = grid.hz(i);
            ImpedancePoint z = bank.at(hz);
            double size = Math.sqrt(z.squaredMagnitude());
            assertThat(z.resistanceOhm()).isCloseTo(curves.bank().real(i), within(1e-11 * size));
            assertThat(z.reactanceOhm()).isCloseTo(curves.bank().imaginary(i), within(1e-11 * size));
            double step = 1e-5 * hz;
            ImpedancePoint above = bank.at(hz + step);
            ImpedancePoint below = bank.at(hz - step);
            assertThat(z.resistanceOhmPerHz())
                    .isCloseTo((above.resistanceOhm() - below.resistanceOhm()) / (2 * step), within(1e-6 * size / hz));
            assertThat(z.reactanceOhmPerHz())
                    .isCloseTo((above.reactanceOhm() - below.reactanceOhm()) / (2 * step), within(1e-6 * size / hz));
        }
    }

    @Test
    void seriesResonanceWithoutLossOnTheGridIsRefusedWithItsFrequency() {
        double f0 = 1 / (2 * Math.PI * Math.sqrt(1e-6 * 1e-9));
        Bank bank = Banks.of(BULK, Banks.branch(1e-6, 0, 1e-9));
        assertThatThrownBy(() -> bank.on(FrequencyGrid.of(1e3, f0, 1e8)))
                .isInstanceOfSatisfying(LosslessResonanceException.class, e -> assertThat(e.frequencyHz()).isEqualTo(f0))
                .hasMessageContaining(String.valueOf(f0));
        // The middle of a log-spaced grid is off by the rounding of logarithm and exponential.
        assertThatThrownBy(() -> bank.on(FrequencyGrid.logSpaced(f0 / 1000, f0 * 1000, 601)))
                .isInstanceOf(LosslessResonanceException.class);
        assertThat(bank.on(FrequencyGrid.of(1e3, f0 * 1.0001, 1e8)).bank().magnitude(1)).isBetween(0.0, 1e-4);
    }

    @Test
    void sharedAndMountingInductanceMoveTheLosslessResonance() {
        Branch branch = new Branch("shared", 2, new SeriesRlc(1e-6, 0, 1e-9), new SeriesPath(0, 5e-10), new SeriesPath(0, 2.5e-10));
        double f0 = 1 / (2 * Math.PI * Math.sqrt(2e-6 * 1e-9));
        assertThatThrownBy(() -> Banks.of(branch).on(FrequencyGrid.of(f0))).isInstanceOf(LosslessResonanceException.class);
    }

    @Test
    void parallelResonanceWithoutLossOnTheGridIsRefused() {
        for (double ratio : new double[] {0.5, 0.1, 1e-2, 1e-4}) {
            double c1 = 1e-6;
            double c2 = c1 * ratio;
            Bank bank = Banks.of(Banks.branch(c1, 0, 1e-9), Banks.branch(c2, 0, 5e-10));
            double f0 = 1 / (2 * Math.PI * Math.sqrt(1.5e-9 * (c1 * c2 / (c1 + c2))));
            assertThatThrownBy(() -> bank.on(FrequencyGrid.of(1e3, f0)))
                    .isInstanceOf(LosslessResonanceException.class).hasMessageContaining("The bank");
            assertThat(bank.on(FrequencyGrid.of(f0 * 1.001)).bank().magnitude(0)).isLessThan(1e6);
        }
    }

    @Test
    void parallelResonanceOfAnIdealCapacitanceWithAnInductiveBranchIsRefused() {
        Bank bank = Banks.of(Banks.branch(1e-3, 0, 2e-9), Banks.branch(1e-6, 0, 0));
        double c = 1e-3 * 1e-6 / (1e-3 + 1e-6);
        double f0 = 1 / (2 * Math.PI * Math.sqrt(2e-9 * c));
        assertThatThrownBy(() -> bank.on(FrequencyGrid.of(f0))).isInstanceOf(LosslessResonanceException.class);
    }

    @Test
    void warningsNameTheBranchAndSayWhereItIsExtrapolated() {
        FrequencyGrid points = FrequencyGrid.logSpaced(1e3, 1e6, 100);
        TableModel table = TableModel.of(points.toArray(), new double[100], new double[100]);
        Bank bank = Banks.of(Banks.branch("measured", 1, table), BULK);
        assertThat(bank.warnings(1e3, 1e6)).isEmpty();
        assertThat(bank.warnings(100, 1e7)).hasSize(2).allMatch(w -> w.contains("'measured'") && w.contains("extrapolated"));
        assertThat(bank.validRange().fromHz()).isEqualTo(1e3);
    }

    @Test
    void emptyBankAndZeroCountAreRefused() {
        assertThatThrownBy(() -> new Bank(List.of())).hasMessageContaining("at least one branch");
        assertThatThrownBy(() -> BULK.withCount(0)).hasMessageContaining("count");
        assertThatThrownBy(() -> new SeriesPath(-1, 0)).hasMessageContaining("resistanceOhm");
    }

    @Test
    void inductanceAtInfinityIsThatOfTheBranchesInParallel() {
        assertThat(Banks.of(BULK, CERAMIC).inductanceAtInfinityH())
                .isCloseTo(1 / (1 / (5e-9 / 3 + 0.3e-9) + 4 / 8e-10), withPercentage(1e-9));
        assertThat(Banks.of(BULK, Banks.branch(1e-6, 0.01, 0)).inductanceAtInfinityH()).isZero();
    }
}

package org.stillrail.electrical.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.Ripple;

/** What holds for every bank, tried on random ones. */
class BankPropertiesTest {

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(1e2, 1e9, 71);
    private static final BuckCurrent BUCK = new BuckCurrent(12, 3.3, 4.7e-6, 400e3, 1);

    @Provide
    Arbitrary<List<Branch>> branches() {
        Arbitrary<Double> log = Arbitraries.doubles().between(0, 1);
        Arbitrary<ImpedanceModel> circuit = Combinators.combine(log, log, log)
                .as((c, r, l) -> new SeriesRlc(power(1e-7, 1e-3, c), power(1e-4, 1, r), power(1e-10, 1e-8, l)));
        Arbitrary<ImpedanceModel> datasheet = Combinators.combine(log, log, log, log)
                .as((c, t, r, l) -> DatasheetModel.of(
                        new LossFigures(power(1e-7, 1e-3, c), power(1e-3, 0.3, t), 120, power(1e-3, 1, r), 1e5),
                        power(1e-10, 1e-8, l)));
        Arbitrary<Branch> branch = Combinators.combine(Arbitraries.oneOf(circuit, datasheet), Arbitraries.integers().between(1, 6))
                .as((part, count) -> new Branch("b", count, part, new SeriesPath(1e-4, 1e-10), SeriesPath.NONE));
        return branch.list().ofMinSize(1).ofMaxSize(5);
    }

    private static double power(double from, double to, double share) {
        return from * Math.pow(to / from, share);
    }

    @Property(tries = 200)
    void passiveBranchesMakeAPassiveBank(@ForAll("branches") List<Branch> branches) {
        Curve z = new Bank(branches).on(GRID).bank();
        for (int i = 0; i < z.size(); i++) {
            assertThat(z.real(i)).isPositive();
        }
    }

    @Property(tries = 200)
    void orderOfBranchesDoesNotMatter(@ForAll("branches") List<Branch> branches) {
        List<Branch> reversed = new ArrayList<>(branches);
        Collections.reverse(reversed);
        Curve one = new Bank(branches).on(GRID).bank();
        Curve other = new Bank(reversed).on(GRID).bank();
        for (int i = 0; i < one.size(); i++) {
            assertThat(other.real(i)).isCloseTo(one.real(i), within(1e-10 * one.magnitude(i)));
            assertThat(other.imaginary(i)).isCloseTo(one.imaginary(i), within(1e-10 * one.magnitude(i)));
        }
    }

    @Property(tries = 200)
    void complexSharesAddToOne(@ForAll("branches") List<Branch> branches) {
        BankCurves curves = new Bank(branches).on(GRID);
        for (int i = 0; i < GRID.size(); i++) {
            double re = 0;
            double im = 0;
            double size = 0;
            for (Curve share : curves.shares()) {
                re += share.real(i);
                im += share.imaginary(i);
                size += share.magnitude(i);
            }
            assertThat(re).isCloseTo(1, within(1e-10 * size));
            assertThat(im).isCloseTo(0, within(1e-10 * size));
        }
    }

    /** Two copies of a bank in parallel have half its impedance: every count doubled. */
    @Property(tries = 100)
    void doublingEveryCountHalvesImpedanceAndRipple(@ForAll("branches") List<Branch> branches) {
        Bank once = new Bank(branches);
        Bank twice = new Bank(branches.stream().map(b -> b.withCount(2 * b.count())).toList());
        Curve z = once.on(GRID).bank();
        Curve half = twice.on(GRID).bank();
        for (int i = 0; i < z.size(); i++) {
            assertThat(2 * half.real(i)).isCloseTo(z.real(i), within(1e-9 * z.magnitude(i)));
            assertThat(2 * half.imaginary(i)).isCloseTo(z.imaginary(i), within(1e-9 * z.magnitude(i)));
        }
        double ripple = Ripple.of(once, BUCK, 10).peakToPeakV();
        assertThat(2 * Ripple.of(twice, BUCK, 10).peakToPeakV()).isCloseTo(ripple, within(1e-6 * ripple));
    }

    /** A branch split in two equal ones is the same bank; the two are exactly degenerate. */
    @Property(tries = 100)
    void splittingABranchChangesNothing(@ForAll("branches") List<Branch> branches) {
        Branch first = branches.get(0);
        List<Branch> doubled = new ArrayList<>(branches);
        doubled.set(0, first.withCount(2 * first.count()));
        List<Branch> split = new ArrayList<>(branches);
        split.add(first);
        double whole = Ripple.of(new Bank(doubled), BUCK, 10).peakToPeakV();
        assertThat(Ripple.of(new Bank(split), BUCK, 10).peakToPeakV()).isCloseTo(whole, within(1e-6 * whole));
    }

    /** A larger current makes a ripple larger in proportion: the system is linear. */
    @Property(tries = 50)
    void rippleGrowsInProportionToTheCurrent(@ForAll("branches") List<Branch> branches) {
        Bank bank = new Bank(branches);
        BuckCurrent larger = new BuckCurrent(12, 3.3, 4.7e-6 / 3, 400e3, 1);
        Ripple one = Ripple.of(bank, BUCK, 10);
        Ripple three = Ripple.of(bank, larger, 10);
        assertThat(three.peakToPeakV()).isCloseTo(3 * one.peakToPeakV(), within(1e-9 * three.peakToPeakV()));
        assertThat(three.branches().get(0).perPartDissipationW())
                .isCloseTo(9 * one.branches().get(0).perPartDissipationW(), within(1e-9 * three.branches().get(0).perPartDissipationW()));
    }

    /** The heat in all parts and mountings is the power that the current puts into Re Z of the bank. */
    @Property(tries = 50)
    void heatOfTheBranchesIsThePowerIntoTheBank(@ForAll("branches") List<Branch> branches) {
        Bank bank = new Bank(branches);
        Ripple ripple = Ripple.of(bank, BUCK, 4000);
        double heat = 0;
        for (int k = 0; k < branches.size(); k++) {
            var branch = ripple.branches().get(k);
            heat += branches.get(k).count() * branch.perPartDissipationW() + branch.mountingDissipationW() + branch.sharedDissipationW();
        }
        // Mean of v i over the samples of the exact waveforms; the inductive part is reactive and left out.
        double power = 0;
        double period = BUCK.periodS();
        double rise = 12 * (1 - BUCK.duty()) / 4.7e-6 * BUCK.duty() * period;
        for (int i = 0; i < 4000; i++) {
            double t = i / 4000.0;
            double current = t < BUCK.duty() ? rise * (t / BUCK.duty() - 0.5) : rise * (0.5 - (t - BUCK.duty()) / (1 - BUCK.duty()));
            power += current * ripple.fromResistance().voltageV(i) / 4000;
        }
        assertThat(heat).isCloseTo(power, within(1e-3 * power));
    }
}

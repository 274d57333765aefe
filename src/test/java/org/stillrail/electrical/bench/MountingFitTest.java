package org.stillrail.electrical.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** A mounting is put into a bank by hand, the bank is 'measured' by its closed form, and the fit must find the mounting again. */
class MountingFitTest {

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(1e3, 50e6, 400);
    private static final SeriesPath BULK = new SeriesPath(2.5e-3, 2.2e-9);
    private static final SeriesPath CERAMIC = new SeriesPath(0.8e-3, 0.45e-9);

    @Test
    void aKnownMountingIsRecovered() {
        MountingFit fit = MountingFit.of(bank(SeriesPath.NONE, SeriesPath.NONE), measured(0), MountingBounds.BELIEVABLE);
        assertRecovered("exact", fit, 1e-4);
        assertThat(fit.before()).isGreaterThan(20);
        assertThat(fit.after()).isLessThan(1e-3);
    }

    @Test
    void withOnePerCentOfNoiseItIsRecoveredWithinFivePerCent() {
        MountingFit fit = MountingFit.of(bank(new SeriesPath(1e-3, 1e-9), new SeriesPath(1e-3, 1e-9)), measured(0.01), MountingBounds.BELIEVABLE);
        assertRecovered("with 1 % of noise", fit, 0.05);
        // Rayleigh: each part scatters by 1 %, so the complex error is sqrt 2 of that.
        assertThat(fit.after()).isCloseTo(Math.sqrt(2), within(0.15));
        FittedMounting bulk = fit.mountings().get(0);
        assertThat(Math.abs(bulk.after().inductanceH() - BULK.inductanceH())).isLessThan(4 * bulk.inductanceSigmaH());
        assertThat(bulk.resistanceTold()).isTrue();
        assertThat(bulk.before().inductanceH()).isEqualTo(1e-9);
    }

    @Test
    void aMountingThatWouldHaveToBeNegativeStaysAtNothing() {
        Bank bare = bank(SeriesPath.NONE, SeriesPath.NONE);
        SeriesRlc lighter = new SeriesRlc(100e-6, 6e-3, 2e-9);
        Bank real = bare.with(0, new Branch("bulk", 2, lighter, SeriesPath.NONE, SeriesPath.NONE));
        MountingFit fit = MountingFit.of(bare, real.on(GRID).bank(), MountingBounds.BELIEVABLE);
        assertThat(fit.mountings().get(0).after().inductanceH()).isZero();
        assertThat(fit.mountings().get(0).atBound()).isTrue();
    }

    @Test
    void aSweepThatStopsBeforeTheInductanceSaysThatItDoesNotTellIt() {
        FrequencyGrid low = FrequencyGrid.logSpaced(100, 1e3, 60);
        Curve exact = bank(BULK, CERAMIC).on(low).bank();
        Curve noisy = noisy(exact, 0.01);
        MountingFit fit = MountingFit.of(bank(SeriesPath.NONE, SeriesPath.NONE), noisy, MountingBounds.BELIEVABLE);
        assertThat(fit.mountings().get(1).inductanceTold()).isFalse();
    }

    @Test
    void mountingsAtBothEndsOfAPathAreRecoveredAtTheLoad() {
        Bank real = atTwoNodes(bank(BULK, CERAMIC));
        MountingFit fit = MountingFit.of(atTwoNodes(bank(SeriesPath.NONE, SeriesPath.NONE)), real.on(GRID).bank(), MountingBounds.BELIEVABLE);
        List<SeriesPath> expected = List.of(BULK, CERAMIC);
        for (int k = 0; k < 2; k++) {
            SeriesPath found = fit.mountings().get(k).after();
            assertThat(found.inductanceH()).isCloseTo(expected.get(k).inductanceH(), within(1e-3 * expected.get(k).inductanceH()));
            assertThat(found.resistanceOhm()).isCloseTo(expected.get(k).resistanceOhm(), within(1e-3 * expected.get(k).resistanceOhm()));
        }
        assertThat(fit.after()).isLessThan(1e-3);
    }

    private static Bank atTwoNodes(Bank bank) {
        Branch ceramic = bank.branches().get(1);
        return new Bank(List.of(bank.branches().get(0),
                new Branch(ceramic.label(), ceramic.count(), ceramic.part(), ceramic.mounting(), ceramic.shared(), Node.LOAD)),
                new Distance(new SeriesPath(1e-3, 0.5e-9), Node.LOAD, new SeriesRlc(1e-6, 2e-3, 1e-11)));
    }

    @Test
    void tooFewPointsAreRefused() {
        Curve one = bank(BULK, CERAMIC).on(FrequencyGrid.of(1e6)).bank();
        assertThatThrownBy(() -> MountingFit.of(bank(BULK, CERAMIC), one, MountingBounds.BELIEVABLE)).hasMessageContaining("1 points");
    }

    @Test
    void errorsAreThoseOfThePredictionOverTheMeasurement() {
        Bank bank = bank(BULK, CERAMIC);
        Curve exact = bank.on(GRID).bank();
        double[] r = exact.reals();
        double[] x = exact.imaginaries();
        for (int i = 0; i < r.length; i++) {
            r[i] *= 1.25;
            x[i] *= 1.25;
        }
        List<ErrorBand> bands = List.of(new ErrorBand("low", 1e3, 1e4), new ErrorBand("beyond", 1e9, 2e9));
        BenchComparison comparison = BenchComparison.of(bank, new Curve(GRID, r, x), bands, i -> true, i -> true);
        BandError low = comparison.bands().get(0);
        assertThat(low.rmsPercent()).isCloseTo(20, within(1e-9));
        assertThat(low.worstPercent()).isCloseTo(-20, within(1e-9));
        assertThat(low.resistanceWorstPercent()).isCloseTo(-20, within(1e-9));
        assertThat(low.within(20.1, 20.1)).isTrue();
        assertThat(low.within(19.9, 20.1)).isFalse();
        assertThat(low.within(20.1, 19.9)).isFalse();
        assertThat(comparison.bands().get(1).within(1, 1)).isNull();
        assertThat(BenchComparison.of(bank, new Curve(GRID, r, x), bands, i -> true, i -> false).bands().get(0).resistanceWorstPercent()).isNull();
    }

    private static void assertRecovered(String name, MountingFit fit, double share) {
        SeriesPath[] truth = {BULK, CERAMIC};
        Source planted = Source.independent("the mounting that the measured bank was given, closed form of the bank");
        for (int k = 0; k < truth.length; k++) {
            SeriesPath found = fit.mountings().get(k).after();
            Check.that(Topic.MOUNTING, "Mounting resistance of branch " + (k + 1) + " found from a measured bank, " + name).source(planted)
                    .expected("ohm", truth[k].resistanceOhm()).relative(share).got(found.resistanceOhm());
            Check.that(Topic.MOUNTING, "Mounting inductance of branch " + (k + 1) + " found from a measured bank, " + name).source(planted)
                    .expected("H", truth[k].inductanceH()).relative(share).got(found.inductanceH());
        }
    }

    private static Curve measured(double noise) {
        return noisy(bank(BULK, CERAMIC).on(GRID).bank(), noise);
    }

    private static Curve noisy(Curve exact, double noise) {
        Random random = new Random(11);
        double[] r = exact.reals();
        double[] x = exact.imaginaries();
        for (int i = 0; i < r.length; i++) {
            r[i] += noise * exact.magnitude(i) * random.nextGaussian();
            x[i] += noise * exact.magnitude(i) * random.nextGaussian();
        }
        return new Curve(exact.grid(), r, x);
    }

    private static Bank bank(SeriesPath bulk, SeriesPath ceramic) {
        return new Bank(List.of(
                new Branch("bulk", 2, new SeriesRlc(100e-6, 8e-3, 4e-9), bulk, SeriesPath.NONE),
                new Branch("ceramic", 4, new SeriesRlc(10e-6, 3e-3, 0.5e-9), ceramic, SeriesPath.NONE)));
    }
}

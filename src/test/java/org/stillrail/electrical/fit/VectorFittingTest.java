package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class VectorFittingTest {

    /** VF-01: the published poles and residues come back from samples, with no hint of the order. */
    @Test
    void thePublishedFunctionIsRecovered() {
        assertRecovered("Published function of 18 poles from 400 points", PublishedFunction.SOURCE, PublishedFunction.whole(),
                FrequencyGrid.logSpaced(1, 1e5, 400), 1e-6);
    }

    /** The script's own hundred points, 1 Hz to 100 kHz, evenly over f. */
    @Test
    void thePublishedFunctionIsRecoveredFromAHundredEvenPoints() {
        double[] hz = new double[100];
        for (int i = 0; i < hz.length; i++) {
            hz[i] = 1 + i * (1e5 - 1) / 99;
        }
        assertRecovered("Published function of 18 poles from its script's own 100 even points", PublishedFunction.SOURCE, PublishedFunction.whole(),
                FrequencyGrid.of(hz), 1e-6);
    }

    /** VF-02, both elements. */
    @Test
    void bothElementsOfThePublishedPairAreRecovered() {
        FrequencyGrid grid = FrequencyGrid.logSpaced(1, 1e5, 300);
        assertRecovered("Published pair, first element of 10 poles", PublishedFunction.SOURCE, PublishedFunction.terms(0, 6, 2 * Math.PI, 0.6, 2e-5), grid, 1e-6);
        assertRecovered("Published pair, second element of 10 poles", PublishedFunction.SOURCE, PublishedFunction.terms(5, 10, 2 * Math.PI, 0, 6e-5), grid, 1e-6);
    }

    /** Own case: R, L, C with two relaxations and one damped inner resonance. */
    @Test
    void aKnownNetworkIsRecovered() {
        RationalFunction known = new RationalFunction(new double[] {-4e7, -2e5, -3e3}, new double[] {3e8, 0, 0},
                new double[] {2e6, 5e3, 90}, new double[] {1e5, 0, 0}, 1 / 47e-6, 0.011, 0.8e-9);
        RationalFit fit = assertRecovered("R, L, C with two relaxations and an inner resonance", Source.independent("known poles and residues, sampled"), known,
                FrequencyGrid.logSpaced(100, 3e8, 300), 1e-6);
        assertThat(fit.passive()).isTrue();
        assertThat(1 / fit.function().residueAtZero()).isCloseTo(47e-6, within(1e-12));
        assertThat(fit.worstResistanceErrorPercent()).isLessThan(1e-5);
    }

    private static RationalFit assertRecovered(String name, Source source, RationalFunction known, FrequencyGrid grid, double tolerance) {
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(known::at, grid));
        assertThat(fit.order()).isEqualTo(known.order());
        assertThat(fit.stable()).isTrue();
        for (int k = 0; k < known.order(); k++) {
            Complex pole = known.poles().get(k);
            Complex residue = known.residues().get(k);
            int at = PublishedFunction.nearest(fit.poles(), pole);
            double poleError = fit.poles().get(at).minus(pole).magnitude();
            Check.that(Topic.FIT, name + ": error of a pole over its size").source(source).expected("every pole, with no hint of the order").absolute(tolerance)
                    .compare("", 0, poleError == 0 ? 0 : poleError / pole.magnitude());
            Check.that(Topic.FIT, name + ": error of a residue over its size").source(source).expected("every residue").absolute(tolerance)
                    .compare("", 0, fit.residues().get(at).minus(residue).magnitude() / residue.magnitude());
        }
        assertThat(fit.constant()).isCloseTo(known.constant(), within(tolerance));
        assertThat(fit.proportional()).isCloseTo(known.proportional(), within(tolerance * known.proportional()));
        return fit;
    }

    static Stream<Arguments> typicalParts() {
        return Stream.of(
                Arguments.of("ceramic", Synthetic.ceramic(), 1e3, 1e8),
                Arguments.of("ceramic with an inner resonance", Synthetic.ceramicWithInnerResonance(), 1e3, 1e9),
                Arguments.of("polymer", Synthetic.polymer(), 1e3, 1e8),
                Arguments.of("wet aluminium", Synthetic.wetAluminium(), 100.0, 1e8),
                Arguments.of("wet aluminium in the cold", Synthetic.wetAluminiumInTheCold(), 100.0, 1e8),
                Arguments.of("double layer", Synthetic.doubleLayer(), 0.01, 1e6));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("typicalParts")
    void typicalPartsAreMetWithinOnePerCent(String name, DoubleFunction<Complex> part, double fromHz, double toHz) {
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(part, FrequencyGrid.logSpaced(fromHz, toHz, 400)));
        assertThat(fit.worstRelativeErrorPercent()).isLessThan(1);
        assertThat(fit.worstResistanceErrorPercent()).isLessThan(6);
        Check.that(Topic.FIT, "Typical part, " + name + ", from 400 points: largest error of Z over |Z|")
                .source(Source.independent("impedance in closed form on 1777 points between those fitted")).expected("", 0).absolute(0.01)
                .got(Synthetic.worstError(fit.function(), part, fromHz, toHz));
        assertThat(fit.order()).isBetween(3, 12);
        assertThat(fit.passive()).isTrue();
        assertThat(fit.stable()).isTrue();
        assertThat(Synthetic.lowestRelativeRe(fit.function())).isGreaterThanOrEqualTo(0);
        assertThat(fit.stopReason()).isEqualTo(StopReason.TOLERANCE);
    }

    /** Noise of up to 0.5 % of |Z| a point: within 1 % of the noisy points and of the truth behind them. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("typicalParts")
    void noiseOfHalfAPerCentLeavesOnePerCent(String name, DoubleFunction<Complex> part, double fromHz, double toHz) {
        for (long seed = 1; seed <= 5; seed++) {
            RationalFit fit = VectorFitting.fit(Synthetic.noisy(part, FrequencyGrid.logSpaced(fromHz, toHz, 400), 0.005, seed));
            assertThat(fit.worstRelativeErrorPercent()).isLessThan(1);
            Check.that(Topic.FIT, "Typical part, " + name + ", with noise of 0.5 % a point, five seeds: largest error of Z over |Z|")
                    .source(Source.independent("impedance in closed form, without the noise")).expected("the part behind the noise").absolute(0.01)
                    .compare("", 0, Synthetic.worstError(fit.function(), part, fromHz, toHz));
            assertThat(fit.passive()).isTrue();
            assertThat(Synthetic.lowestRelativeRe(fit.function())).isGreaterThanOrEqualTo(0);
            assertThat(fit.noisePercent()).isCloseTo(0.25, within(0.05));
            assertThat(fit.order()).isLessThanOrEqualTo(12);
        }
    }

    /** The loss is far below |Z| here; at the flattest place of the ESR the fit of clean points is within a few per cent of it. */
    @Test
    void theEsrSurvivesWhereItIsAThousandthOfTheMagnitude() {
        DoubleFunction<Complex> part = w -> Synthetic.resistor(0.02).plus(Synthetic.inductor(0.4e-9, w))
                .plus(Synthetic.constantPhase(10e-9, 0.9995, w));
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(part, FrequencyGrid.logSpaced(1e3, 1e9, 400)));
        for (double hz : new double[] {3e3, 1e5, 1e6, 3e7}) {
            double omega = 2 * Math.PI * hz;
            Check.that(Topic.FIT, "ESR of a thousandth of |Z|: Re Z of the fit").source(Source.independent("impedance in closed form"))
                    .expected("Re Z at 4 frequencies").relative(0.05).compare("ohm", part.apply(omega).re(), fit.function().at(omega).re());
        }
    }

    /** Noise of 0.1 % of |Z|: the ESR is known where it is more than a few per cent of |Z|, and the fit keeps it there. */
    @Test
    void noiseDoesNotCostTheEsrWhereItCanBeSeen() {
        for (DoubleFunction<Complex> part : java.util.List.of(Synthetic.ceramic(), Synthetic.polymer(), Synthetic.wetAluminium())) {
            RationalFit fit = VectorFitting.fit(Synthetic.noisy(part, FrequencyGrid.logSpaced(1e3, 1e8, 400), 0.001, 21));
            for (double hz = 1e3; hz <= 1e8; hz *= 1.3) {
                Complex exact = part.apply(2 * Math.PI * hz);
                if (exact.re() > 0.04 * exact.magnitude()) {
                    assertThat(fit.function().at(2 * Math.PI * hz).re()).isCloseTo(exact.re(), within(0.03 * exact.re()));
                }
            }
        }
    }

    @Test
    void aPlainSeriesCircuitNeedsOnlyItsCapacitance() {
        DoubleFunction<Complex> part = w -> Synthetic.resistor(0.005).plus(Synthetic.inductor(1e-9, w)).plus(Synthetic.capacitor(22e-6, w));
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(part, FrequencyGrid.logSpaced(1e3, 1e8, 100)));
        assertThat(fit.order()).isEqualTo(1);
        assertThat(fit.poles()).containsExactly(Complex.ZERO);
        assertThat(fit.residues().get(0).re()).isCloseTo(1 / 22e-6, within(1e-6));
        assertThat(fit.constant()).isCloseTo(0.005, within(1e-12));
        assertThat(fit.proportional()).isCloseTo(1e-9, within(1e-18));
        assertThat(fit.of()).isEqualTo("impedance");
    }

    @Test
    void theOrderIsTheSmallestThatReachesTheTolerance() {
        Curve curve = Synthetic.sampled(Synthetic.wetAluminium(), FrequencyGrid.logSpaced(100, 1e8, 400));
        RationalFit loose = VectorFitting.fit(curve, new FitSettings(0.01, 0.1, 24));
        RationalFit tight = VectorFitting.fit(curve, new FitSettings(1e-4, 0.01, 24));
        assertThat(tight.order()).isGreaterThan(loose.order());
        assertThat(tight.worstRelativeErrorPercent()).isLessThanOrEqualTo(0.02);
        RationalFit oneLess = VectorFitting.fit(curve, new FitSettings(0.01, 0.1, loose.order() - 1));
        assertThat(oneLess.stopReason()).isEqualTo(StopReason.NO_BETTER);
        assertThat(oneLess.worstRelativeErrorPercent()).isGreaterThan(1);
        assertThat(oneLess.remarks()).contains(StopReason.NO_BETTER.sentence());
    }

    @Test
    void theSameInputGivesTheSameFit() {
        Curve curve = Synthetic.noisy(Synthetic.polymer(), FrequencyGrid.logSpaced(1e3, 1e8, 300), 0.003, 7);
        assertThat(VectorFitting.fit(curve).function().toString()).isEqualTo(VectorFitting.fit(curve).function().toString());
    }

    /** VF-01 is no impedance of a passive part: Re is -19 at the low end. */
    @Test
    void activeDataStayActiveAndAreSaidToBe() {
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(PublishedFunction.whole()::at, FrequencyGrid.logSpaced(1, 1e5, 400)));
        assertThat(fit.passive()).isFalse();
        assertThat(fit.remarks()).anySatisfy(remark -> assertThat(remark).contains("not passive").contains("points themselves"));
    }

    /** A fixture that subtracted 1 mohm too much from a part whose resistance is 0.4 mohm, seen only in a notch. */
    @Test
    void aSlightlyNegativeResistanceIsRepairedWithinOnePerCent() {
        DoubleFunction<Complex> part = w -> Synthetic.resistor(0.2e-3).plus(Synthetic.inductor(0.4e-9, w))
                .plus(Synthetic.capacitor(1e-6, w))
                .plus(new Complex(-0.4e-3, 0).over(new Complex(1, w / 2e5)));
        Curve curve = Synthetic.sampled(part, FrequencyGrid.logSpaced(1e3, 1e8, 400));
        assertThat(curve.real(0)).isNegative();
        RationalFit fit = VectorFitting.fit(curve);
        assertThat(fit.passive()).isTrue();
        assertThat(fit.worstRelativeErrorPercent()).isLessThan(1);
        assertThat(Synthetic.lowestRelativeRe(fit.function())).isGreaterThanOrEqualTo(0);
    }

    /** A pole in the right half-plane cannot be met by stable ones: conjugating the spectrum of a stable function gives such data. */
    @Test
    void unstableDataDoNotConverge() {
        DoubleFunction<Complex> unstable = w -> new Complex(1, 0).over(new Complex(-1, w / 1e5)).plus(Synthetic.resistor(0.1));
        assertThatThrownBy(() -> VectorFitting.fit(Synthetic.sampled(unstable, FrequencyGrid.logSpaced(1e3, 1e7, 200))))
                .isInstanceOf(FitDidNotConvergeException.class).hasMessageContaining("did not converge");
    }

    @Test
    void randomNumbersDoNotConvergeAndEnd() {
        Random random = new Random(3);
        FrequencyGrid grid = FrequencyGrid.logSpaced(1, 1e9, 300);
        double[] re = random.doubles(300, -1, 1).toArray();
        double[] im = random.doubles(300, -1, 1).toArray();
        assertThatThrownBy(() -> VectorFitting.fit(new Curve(grid, re, im))).isInstanceOf(FitDidNotConvergeException.class)
                .satisfies(e -> assertThat(((FitDidNotConvergeException) e).rmsRelativeErrorPercent()).isGreaterThan(5));
    }

    @Test
    void theNumberOfRelocationsIsBounded() {
        Curve curve = Synthetic.noisy(Synthetic.ceramic(), FrequencyGrid.logSpaced(1e3, 1e8, 60), 0.05, 5);
        try {
            assertThat(VectorFitting.fit(curve).iterations()).isLessThan(24 * 16 + 8);
        } catch (FitDidNotConvergeException e) {
            assertThat(e.order()).isLessThanOrEqualTo(24);
        }
    }

    @Test
    void tooFewPointsAreRefused() {
        assertThatThrownBy(() -> VectorFitting.fit(Synthetic.sampled(Synthetic.ceramic(), FrequencyGrid.logSpaced(1e3, 1e8, 5))))
                .isInstanceOf(IllegalArgumentException.class).hasMessage("A fit needs at least 6 points, not 5");
    }

    @Test
    void aPointOfZeroIsRefusedByItsFrequency() {
        double[] re = {1, 1, 0, 1, 1, 1};
        double[] im = {-1, -1, 0, 1, 1, 1};
        assertThatThrownBy(() -> VectorFitting.fit(new Curve(FrequencyGrid.of(1, 2, 3, 4, 5, 6), re, im)))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("3.0 Hz");
    }

    @Test
    void anImpossibleOrderLimitIsRefused() {
        assertThatThrownBy(() -> FitSettings.DEFAULT.withMaxOrder(0)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("maxOrder");
    }

    @Test
    void aLongSweepIsThinnedForThePolesAndJudgedOnAllPoints() {
        RationalFit fit = VectorFitting.fit(Synthetic.noisy(Synthetic.polymer(), FrequencyGrid.logSpaced(1e3, 1e8, 20_000), 0.002, 11));
        assertThat(fit.worstRelativeErrorPercent()).isLessThan(1);
        assertThat(Synthetic.worstError(fit.function(), Synthetic.polymer(), 1e3, 1e8)).isLessThan(0.006);
        assertThat(fit.passive()).isTrue();
    }

    @Test
    void aLosslessTableIsFittedWithoutARelativeErrorOfItsResistance() {
        DoubleFunction<Complex> part = w -> Synthetic.inductor(1e-9, w).plus(Synthetic.capacitor(1e-6, w));
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(part, FrequencyGrid.logSpaced(1e3, 1e8, 90)));
        assertThat(fit.worstRelativeErrorPercent()).isLessThan(1e-6);
        assertThat(fit.worstResistanceErrorPercent()).isZero();
    }
}

package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.ripple.BranchRipple;
import org.stillrail.electrical.ripple.HarmonicCurrents;
import org.stillrail.electrical.ripple.PiecewiseLinearCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** A triangle of 2 A peak to peak, 300 kHz, D = 0.3 in a single part. */
class RippleStressTest {

    private static final double HZ = 300e3;
    private static final PiecewiseLinearCurrent TRIANGLE =
            PiecewiseLinearCurrent.of(1 / HZ, new double[] {0, 0.3 / HZ}, new double[] {-1, 1});
    private static final StressRule RULE = new StressRule(Technology.WET_ALUMINIUM, 0.7, 1, 0, null, 1, "test");

    private static HarmonicCurrents currents() {
        return ripple().perPart();
    }

    private static BranchRipple ripple() {
        return Ripple.of(Banks.of(Banks.branch("part", 1, new SeriesRlc(1e-4, 0.05, 5e-9))), TRIANGLE, 100).branches().get(0);
    }

    @Test
    void harmonicsAreWeighedByWhatThePartMayCarryThere() {
        RippleRating rating = new RippleRating(0.9, CharacteristicCurve.logarithmic(1e5, 1, 1e6, 1.2, 1e7, 1.3),
                CharacteristicCurve.linear(65, 2, 105, 1));
        RippleStress stress = RippleStress.of(currents(), HZ, rating, 85, RULE);
        assertThat(stress.rmsA()).isCloseTo(0.5773502691895742, withPercentage(1e-6));
        Check.that(Topic.STRESS, "Ripple current of a triangle weighted by frequency, sqrt of the sum of (In / kf)^2")
                .source(Source.independent("20 000 harmonics of the triangle summed in numpy")).expected("A", 0.5246084439072436).relative(1e-6)
                .got(stress.equivalentA());
        assertThat(stress.ratedA()).isCloseTo(1.35, within(1e-12));
        assertThat(stress.allowedA()).isCloseTo(0.945, within(1e-12));
        assertThat(stress.kept()).isTrue();
        assertThat(stress.notes()).isEmpty();
    }

    @Test
    void bothSidesOfTheLimit() {
        double weighted = RippleStress.of(currents(), HZ, new RippleRating(1, null, null), 25, RULE).equivalentA();
        assertThat(RippleStress.of(currents(), HZ, new RippleRating(weighted / 0.7 * 1.0001, null, null), 25, RULE).kept()).isTrue();
        assertThat(RippleStress.of(currents(), HZ, new RippleRating(weighted / 0.7 * 0.9999, null, null), 25, RULE).kept()).isFalse();
    }

    @Test
    void whatIsNotKnownIsSaid() {
        assertThat(RippleStress.of(currents(), HZ, new RippleRating(1, null, null), 25, RULE).notes()).hasSize(2);
        RippleRating narrow = new RippleRating(
                1, CharacteristicCurve.logarithmic(120, 0.4, 1e5, 1), CharacteristicCurve.linear(85, 1, 105, 0.8));
        assertThat(RippleStress.of(currents(), HZ, narrow, 25, RULE).notes())
                .allMatch(note -> note.contains("last value is held")).hasSize(2);
    }

    @Test
    void heatingCurrentKeepsTheRmsAndTheHeat() {
        BranchRipple ripple = ripple();
        HeatingCurrent current = HeatingCurrent.of(ripple.perPart(), HZ);
        assertThat(current.rmsA()).isCloseTo(ripple.perPartRmsA(), withPercentage(1e-9));
        assertThat(current.dissipationW(new SeriesRlc(1e-4, 0.05, 5e-9))).isCloseTo(ripple.perPartDissipationW(), withPercentage(1e-9));
    }

    @Test
    void heatOfAResistanceThatFallsWithFrequencyIsTheSameAsTheRipples() {
        DatasheetModel part = DatasheetModel.of(new LossFigures(1e-4, 0.12, 120, 0.04, 100e3), 5e-9);
        BranchRipple ripple = Ripple.of(Banks.of(Banks.branch("part", 1, part)), TRIANGLE, 100).branches().get(0);
        assertThat(HeatingCurrent.of(ripple.perPart(), HZ).dissipationW(part))
                .isCloseTo(ripple.perPartDissipationW(), withPercentage(1e-3));
    }

    @Test
    void sineHeatsByItsSquare() {
        assertThat(HeatingCurrent.sine(1e5, 2).dissipationW(new SeriesRlc(1e-4, 0.05, 0))).isCloseTo(0.2, within(1e-12));
    }
}

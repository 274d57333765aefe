package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ModelBasis;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.ResistanceCurve;
import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.ripple.HarmonicCurrents;
import org.stillrail.electrical.ripple.PiecewiseLinearCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** All of it together for two parts of wet aluminium under a triangle of 4 A peak to peak, so 1/sqrt(3) A rms in each. */
class PartStressTest {

    private static final double HZ = 100e3;
    private static final SeriesRlc PART = new SeriesRlc(1e-3, 0.09, 0);
    private static final Characteristics WARMTH = new Characteristics(
            null, null, null, null, new ResistanceCurve(CharacteristicCurve.linear(-40, 6, 25, 1, 105, 0.5), HZ), null);
    private static final RippleRating RIPPLE = new RippleRating(1, CharacteristicCurve.logarithmic(120, 0.4, 1e5, 1), null);

    private static HarmonicCurrents currents() {
        PiecewiseLinearCurrent triangle = PiecewiseLinearCurrent.of(1 / HZ, new double[] {0, 0.5 / HZ}, new double[] {-2, 2});
        return Ripple.of(Banks.of(Banks.branch("bulk", 2, PART)), triangle, 100).branches().get(0).perPart();
    }

    private static ImpedanceModel warm(double temperatureC) {
        return WARMTH.bend(PART, ModelBasis.datasheet(1e-3), new OperatingPoint(0, temperatureC, null), PlaceInBand.AS_MODELLED).model();
    }

    private static PartConditions conditions(double ambientC, double lowestV) {
        return new PartConditions(ambientC, 12, lowestV, currents(), HZ, PartStressTest::warm);
    }

    private static PartRatings ratings(ThermalResistance thermal) {
        return new PartRatings(Technology.WET_ALUMINIUM, 16.0, null, 105.0, RIPPLE, thermal, LifeRating.of(2000, 105));
    }

    /** 1/3 A2 times 0.09 ohm, falling by 0.00625 a kelvin above 25 degC: at 65 degC ambient, T - 65 = 50 x 0.03 x (1 - (T - 25) / 160). */
    @Test
    void warmthComesOfTheResistanceAtTheWarmthItself() {
        PartStress stress = PartStress.of(ratings(ThermalResistance.given(50, "datasheet")), StressRules.DEFAULT, conditions(65, 0));
        double core = (65 + 1.5 * (1 + 25.0 / 160)) / (1 + 1.5 / 160);
        Check.that(Topic.STRESS, "Core whose ESR falls as it warms, 50 K/W and 1/3 A^2: steady temperature").source(Source.independent("by hand"))
                .expected("degC", core).absolute(1e-4).got(stress.heat().coreC());
        assertThat(stress.ripple().equivalentA()).isCloseTo(1 / Math.sqrt(3), withPercentage(1e-4));
        assertThat(stress.ripple().kept()).isTrue();
        assertThat(stress.life().hours()).isCloseTo(2000 * Math.pow(2, (105 - core) / 10), withPercentage(1e-3));
        assertThat(stress.allowedC()).isEqualTo(105);
        assertThat(stress.coolEnough()).isTrue();
        assertThat(stress.reverse().kept()).isTrue();
    }

    @Test
    void warmerAirWarmsTheCoreAndShortensTheLife() {
        PartRatings ratings = ratings(ThermalResistance.ofCan(0.0125, 0.025));
        double life = Double.POSITIVE_INFINITY;
        for (double ambient = -20; ambient <= 100; ambient += 10) {
            PartStress stress = PartStress.of(ratings, StressRules.DEFAULT, conditions(ambient, 0));
            assertThat(stress.heat().coreC()).isGreaterThan(ambient);
            assertThat(stress.life().hours()).isLessThan(life);
            assertThat(stress.notes()).anyMatch(note -> note.contains("estimated from the case"));
            life = stress.life().hours();
        }
    }

    @Test
    void bothSidesOfTheTemperatureLimit() {
        StressRules rules = StressRules.DEFAULT.with(new StressRule(Technology.WET_ALUMINIUM, 1, 1, 0, 80.0, 1, "the team"));
        PartRatings ratings = ratings(ThermalResistance.given(50, "datasheet"));
        assertThat(PartStress.of(ratings, rules, conditions(78, 0)).coolEnough()).isTrue();
        assertThat(PartStress.of(ratings, rules, conditions(79.5, 0)).coolEnough()).isFalse();
    }

    @Test
    void reversedPartIsSeen() {
        assertThat(PartStress.of(ratings(null), StressRules.DEFAULT, conditions(25, -0.1)).reverse().kept()).isFalse();
    }

    @Test
    void ratedRiseStandsInForAThermalResistance() {
        PartRatings ratings = new PartRatings(Technology.WET_ALUMINIUM, 16.0, null, 105.0, RIPPLE, null,
                new LifeRating(2000, 105, 6, LifeRating.VoltageTerm.NONE));
        PartStress stress = PartStress.of(ratings, StressRules.DEFAULT, conditions(65, 0));
        assertThat(stress.heat().riseK()).isCloseTo(2, withPercentage(1e-2));
    }

    @Test
    void whatIsNotKnownStaysUnknown() {
        PartRatings bare = new PartRatings(Technology.WET_ALUMINIUM, null, null, null, null, null, null);
        PartStress stress = PartStress.of(bare, StressRules.DEFAULT, conditions(65, 0));
        assertThat(stress.ripple()).isNull();
        assertThat(stress.heat()).isNull();
        assertThat(stress.coolEnough()).isNull();
        assertThat(stress.life().modelled()).isFalse();
        assertThat(stress.notes()).hasSize(2);
    }

    @Test
    void defaultRulesNameTheirDocuments() {
        Check.that(Topic.STRESS, "Chip parts rated to 125 degC: ceramic at 85 % of that, solid tantalum to 85 degC")
                .source(Source.seenSecondHand("RL-TR-92-11 (Rome Laboratory, 1992), table 9-2, in a public transcription"))
                .expected("degC", 106.25, 85).absolute(1e-9)
                .got(StressRules.DEFAULT.of(Technology.CERAMIC_CLASS_2).allowedC(125.0), StressRules.DEFAULT.of(Technology.TANTALUM_MNO2).allowedC(125.0));
        assertThat(StressRules.DEFAULT.of(Technology.TANTALUM_MNO2).source()).contains("RL-TR-92-11");
        assertThat(StressRules.DEFAULT.of(Technology.FILM).allowedC(105.0)).isEqualTo(105);
        assertThat(StressRules.DEFAULT.all()).hasSize(Technology.values().length);
    }
}

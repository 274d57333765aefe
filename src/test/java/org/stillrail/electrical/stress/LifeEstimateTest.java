package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class LifeEstimateTest {

    private static SelfHeating core(double coreC) {
        return SelfHeating.ofRating(coreC, 0, 0, 1);
    }

    private static double hours(Technology technology, LifeRating rating, SelfHeating heat) {
        return LifeEstimate.of(technology, rating, heat, null).hours();
    }

    /** AL-01: 2000 h at 105 degC. */
    @ParameterizedTest
    @CsvSource({"105, 2000", "95, 4000", "85, 8000", "65, 32000", "45, 128000"})
    void wetAluminiumDoublesWithEveryTenDegreesLess(double coreC, double expected) {
        Check.that(Topic.STRESS, "Wet aluminium of 2000 h at 105 degC, core at " + coreC + " degC: ten-degree rule")
                .source(Source.seenSecondHand("two public life-time pages of makers")).expected("h", expected).relative(1e-9)
                .got(hours(Technology.WET_ALUMINIUM, LifeRating.of(2000, 105), core(coreC)));
    }

    /** AL-04: 10 K at the rated ripple current, 65 degC ambient, 2000 h stated at 105 degC with full ripple. */
    @ParameterizedTest
    @CsvSource({"0, 65, 64000", "0.5, 67.5, 53817.37057623773", "1, 75, 32000", "1.2, 79.4, 23588.307476657617"})
    void rippleShortensIt(double currentShare, double coreC, double expected) {
        LifeRating rating = new LifeRating(2000, 105, 10, LifeRating.VoltageTerm.NONE);
        SelfHeating heat = SelfHeating.ofRating(65, 10, currentShare * 1.7, 1.7);
        Source parler = Source.fromMemory("standard form of the ripple term, papers by S. G. Parler");
        String name = "Wet aluminium of 2000 h at 105 degC with 10 K at the rated ripple, ambient 65 degC, " + currentShare + " of the rated ripple";
        Check.that(Topic.STRESS, name + ": core").source(parler).expected("degC", coreC).relative(1e-9).got(heat.coreC());
        Check.that(Topic.STRESS, name + ": life").source(parler).expected("h", expected).relative(1e-9)
                .got(hours(Technology.WET_ALUMINIUM, rating, heat));
    }

    /** AL-05: 5000 h at 95 degC, core at 65 degC. */
    @ParameterizedTest
    @CsvSource({"1, 40000", "0.9, 53200", "0.8, 66400", "0.5, 106000"})
    void lowerVoltageLengthensLargeCans(double voltageShare, double expected) {
        LifeRating rating = new LifeRating(5000, 95, 0, LifeRating.VoltageTerm.LARGE_CAN);
        Check.that(Topic.STRESS, "Large can of 5000 h at 95 degC, core at 65 degC, at " + voltageShare + " of its voltage: multiplier 4.3 - 3.3 V / Vr")
                .source(Source.seenSecondHand("S. G. Parler, Deriving life multipliers, IEEE Power Electronics Society Newsletter, 2004, in a public script"))
                .expected("h", expected).relative(1e-9).got(LifeEstimate.of(Technology.WET_ALUMINIUM, rating, core(65), voltageShare).hours());
    }

    /** Ten times the life for 20 K less. */
    @ParameterizedTest
    @CsvSource({"105, 2000", "85, 20000", "75, 63245.553203367585", "125, 200"})
    void polymerTakesTenTimesAsLongForTwentyDegreesLess(double coreC, double expected) {
        Check.that(Topic.STRESS, "Polymer aluminium of 2000 h at 105 degC, core at " + coreC + " degC: twenty-degree rule")
                .source(Source.fromMemory("makers' notes: ten times the life for 20 K less")).expected("h", expected).relative(1e-9)
                .got(hours(Technology.POLYMER_ALUMINIUM, LifeRating.of(2000, 105), core(coreC)));
    }

    @ParameterizedTest
    @EnumSource(names = {"TANTALUM_MNO2", "TANTALUM_POLYMER", "CERAMIC_CLASS_1", "CERAMIC_CLASS_2", "FILM"})
    void othersAreNotModelledEvenWithAFigureForLife(Technology technology) {
        LifeEstimate life = LifeEstimate.of(technology, LifeRating.of(2000, 105), core(65), null);
        assertThat(life.modelled()).isFalse();
        assertThat(life.hours()).isNull();
        assertThat(life.reason()).contains("not modelled");
    }

    @Test
    void whatIsMissingIsNamed() {
        assertThat(LifeEstimate.of(Technology.WET_ALUMINIUM, null, core(65), null).reason()).contains("datasheet");
        assertThat(LifeEstimate.of(Technology.WET_ALUMINIUM, LifeRating.of(2000, 105), null, null).reason()).contains("core");
        SelfHeating runaway = SelfHeating.of(25, ThermalResistance.given(100, "test"), t -> 10);
        assertThat(LifeEstimate.of(Technology.WET_ALUMINIUM, LifeRating.of(2000, 105), runaway, null).reason()).contains("runaway");
    }

    @Test
    void moreThanFifteenYearsIsSaid() {
        assertThat(LifeEstimate.of(Technology.WET_ALUMINIUM, LifeRating.of(2000, 105), core(45), null).notes())
                .noneMatch(note -> note.contains("fifteen years"));
        assertThat(LifeEstimate.of(Technology.WET_ALUMINIUM, LifeRating.of(2000, 105), core(44), null).notes())
                .anyMatch(note -> note.contains("fifteen years"));
    }

    @Test
    void corePastItsTestIsSaid() {
        assertThat(LifeEstimate.of(Technology.WET_ALUMINIUM, LifeRating.of(2000, 105), core(105), null).notes())
                .noneMatch(note -> note.contains("warmer than in the datasheet's test"));
        assertThat(LifeEstimate.of(Technology.WET_ALUMINIUM, LifeRating.of(2000, 105), core(106), null).notes())
                .anyMatch(note -> note.contains("warmer than in the datasheet's test"));
    }

    /** Warmer is never longer. */
    @Property
    void lifeFallsWithTemperature(
            @ForAll @DoubleRange(min = -40, max = 125) double a, @ForAll @DoubleRange(min = 0.01, max = 50) double more) {
        for (Technology technology : new Technology[] {Technology.WET_ALUMINIUM, Technology.POLYMER_ALUMINIUM, Technology.HYBRID}) {
            assertThat(hours(technology, LifeRating.of(2000, 105), core(a + more)))
                    .isLessThan(hours(technology, LifeRating.of(2000, 105), core(a)));
        }
    }
}

package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.CeramicCode;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.ResistanceCurve;
import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.TeamSettings;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.stress.LifeRating;
import org.stillrail.electrical.stress.StressRule;
import org.stillrail.electrical.stress.StressRules;
import org.stillrail.electrical.stress.ThermalResistance;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/**
 * Ripple current, temperature and life on both sides of their limits. One bulk part alone on the rail carries the whole triangle of the
 * inductor, dI / sqrt(12) rms, so all of it is known in closed form.
 */
class StressVerdictsTest {

    private static final SeriesRlc MODEL = new SeriesRlc(220e-6, 0.05, 3e-9);
    private static final double RIPPLE_A = Rails.OUTPUT_V * (1 - Rails.OUTPUT_V / 12) / (2.2e-6 * Rails.SWITCHING_HZ) / Math.sqrt(12);
    private static final double WATTS = RIPPLE_A * RIPPLE_A * 0.05;
    private static final double HOTTEST_C = 60;
    private static final Source TEN_DEGREES = Source.seenSecondHand("two public life-time pages of makers");

    private static RailFigures rail() {
        return Rails.with(Rails.rippleOnly(0.5), new Ambient(-20, 25, HOTTEST_C, Rails.CITATION));
    }

    private static RatingInput ratings(RippleRating ripple, ThermalResistance thermal, LifeRating life) {
        return new RatingInput(null, 105.0, ripple, 105.0, thermal, life);
    }

    private static BranchInput bulk(RatingInput ratings) {
        return Rails.part("bulk", 1, Technology.WET_ALUMINIUM, 10, MODEL).withRatings(ratings);
    }

    private static Verdict verdict(Requirement requirement, RailFigures rail, StressRules rules, BranchInput... branches) {
        return Rails.verdicts(Rails.input(rail, branches).withSettings(TeamSettings.DEFAULT.withStressRules(rules))).on(requirement);
    }

    private static Verdict rippleCurrent(RippleRating rating) {
        return verdict(Requirement.RIPPLE_CURRENT, rail(), StressRules.DEFAULT, bulk(ratings(rating, null, null)));
    }

    @Test
    void rippleCurrentOnBothSidesOfItsRating() {
        assertThat(rippleCurrent(new RippleRating(RIPPLE_A * 1.001, null, null)).outcome()).isEqualTo(Outcome.MET);
        Verdict over = rippleCurrent(new RippleRating(RIPPLE_A * 0.999, null, null));
        assertThat(over.outcome()).isEqualTo(Outcome.NOT_MET);
        Check.that(Topic.STRESS, "Ripple current verdict of a part alone under a buck's triangle, rating flat over frequency: dI / sqrt 12")
                .source(Source.fromMemory("mean square of a triangle, any textbook")).expected("A", RIPPLE_A).relative(1e-5).got(over.value());
        assertThat(over.branch()).isZero();
    }

    /** A rating that is half at every harmonic makes every harmonic count twice. */
    @Test
    void rippleCurrentIsWeighedByFrequency() {
        CharacteristicCurve half = CharacteristicCurve.logarithmic(100, 0.5, 1e9, 0.5);
        assertThat(rippleCurrent(new RippleRating(3, half, null)).value()).isCloseTo(2 * RIPPLE_A, withPercentage(1e-3));
        CharacteristicCurve rising = CharacteristicCurve.logarithmic(100e3, 0.6, 10e6, 1);
        Check.that(Topic.STRESS, "Ripple current verdict with kf of 0.6 at 100 kHz rising over log f to 1 at 10 MHz: sqrt of the sum of (In / kf)^2")
                .source(Source.independent("20 000 harmonics of the triangle by their closed form, summed in numpy"))
                .expected("A", 0.8418317833707699).relative(1e-5).got(rippleCurrent(new RippleRating(3, rising, null)).value());
        Check.that(Topic.STRESS, "Ripple current verdict: the sum is of squares, each harmonic over the rating's factor at its own frequency")
                .source(Source.commonPractice("datasheets give a factor over frequency; losses of harmonics add up")).expected("A", 2 * RIPPLE_A).relative(1e-5)
                .got(rippleCurrent(new RippleRating(3, half, null)).value());
    }

    @Test
    void theTeamsShareOfTheRatingCounts() {
        StressRules strict = StressRules.DEFAULT.with(new StressRule(Technology.WET_ALUMINIUM, 0.7, 1, 0, null, 1, "the team"));
        RippleRating rating = new RippleRating(RIPPLE_A * 1.3, null, null);
        assertThat(rippleCurrent(rating).outcome()).isEqualTo(Outcome.MET);
        Verdict verdict = verdict(Requirement.RIPPLE_CURRENT, rail(), strict, bulk(ratings(rating, null, null)));
        assertThat(verdict.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(verdict.sentence()).contains("70 % of its rating");
    }

    @Test
    void aBulkPartWithoutARatingIsUnknownAndACeramicNeedsNone() {
        assertThat(rippleCurrent(null).outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(rippleCurrent(null).sentence()).contains("'bulk' has no ripple current rating");
        assertThat(verdict(Requirement.RIPPLE_CURRENT, rail(), StressRules.DEFAULT, Rails.ceramic(4)).outcome()).isEqualTo(Outcome.NOT_ASKED);
    }

    @Test
    void aRatingOfACoolerPlaceTellsNothingOfAHotOne() {
        RatingInput cool = new RatingInput(null, 105.0, new RippleRating(3, null, null), 45.0, null, null);
        assertThat(verdict(Requirement.RIPPLE_CURRENT, rail(), StressRules.DEFAULT, bulk(cool)).outcome()).isEqualTo(Outcome.UNKNOWN);
        RatingInput drawn = new RatingInput(null, 105.0, new RippleRating(3, null, CharacteristicCurve.linear(45, 1, 105, 0.4)), 45.0, null, null);
        Verdict verdict = verdict(Requirement.RIPPLE_CURRENT, rail(), StressRules.DEFAULT, bulk(drawn));
        assertThat(verdict.limit()).isCloseTo(3 * 0.85, within(1e-9));
    }

    private static Verdict temperature(double kelvinPerWatt, Double mostC) {
        StressRules rules = StressRules.DEFAULT.with(new StressRule(Technology.WET_ALUMINIUM, 1, 1, 0, mostC, 1, "the team"));
        return verdict(Requirement.TEMPERATURE, rail(), rules, bulk(ratings(null, ThermalResistance.given(kelvinPerWatt, "test"), null)));
    }

    @Test
    void temperatureOnBothSidesOfItsLimit() {
        double core = HOTTEST_C + 200 * WATTS;
        assertThat(temperature(200, core + 0.01).outcome()).isEqualTo(Outcome.MET);
        Verdict over = temperature(200, core - 0.01);
        assertThat(over.outcome()).isEqualTo(Outcome.NOT_MET);
        Check.that(Topic.STRESS, "Temperature verdict of 200 K/W under a triangle through 50 mohm, 60 degC of air: T + Rth R dI^2 / 12")
                .source(Source.fromMemory("thermal resistance times losses, circuit theory")).expected("degC", core).absolute(1e-3).got(over.value());
    }

    @Test
    void theTeamsMarginIsTakenOffTheRatedTemperature() {
        StressRules margin = StressRules.DEFAULT.with(new StressRule(Technology.WET_ALUMINIUM, 1, 1, 15, null, 1, "the team"));
        Verdict verdict = verdict(Requirement.TEMPERATURE, rail(), margin, bulk(ratings(null, ThermalResistance.given(1, "test"), null)));
        assertThat(verdict.limit()).isEqualTo(90);
    }

    @Test
    void anEstimateIsSaidToBeOne() {
        Verdict verdict = verdict(Requirement.TEMPERATURE, rail(), StressRules.DEFAULT, bulk(ratings(null, ThermalResistance.ofCan(0.01, 0.0125), null)));
        assertThat(verdict.sentence()).contains("(estimated)");
        assertThat(verdict.explanation().whatWouldChange()).contains("estimated from the case");
    }

    @Test
    void whatNobodyStatesLeavesTheTemperatureUnknownOrNotAsked() {
        Verdict caseless = verdict(Requirement.TEMPERATURE, rail(), StressRules.DEFAULT, bulk(ratings(null, null, null)));
        assertThat(caseless.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(caseless.sentence()).contains("No thermal resistance of 'bulk' is known");
        Verdict unrated = verdict(Requirement.TEMPERATURE, rail(), StressRules.DEFAULT, bulk(RatingInput.NONE));
        assertThat(unrated.sentence()).contains("highest temperature of 'bulk' is not stated");
        assertThat(verdict(Requirement.TEMPERATURE, Rails.rippleOnly(0.5), StressRules.DEFAULT, bulk(RatingInput.NONE)).outcome())
                .as("no ambient").isEqualTo(Outcome.NOT_ASKED);
    }

    /** ESR that doubles every ten kelvins, with ten kelvins a watt and enough watts, has no steady state. */
    @Test
    void thermalRunawayIsNotMet() {
        Characteristics running = new Characteristics(null, null, null, null,
                new ResistanceCurve(CharacteristicCurve.linear(25, 1, 60, 10, 100, 200, 300, 100_000), 100e3), null);
        Verdict verdict = verdict(Requirement.TEMPERATURE, rail(), StressRules.DEFAULT,
                bulk(running, ratings(null, ThermalResistance.given(100, "test"), null)));
        assertThat(verdict.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(verdict.sentence()).contains("no steady temperature");
    }

    private static BranchInput bulk(Characteristics characteristics, RatingInput ratings) {
        PartInput part = new PartInput(List.of(new PartInput.Member(OperatingPoint.REFERENCE, ModelInput.of(MODEL))), 120, 220e-6, false,
                characteristics, -0.2, 0.2, 1.0, 1.0);
        return new BranchInput("bulk", 1, "TEST", Technology.WET_ALUMINIUM, 10.0, part, SeriesPath.NONE, SeriesPath.NONE, "test", false)
                .withRatings(ratings);
    }

    /**
     * ESR falls by 0.4 % of its value at 25 degC a kelvin: T = Ta + Rth I^2 R (1 - 0.004 (T - 25)) in closed form. The corner's part stands there, and
     * its ESR is that of its own warmth.
     */
    @Test
    void aPartWarmsItselfAtEveryCornerAndItsResistanceFollows() {
        Characteristics falling = new Characteristics(null, null, null, null, new ResistanceCurve(CharacteristicCurve.linear(-75, 1.4, 25, 1, 125, 0.6), 100e3), null);
        EvaluationInput input = Rails.input(rail(), bulk(falling, ratings(null, ThermalResistance.given(400, "test"), null)));
        for (Corner corner : Corner.of(Fitting.named(input))) {
            double ambient = corner.conditions().ambientC();
            double core = (ambient + 400 * WATTS * 1.1) / (1 + 400 * WATTS * 0.004);
            assertThat(corner.conditions().branches().get(0).point().temperatureC()).as(corner.name()).isCloseTo(core, within(0.1));
            assertThat(corner.parts().get(0).model().at(1e5).resistanceOhm()).isCloseTo(0.05 * (1 - 0.004 * (core - 25)), within(0.05 * 0.004 * 0.1));
        }
        Verdict verdict = Rails.verdicts(input).on(Requirement.TEMPERATURE);
        assertThat(verdict.value()).isCloseTo((60 + 400 * WATTS * 1.1) / (1 + 400 * WATTS * 0.004), within(1e-2));
        assertThat(verdict.corner()).contains("hot");
    }

    /** A class code promises a band away from 25 degC; a part that is a little warmer than the air does not fall to its end. */
    @Test
    void aPartKnownByItsClassCodeStaysAtTheTemperatureOfTheAir() {
        Characteristics code = new Characteristics(null, null, CeramicCode.find("X7R").orElseThrow(), null, null, null);
        Corner low = Corner.of(Fitting.named(Rails.input(rail(), bulk(code, ratings(null, ThermalResistance.given(200, "test"), null))))).stream()
                .filter(corner -> corner.name().equals("all capacitances low")).findFirst().orElseThrow();
        assertThat(low.parts().get(0).capacitanceF()).isCloseTo(0.8 * 220e-6, withPercentage(1e-9));
    }

    private static Verdict life(double hours, double factor, BranchInput... branches) {
        RailFigures asked = Rails.withLife(rail(), hours);
        StressRules rules = StressRules.DEFAULT.with(new StressRule(Technology.WET_ALUMINIUM, 1, 1, 0, null, factor, "the team"));
        return verdict(Requirement.LIFE, asked, rules, branches);
    }

    /** 2000 h at 105 degC, twice for each ten kelvins less; the hottest ambient all the time. */
    @Test
    void lifeOnBothSidesOfTheRails() {
        BranchInput bulk = bulk(ratings(null, ThermalResistance.given(200, "test"), LifeRating.of(2000, 105)));
        double hours = 2000 * Math.pow(2, (105 - HOTTEST_C - 200 * WATTS) / 10);
        assertThat(life(hours * 0.999, 1, bulk).outcome()).isEqualTo(Outcome.MET);
        Verdict shorter = life(hours * 1.001, 1, bulk);
        assertThat(shorter.outcome()).isEqualTo(Outcome.NOT_MET);
        Check.that(Topic.STRESS, "Life verdict of 2000 h at 105 degC with a core of 63.9 degC: 2000 h times 2 for each 10 K less").source(TEN_DEGREES)
                .expected("h", hours).relative(1e-4).got(shorter.value());
        assertThat(life(hours * 0.6, 2, bulk).outcome()).as("twice the rail's life").isEqualTo(Outcome.NOT_MET);
    }

    /** AL-04: at the rated ripple the core is 10 K above 65 degC of air, and was 10 K above 105 degC in the test that the 2000 h are from. */
    @Test
    void lifeCountsTheWarmthByRippleOnBothSides() {
        ThermalResistance tenKelvin = ThermalResistance.given(10 / WATTS, "test");
        RailFigures warm = Rails.withLife(Rails.with(Rails.rippleOnly(0.5), new Ambient(20, 25, 65, Rails.CITATION)), 1000);
        LifeRating withRipple = new LifeRating(2000, 105, 10, LifeRating.VoltageTerm.NONE);
        Check.that(Topic.STRESS, "Life verdict of 2000 h at 105 degC with 10 K at the rated ripple, 65 degC of air and the rated ripple: 2^((115 - 75) / 10)")
                .source(Source.fromMemory("standard form of the ripple term, papers by S. G. Parler; recomputed")).expected("h", 32_000).relative(1e-4)
                .got(verdict(Requirement.LIFE, warm, StressRules.DEFAULT, bulk(ratings(null, tenKelvin, withRipple))).value());
        Check.that(Topic.STRESS, "Life verdict of the same part where the datasheet's test was without ripple: 2^((105 - 75) / 10)").source(TEN_DEGREES)
                .expected("h", 16_000).relative(1e-4)
                .got(verdict(Requirement.LIFE, warm, StressRules.DEFAULT, bulk(ratings(null, tenKelvin, LifeRating.of(2000, 105)))).value());
    }

    @Test
    void lifeOfALargeCanCountsTheVoltageOfTheRail() {
        ThermalResistance thermal = ThermalResistance.given(200, "test");
        BranchInput can = bulk(ratings(null, thermal, new LifeRating(2000, 105, 0, LifeRating.VoltageTerm.LARGE_CAN)));
        double without = life(1000, 1, bulk(ratings(null, thermal, LifeRating.of(2000, 105)))).value();
        assertThat(life(1000, 1, can).value() / without).isCloseTo(4.3 - 3.3 * Rails.OUTPUT_V / can.ratedVoltageV(), within(1e-9));
    }

    @Test
    void lifeOfOtherTechnologiesIsNotModelledAndNeverMadeUp() {
        BranchInput bulk = bulk(ratings(null, ThermalResistance.given(200, "test"), LifeRating.of(2000, 105)));
        assertThat(life(1000, 1, Rails.ceramic(4)).outcome()).isEqualTo(Outcome.NOT_MODELLED);
        assertThat(life(1000, 1, Rails.ceramic(4)).value()).isNull();
        Verdict both = life(1000, 1, bulk, Rails.ceramic(4));
        assertThat(both.outcome()).isEqualTo(Outcome.MET);
        assertThat(both.sentence()).contains("Not modelled for ceramic class 2");
        Verdict unstated = life(1000, 1, bulk(ratings(null, ThermalResistance.given(200, "test"), null)));
        assertThat(unstated.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(unstated.sentence()).contains("datasheet figure for life is missing");
        assertThat(verdict(Requirement.LIFE, rail(), StressRules.DEFAULT, bulk).outcome()).isEqualTo(Outcome.NOT_ASKED);
    }

    @Test
    void partsOfAFlybackOfUnknownTurnsAreNotModelled() {
        RailFigures flyback = Rails.with(rail(), Rails.converter(Topology.FLYBACK));
        for (Requirement requirement : List.of(Requirement.RIPPLE_CURRENT, Requirement.TEMPERATURE, Requirement.REVERSE_VOLTAGE)) {
            assertThat(verdict(requirement, flyback, StressRules.DEFAULT, bulk(ratings(null, null, null))).outcome()).isEqualTo(Outcome.NOT_MODELLED);
        }
    }

    /** What a remedy says is what the evaluation of the changed bank says, at the same corner. */
    @Test
    void remediesKnowTheCurrentOfTheChangedBank() {
        EvaluationInput input = Rails.input(rail(), Rails.ceramic(2), bulk(Rails.ratings(Technology.WET_ALUMINIUM)));
        for (int count : new int[] {0, 1, 3}) {
            Verdict quick = Rails.verdicts(input).withCount(0, count).stream()
                    .filter(verdict -> verdict.requirement() == Requirement.RIPPLE_CURRENT).findFirst().orElseThrow();
            Verdict whole = Rails.verdicts(input.withCount(0, count)).on(Requirement.RIPPLE_CURRENT);
            assertThat(quick.value()).isCloseTo(whole.value(), withPercentage(1e-6));
        }
    }
}

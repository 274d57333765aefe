package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.DeratingRule;
import org.stillrail.electrical.requirement.DeratingRules;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.PublishedDerating;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Space;
import org.stillrail.electrical.requirement.TeamSettings;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Voltage rating, height, area and cost. */
class PartVerdictsTest {

    private static final Source MIL_STD_975M = Source.seenSecondHand("MIL-STD-975M (NASA), 1994, appendix A 3.1, in a public transcription");
    private static final SeriesRlc MODEL = new SeriesRlc(100e-6, 0.01, 2e-9);

    private static Verdict voltage(Technology technology, double ratedV, double highestC) {
        return Evaluation.evaluate(Rails.input(
                Rails.with(Rails.rippleOnly(0.5), new Ambient(0, 25, highestC, Rails.CITATION)),
                Rails.part("under test", 1, technology, ratedV, MODEL).withRatings(RatingInput.NONE))).verdict(Requirement.VOLTAGE_RATING);
    }

    private static double peakV() {
        return Rails.OUTPUT_V + Evaluation.evaluate(Rails.input(Rails.rippleOnly(0.5), Rails.inline("x", 1, 100e-6, 0.01, 2e-9))).ripple().peakToPeakV() / 2;
    }

    @Test
    void voltageRatingCountsHalfTheRippleOnBothSidesOfItsLimit() {
        double rated = peakV() / 0.6;
        Verdict met = voltage(Technology.CERAMIC_CLASS_2, rated * 1.0001, 85);
        Verdict notMet = voltage(Technology.CERAMIC_CLASS_2, rated * 0.9999, 85);
        assertThat(rated * 0.9999 * 0.6).as("would be enough without the ripple").isGreaterThan(Rails.OUTPUT_V);
        assertThat(met.outcome()).isEqualTo(Outcome.MET);
        assertThat(met.value()).isCloseTo(peakV(), within(1e-6));
        Check.that(Topic.STRESS, "Voltage verdict of a ceramic at 85 degC: limit over rated voltage").source(MIL_STD_975M).expected("", 0.6).absolute(1e-9)
                .got(met.limit() / (rated * 1.0001));
        assertThat(notMet.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(notMet.sentence()).contains("'under test'").contains("60 %");
    }

    /** A capacitance too large to make any ripple leaves a resistance, across which half the inductor's ripple stands at its peak. */
    @Test
    void theVoltageIsDirectVoltageAndPeakOfTheRipple() {
        double rippleA = Rails.OUTPUT_V * (1 - Rails.OUTPUT_V / 12) / (2.2e-6 * Rails.SWITCHING_HZ);
        Verdict verdict = Evaluation.evaluate(Rails.input(Rails.with(Rails.rippleOnly(0.5), new Ambient(0, 25, 60, Rails.CITATION)),
                Rails.part("bulk", 1, Technology.FILM, 10, new SeriesRlc(1, 0.2, 0)))).verdict(Requirement.VOLTAGE_RATING);
        Check.that(Topic.STRESS, "Voltage verdict: what counts is the direct voltage and the peak of the ripple, V + R dI / 2, 3.3 V and 0.2 ohm")
                .source(Source.fromMemory("EEE-INST-002 (NASA/TP-2003-212242), section C1: derating is of the sum of direct and peak alternating voltage"))
                .expected("V", Rails.OUTPUT_V + 0.2 * rippleA / 2).relative(1e-5).got(verdict.value());
    }

    /** DR-02: solid tantalum keeps 0.5 up to 70 degC and 0.4 at 90 degC. */
    @Test
    void theRuleFollowsTheHighestAmbient() {
        double rated = peakV() / 0.45;
        assertThat(voltage(Technology.TANTALUM_MNO2, rated, 70).outcome()).isEqualTo(Outcome.MET);
        assertThat(voltage(Technology.TANTALUM_MNO2, rated, 90).outcome()).isEqualTo(Outcome.NOT_MET);
        Check.that(Topic.STRESS, "Voltage verdict of solid tantalum at 90 degC: limit over rated voltage")
                .source(MIL_STD_975M).expected("", 0.4).absolute(1e-9)
                .got(voltage(Technology.TANTALUM_MNO2, rated, 90).limit() / rated);
        assertThat(voltage(Technology.TANTALUM_MNO2, 1000, 120).outcome()).as("above the rule's last temperature").isEqualTo(Outcome.NOT_MET);
    }

    /** DR-03: below 10 V a ceramic needs a rating of 100 V, where the team takes that rule. */
    @Test
    void theLowVoltageRuleHoldsWhereTheTeamTakesIt() {
        DeratingRule rule = PublishedDerating.MIL_STD_975M_CERAMIC.ruleWithLowVoltage(Technology.CERAMIC_CLASS_2);
        TeamSettings strict = TeamSettings.DEFAULT.withDeratingRules(DeratingRules.DEFAULT.with(rule));
        for (double rated : new double[] {99, 101}) {
            Verdict verdict = Evaluation.evaluate(Rails.input(Rails.rippleOnly(0.5), Rails.part("c", 1, Technology.CERAMIC_CLASS_2, rated, MODEL))
                    .withSettings(strict)).verdict(Requirement.VOLTAGE_RATING);
            assertThat(verdict.outcome()).isEqualTo(rated < 100 ? Outcome.NOT_MET : Outcome.MET);
        }
    }

    @Test
    void aBranchWithoutARatingIsUnknownAndAFailureBesideItIsWorse() {
        Verdict unknown = Evaluation.evaluate(Rails.input(Rails.rippleOnly(0.5), Rails.polymer(1), Rails.inline("typed", 1, 1e-5, 0.01, 1e-9)))
                .verdict(Requirement.VOLTAGE_RATING);
        assertThat(unknown.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(unknown.sentence()).contains("'typed' has no rated voltage");
        Verdict worse = Evaluation.evaluate(Rails.input(Rails.rippleOnly(0.5), Rails.part("low", 1, Technology.FILM, 4, MODEL),
                Rails.inline("typed", 1, 1e-5, 0.01, 1e-9))).verdict(Requirement.VOLTAGE_RATING);
        assertThat(worse.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(worse.branch()).isZero();
    }

    @Test
    void aTechnologyWithoutARuleIsUnknown() {
        TeamSettings none = TeamSettings.DEFAULT.withDeratingRules(new DeratingRules(java.util.List.of()));
        Verdict verdict = Evaluation.evaluate(Rails.input(Rails.rippleOnly(0.5), Rails.polymer(1)).withSettings(none))
                .verdict(Requirement.VOLTAGE_RATING);
        assertThat(verdict.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(verdict.sentence()).contains("no derating rule for polymer aluminium");
    }

    private static Verdict space(Requirement requirement, Double heightM, Double areaM2, String cost, BranchInput... branches) {
        Space space = new Space(heightM, areaM2, cost == null ? null : new BigDecimal(cost), Rails.CITATION);
        return Evaluation.evaluate(Rails.input(Rails.with(Rails.rippleOnly(0.5), space), branches)).verdict(requirement);
    }

    /** Two and four parts of 2 mm, 10 mm2 and 0.35 each, one kind of them 3 mm high. */
    @Test
    void aCostIsInTheCurrencyOfTheTeam() {
        RailFigures rail = new RailFigures(Rails.OUTPUT_V, 5, Rails.everything().input(), Rails.everything().converter(), null, null, null, null, null, null,
                new Space(null, null, new BigDecimal("4.5"), Rails.CITATION));
        EvaluationInput input = Rails.input(rail, Rails.polymer(1).withSize(8e-3, 40e-6, new BigDecimal("0.12")));
        Verdict euro = Evaluation.evaluate(input.withSettings(TeamSettings.DEFAULT.withCurrency("EUR"))).verdict(Requirement.COST);
        assertThat(euro.unit()).isEqualTo("EUR");
        assertThat(euro.sentence()).startsWith("Cost is 0.12 EUR, 4.5 EUR allowed;");
        assertThat(Evaluation.evaluate(input).verdict(Requirement.COST).sentence()).startsWith("Cost is 0.12, 4.5 allowed;");
    }

    @Test
    void spaceOnBothSidesOfItsLimits() {
        BranchInput tall = Rails.polymer(2).withSize(3e-3, 10e-6, new BigDecimal("0.35"));
        assertThat(space(Requirement.HEIGHT, 3.001e-3, null, null, tall, Rails.ceramic(4)).outcome()).isEqualTo(Outcome.MET);
        assertThat(space(Requirement.HEIGHT, 2.999e-3, null, null, tall, Rails.ceramic(4)).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(space(Requirement.HEIGHT, 2.999e-3, null, null, tall, Rails.ceramic(4)).sentence()).contains("'polymer' is the tallest");
        assertThat(space(Requirement.AREA, null, 60.1e-6, null, tall, Rails.ceramic(4)).outcome()).isEqualTo(Outcome.MET);
        assertThat(space(Requirement.AREA, null, 59.9e-6, null, tall, Rails.ceramic(4)).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(space(Requirement.COST, null, null, "2.11", tall, Rails.ceramic(4)).outcome()).isEqualTo(Outcome.MET);
        assertThat(space(Requirement.COST, null, null, "2.09", tall, Rails.ceramic(4)).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(space(Requirement.HEIGHT, null, 1.0, null, tall).outcome()).isEqualTo(Outcome.NOT_ASKED);
    }

    @Test
    void aSilentPartMakesSpaceUnknownUnlessTheOthersAlreadyExceedIt() {
        BranchInput silent = Rails.inline("typed", 1, 1e-5, 0.01, 1e-9);
        assertThat(space(Requirement.AREA, null, 60e-6, null, Rails.polymer(2), silent).outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(space(Requirement.AREA, null, 15e-6, null, Rails.polymer(2), silent).outcome()).isEqualTo(Outcome.NOT_MET);
    }
}

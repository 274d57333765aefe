package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.VoltageWindow;
import org.stillrail.electrical.step.Load;
import org.stillrail.electrical.step.StepRequest;
import org.stillrail.electrical.step.StepResult;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Bulk charge, deviation and window. */
class StepVerdictsTest {

    private static final Source AREA = Source.fromMemory("derived: area between the ramps of load and inductor");
    private static final PowerStage STAGE = new PowerStage(12, 1.2, 330e-9, 0, 500e3, 1);

    /** LS-05: 20 A, 32.7 MA/s, edge of 100 MA/s. */
    @Test
    void chargeIsTheAreaBetweenTheRampsOfLoadAndInductor() {
        LoadStep step = new LoadStep(0, 20, 100e6, 0.05, null);
        ChargeNeed need = ChargeNeed.of(step, STAGE.steepestRiseAPerS(), true);
        Check.that(Topic.STEP, "Bulk charge that 20 A with an edge of 100 A/us asks for: dI^2 / (2 m) - dI^2 / (2 ks)").source(AREA)
                .expected("C", 4.111111111111111e-06).relative(1e-9).got(need.chargeC());
        assertThat(need.capacitanceF()).isCloseTo(4.11111111e-6 / 0.05, within(1e-11));
    }

    /** LS-01 without ESR and with an edge that is as good as infinite: 1000 uF, 6.111 mV on loading and 55 mV on unloading. */
    @Test
    void needIsThatOfTheSlowerDirection() {
        ChargeNeed need = ChargeNeed.of(STAGE, new LoadStep(0, 20, 1e15, 0.055, null));
        assertThat(need.loading()).isFalse();
        Check.that(Topic.STEP, "Capacitance for 55 mV on releasing 20 A at once, 1.2 V, 0.33 uH").source(AREA).expected("F", 1e-3).relative(1e-6)
                .got(need.capacitanceF());
        ChargeNeed loading = ChargeNeed.of(new LoadStep(0, 20, 1e15, 0.00611111111, null), STAGE.steepestRiseAPerS(), true);
        Check.that(Topic.STEP, "Capacitance for 6.11 mV on loading 20 A at once, 12 V to 1.2 V, 0.33 uH").source(AREA).expected("F", 1e-3).relative(1e-6)
                .got(loading.capacitanceF());
    }

    @Test
    void aLoadSlowerThanTheInductorNeedsNoCharge() {
        RailFigures rail = Rails.with(Rails.everything(), new LoadStep(1, 5, 1e5, 0.1, Rails.CITATION));
        Verdict verdict = Evaluation.evaluate(Rails.sound().withRail(rail)).verdict(Requirement.BULK_CHARGE);
        assertThat(verdict.outcome()).isEqualTo(Outcome.MET);
        assertThat(verdict.sentence()).contains("no charge is missing");
    }

    /** 4 A at 10 MA/s over 3.3 V / 2.2 uH = 1.5 MA/s: 16 / 3e6 - 16 / 20e6 = 4.5333 uC within 100 mV. */
    @Test
    void bulkChargeOnBothSidesOfItsLimit() {
        double needed = (16 / 3e6 - 16 / 20e6) / 0.1;
        assertThat(bulkCharge(needed * 1.0001).outcome()).isEqualTo(Outcome.MET);
        assertThat(bulkCharge(needed * 0.9999).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(bulkCharge(needed * 0.9999).margin()).isNegative();
        assertThat(bulkCharge(needed).limit()).isCloseTo(needed, within(1e-12));
    }

    private static Verdict bulkCharge(double capacitanceF) {
        return Evaluation.evaluate(Rails.input(Rails.with(Rails.everything(), (VoltageWindow) null), Rails.inline("all of it", 1, capacitanceF, 0.02, 3e-9)))
                .verdict(Requirement.BULK_CHARGE);
    }

    @Test
    void capacitanceOfABankIsThatOfItsBranchesWhateverTheirInductance() {
        EvaluationInput input = Rails.input(Rails.everything(), Rails.inline("a", 2, 100e-6, 0.3, 20e-9), Rails.inline("b", 3, 10e-6, 0.001, 1e-9));
        assertThat(ChargeNeed.capacitanceF(input.bank(), 15e3)).isCloseTo(230e-6, within(1e-12));
    }

    private static RailFigures oneInput() {
        return Rails.with(Rails.everything(), InputRange.fixed(12));
    }

    private static double deviation() {
        EvaluationInput input = Rails.sound().withRail(oneInput());
        PowerStage stage = new PowerStage(12, Rails.OUTPUT_V, 2.2e-6, 0.01, Rails.SWITCHING_HZ, 1);
        Converter converter = new Converter(stage, new VoltageMode(1, 0.5 / Rails.SWITCHING_HZ),
                Evaluation.evaluate(input).loop().compensator());
        StepResult up = respond(input, converter, 1, 5);
        StepResult down = respond(input, converter, 5, 1);
        return Math.max(Math.max(up.undershootV(), up.overshootV()), Math.max(down.undershootV(), down.overshootV()));
    }

    private static StepResult respond(EvaluationInput input, Converter converter, double fromA, double toA) {
        return org.stillrail.electrical.step.LoadStep.of(StepRequest.of(input.bank(), converter, new Load(fromA, toA, 10e6), 3e-4));
    }

    @Test
    void deviationOnBothSidesOfItsLimit() {
        double deviation = deviation();
        Verdict met = deviation(deviation * 1.0001);
        Verdict notMet = deviation(deviation * 0.9999);
        assertThat(met.value()).isCloseTo(deviation, within(1e-5 * deviation));
        assertThat(met.outcome()).isEqualTo(Outcome.MET);
        assertThat(notMet.outcome()).isEqualTo(Outcome.NOT_MET);
    }

    private static Verdict deviation(double allowedV) {
        RailFigures rail = Rails.with(oneInput(), new LoadStep(1, 5, 10e6, allowedV, Rails.CITATION));
        return Evaluation.evaluate(Rails.sound().withRail(rail)).verdict(Requirement.DEVIATION);
    }

    /** 3.3 V from 3.8 V: the inductor rises far slower than it falls, so the step is worse at the lowest input. */
    @Test
    void deviationNamesTheInputThatSetsIt() {
        Verdict verdict = Evaluation.evaluate(Rails.sound().withRail(Rails.with(Rails.everything(), new InputRange(4, 12, 12))))
                .verdict(Requirement.DEVIATION);
        assertThat(verdict.corner()).isEqualTo("lowest input (4 V)");
        assertThat(verdict.sentence()).contains("undershoot");
    }

    @Test
    void sharesOfTheWindowAddUp() {
        EvaluationInput input = Rails.sound().withRail(oneInput());
        Evaluation evaluation = Evaluation.evaluate(input, Evaluation.evaluate(input).window().corner());
        WindowSide minus = evaluation.window().minus();
        assertThat(minus.setPointV()).isEqualTo(0.033);
        assertThat(minus.regulationV()).isEqualTo(0.01);
        assertThat(minus.halfRippleV()).isCloseTo(evaluation.ripple().peakToPeakV() / 2, within(1e-9));
        assertThat(minus.stepV()).isEqualTo(evaluation.steps().undershootV());
        assertThat(evaluation.window().plus().stepV()).isEqualTo(evaluation.steps().overshootV());
        assertThat(minus.setPointV() + minus.regulationV() + minus.halfRippleV() + minus.stepV() + minus.leftV())
                .isCloseTo(minus.allowedV(), within(1e-12));
    }

    @Test
    void windowOnBothSidesOfEachOfItsLimits() {
        WindowShares shares = Evaluation.evaluate(Rails.sound().withRail(oneInput())).window();
        double plus = shares.plus().totalV();
        double minus = shares.minus().totalV();
        assertThat(window(plus * 1.0001, minus * 1.0001).outcome()).isEqualTo(Outcome.MET);
        assertThat(window(plus * 0.9999, minus * 1.5).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(window(plus * 0.9999, minus * 1.5).sentence()).contains("above nominal");
        assertThat(window(plus * 1.5, minus * 0.9999).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(window(plus * 1.5, minus * 0.9999).sentence()).contains("below nominal");
    }

    private static Verdict window(double plusV, double minusV) {
        RailFigures rail = Rails.with(oneInput(), new VoltageWindow(plusV, minusV, 0.033, 0.01, Rails.CITATION));
        return Evaluation.evaluate(Rails.sound().withRail(rail)).verdict(Requirement.WINDOW);
    }

    @Test
    void aStepWithoutAControlLeavesTheWindowUnknown() {
        RailFigures rail = Rails.with(oneInput(), Rails.converter((ControlFigures) null));
        Verdict verdict = Evaluation.evaluate(Rails.sound().withRail(rail)).verdict(Requirement.WINDOW);
        assertThat(verdict.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(verdict.margin()).isNull();
    }

    @Test
    void withoutAStepTheWindowHoldsRippleAndAccuracyOnly() {
        RailFigures rail = Rails.with(oneInput(), (LoadStep) null);
        Evaluation evaluation = Evaluation.evaluate(Rails.sound().withRail(rail));
        assertThat(evaluation.window().plus().stepV()).isZero();
        assertThat(evaluation.verdict(Requirement.WINDOW).outcome()).isEqualTo(Outcome.MET);
        assertThat(evaluation.verdict(Requirement.DEVIATION).outcome()).isEqualTo(Outcome.NOT_ASKED);
    }

    @Test
    void theBankAloneStandsBesideTheLoop() {
        Evaluation evaluation = Evaluation.evaluate(Rails.sound());
        assertThat(evaluation.stepsAlone().undershootV()).isGreaterThan(evaluation.steps().undershootV());
    }

    private static Evaluation stepped(double toA, double slewAPerS) {
        return Evaluation.evaluate(Rails.sound().withRail(Rails.with(oneInput(), new LoadStep(1, toA, slewAPerS, 0.1, Rails.CITATION))));
    }

    /** 0.2 A within 20 us ask for far less than the inductor can give. */
    @Test
    void whereNoLimitIsMetNothingStandsBesideTheStep() {
        Evaluation evaluation = stepped(1.2, 1e4);
        assertThat(evaluation.steps().metLimit()).isFalse();
        assertThat(evaluation.stepsUnlimited()).isNull();
        assertThat(evaluation.dynamics()).noneMatch(figure -> figure.name().contains("without duty limits"));
        StepResult linear = org.stillrail.electrical.step.LoadStep.of(request(evaluation, new Load(1, 1.2, 1e4)).unlimited());
        assertThat(linear.deviationV()).containsExactly(evaluation.steps().step().deviationV(), within(1e-9));
    }

    @Test
    void whereALimitIsMetTheLinearResponseStandsBesideTheStep() {
        Evaluation evaluation = stepped(15, 100e6);
        assertThat(evaluation.steps().step().metLimit()).isTrue();
        assertThat(evaluation.steps().release().metLimit()).isTrue();
        StepPair unlimited = evaluation.stepsUnlimited();
        StepResult linear = org.stillrail.electrical.step.LoadStep.of(request(evaluation, new Load(1, 15, 100e6)).unlimited());
        assertThat(unlimited.step().deviationV()).containsExactly(linear.deviationV(), within(1e-6 * linear.undershootV()));
        assertThat(unlimited.step().timeS()).containsExactly(evaluation.steps().step().timeS());
        assertThat(unlimited.metLimit()).isFalse();
        assertThat(unlimited.release().overshootV()).as("linear, so the way back mirrors it").isEqualTo(unlimited.step().undershootV());
        assertThat(figure(evaluation, "Undershoot without duty limits").shown()).isEqualTo(unlimited.undershootV())
                .isLessThan(figure(evaluation, "Undershoot").shown());
        assertThat(figure(evaluation, "Overshoot without duty limits").shown()).isEqualTo(unlimited.overshootV())
                .isLessThan(figure(evaluation, "Overshoot").shown());
        assertThat(figure(evaluation, "Overshoot without duty limits").note()).startsWith("the duty meets a limit after the step and after the release");
    }

    /** As the page asks for it, at the nominal corner. */
    private static StepRequest request(Evaluation evaluation, Load load) {
        PowerStage stage = new PowerStage(12, Rails.OUTPUT_V, 2.2e-6, 0.01, Rails.SWITCHING_HZ, 1);
        Converter converter = new Converter(stage, new VoltageMode(1, 0.5 / Rails.SWITCHING_HZ), evaluation.loop().compensator());
        double[] timeS = evaluation.steps().step().timeS();
        return StepRequest.of(evaluation.input().bank(), converter, load, timeS[timeS.length - 1]).withSamples(timeS.length);
    }

    private static DynamicFigure figure(Evaluation evaluation, String name) {
        return evaluation.dynamics().stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void loopAndStepOfAnotherConverterAreNotModelledButItsRippleIs() {
        RailFigures rail = Rails.with(Rails.with(Rails.everything(), Rails.converter(Topology.BOOST)), new InputRange(1.8, 2.5, 3));
        Evaluation evaluation = Evaluation.evaluate(Rails.sound().withRail(rail));
        for (Requirement requirement : List.of(Requirement.DAMPING, Requirement.DEVIATION, Requirement.BULK_CHARGE, Requirement.WINDOW)) {
            assertThat(evaluation.verdict(requirement).outcome()).isEqualTo(Outcome.NOT_MODELLED);
            assertThat(evaluation.verdict(requirement).sentence()).contains("boost");
        }
        assertThat(evaluation.verdict(Requirement.RIPPLE).value()).isPositive();
        assertThat(evaluation.verdict(Requirement.RIPPLE).corner()).isEqualTo("lowest input (1.8 V)");
        assertThat(evaluation.claim().sentence()).contains("3 of 5 limits met");
    }

    @Test
    void nothingOfAFlybackOfUnknownTurnsIsModelledButItsImpedance() {
        RailFigures rail = Rails.with(Rails.everything(), Rails.converter(Topology.FLYBACK));
        Evaluation evaluation = Evaluation.evaluate(Rails.sound().withRail(rail));
        for (Requirement requirement : List.of(Requirement.RIPPLE, Requirement.QUIET_BAND, Requirement.DAMPING, Requirement.WINDOW)) {
            assertThat(evaluation.verdict(requirement).outcome()).isEqualTo(Outcome.NOT_MODELLED);
        }
        assertThat(evaluation.verdict(Requirement.VOLTAGE_RATING).outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(evaluation.ripple()).isNull();
        assertThat(evaluation.claim().fits()).isFalse();
    }

    /** 2 mohm under 1 to 5 A: the set-point stands 2 mV and 10 mV below nominal, and falls by 8 mV in between. */
    @Test
    void aLoadLineCountsInTheDeviationAndMovesTheWindow() {
        LoadStep asked = Rails.everything().loadStep();
        LoadStep drooping = new LoadStep(asked.fromA(), asked.toA(), asked.slewAPerS(), asked.allowedDeviationV(), Rails.CITATION, null, 2e-3);
        Evaluation straight = Evaluation.evaluate(Rails.sound());
        Evaluation drooped = Evaluation.evaluate(Rails.sound().withRail(Rails.with(Rails.everything(), drooping)));
        double[] deviationV = drooped.steps().step().deviationV();
        assertThat(deviationV[deviationV.length - 1]).isCloseTo(-8e-3, within(1e-4));
        assertThat(drooped.steps().step().settledAtS()).isNotNull();
        assertThat(drooped.steps().release().settledAtS()).isNotNull();
        assertThat(drooped.verdict(Requirement.DEVIATION).sentence()).contains("The load line moves the set-point by 8 mV of it.");
        StepPair steps = drooped.steps();
        assertThat(steps.belowNominalV(drooping)).isEqualTo(Math.max(2e-3 + steps.step().undershootV(), 10e-3 + steps.release().undershootV()));
        assertThat(steps.aboveNominalV(drooping)).isEqualTo(
                Math.max(0, Math.max(steps.step().overshootV() - 2e-3, steps.release().overshootV() - 10e-3)));
        assertThat(drooped.window().plus().stepV()).isLessThan(straight.window().plus().stepV());
        assertThat(drooped.loop().closedImpedanceOhm()[0]).isCloseTo(2e-3, within(2e-4));
    }

    /** The path of 1 mohm adds to the load line where the converter's node is sensed; where the load is, the output falls by the load line alone. */
    @ParameterizedTest
    @CsvSource({"CONVERTER, 12e-3", "LOAD, 8e-3"})
    void aLoadLineWithAPathLeavesItsShareOfTheStep(Node sense, double fallsV) {
        LoadStep asked = Rails.everything().loadStep();
        LoadStep drooping = new LoadStep(asked.fromA(), asked.toA(), asked.slewAPerS(), asked.allowedDeviationV(), Rails.CITATION, null, 2e-3);
        EvaluationInput input = Rails.sound().withRail(Rails.with(Rails.everything(), drooping))
                .withDistance(new Distance(new SeriesPath(1e-3, 1e-9), sense, null));
        Evaluation evaluation = Evaluation.evaluate(input);
        assertThat(evaluation.verdict(Requirement.DEVIATION).outcome()).isIn(Outcome.MET, Outcome.NOT_MET);
        double[] deviationV = evaluation.steps().step().deviationV();
        assertThat(deviationV[deviationV.length - 1]).isCloseTo(-fallsV, within(1e-4));
        assertThat(evaluation.loop().closedImpedanceOhm()[0]).isCloseTo(fallsV / 4, within(2e-4));
    }
}

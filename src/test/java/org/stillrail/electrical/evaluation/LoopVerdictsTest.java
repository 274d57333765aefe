package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.EsrWindow;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoopMarginLimits;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.TeamSettings;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Damping and the ESR window. */
class LoopVerdictsTest {

    private static final double CROSSOVER_HZ = 40e3;

    private static RailFigures oneInput() {
        return Rails.with(Rails.everything(), InputRange.fixed(12));
    }

    private static EvaluationInput sound() {
        return Rails.sound().withRail(oneInput());
    }

    /**
     * 1 / |1 + T| from the definition of T in voltage mode, {@code T = C Vin / Vramp Zbank / (Zbank + sL + R) exp(-s delay)},
     * on a dense grid; derived here, independent of the loop's code.
     */
    private static double peak(Evaluation evaluation, double inputV) {
        Bank bank = evaluation.input().bank();
        Compensator compensator = evaluation.loop().compensator();
        double peak = 0;
        for (int i = 0; i <= 20_000; i++) {
            double hz = CROSSOVER_HZ / 3 * Math.pow(9, i / 20_000.0);
            double omega = 2 * Math.PI * hz;
            ImpedancePoint point = bank.at(hz);
            Complex z = new Complex(point.resistanceOhm(), point.reactanceOhm());
            Complex t = compensator.at(hz).times(z.over(z.plus(new Complex(0.01, omega * 2.2e-6))))
                    .times(Complex.polar(inputV, -omega * 0.5 / Rails.SWITCHING_HZ));
            peak = Math.max(peak, 1 / Complex.ONE.plus(t).magnitude());
        }
        return peak;
    }

    @Test
    void dampingOnBothSidesOfTheTeamsPeak() {
        double peak = peak(Evaluation.evaluate(sound()), 12);
        Verdict met = Evaluation.evaluate(sound().withSettings(TeamSettings.DEFAULT.withLargestSensitivityPeak(peak * 1.002)))
                .verdict(Requirement.DAMPING);
        Verdict notMet = Evaluation.evaluate(sound().withSettings(TeamSettings.DEFAULT.withLargestSensitivityPeak(peak * 0.998)))
                .verdict(Requirement.DAMPING);
        Check.that(Topic.DAMPING, "Peak of 1 / |1 + T| from a third of the crossover to three times it, as the verdict gives it")
                .source(Source.independent("T written out from its definition in the test, 20 001 frequencies")).expected("", peak).relative(1e-3)
                .got(met.value());
        assertThat(met.outcome()).isEqualTo(Outcome.MET);
        assertThat(notMet.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(notMet.margin()).isNegative();
        assertThat(notMet.sentence()).contains("ESR at the crossover").contains("'polymer'");
        assertThat(notMet.span().fromHz()).isCloseTo(CROSSOVER_HZ / 3, within(1.0));
        assertThat(notMet.span().toHz()).isCloseTo(CROSSOVER_HZ * 3, within(10.0));
    }

    /** Bulk inductance and flat capacitance resonate near 33 kHz, between a third of the crossover at 60 kHz and the crossover. */
    private static EvaluationInput ringing(double flatOhm) {
        RailFigures rail = Rails.with(oneInput(), Rails.converter(Rails.placed(60e3, 60)));
        return Rails.input(rail, Rails.inline("bulk", 1, 2e-3, 0.002, 60e-9), Rails.inline("flat", 1, 470e-6, flatOhm, 1e-9));
    }

    @Test
    void aRingInTheDampingBandIsNotMetWhateverTheLoopSays() {
        Verdict verdict = Evaluation.evaluate(ringing(0.001)).verdict(Requirement.DAMPING);
        assertThat(verdict.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(verdict.limit()).isEqualTo(1);
        assertThat(verdict.value()).isGreaterThan(1);
        assertThat(verdict.sentence()).contains("'bulk' rings against 'flat'");
    }

    @Test
    void resistanceInTheRingMakesItHarmless() {
        Evaluation evaluation = Evaluation.evaluate(ringing(0.03));
        assertThat(evaluation.verdict(Requirement.DAMPING).limit()).isEqualTo(TeamSettings.DEFAULT.largestSensitivityPeak());
    }

    @Test
    void aRefusedDesignLeavesTheLoopUnknownInItsOwnWords() {
        RailFigures rail = Rails.with(oneInput(), Rails.converter(Rails.placed(400e3, 60)));
        Evaluation evaluation = Evaluation.evaluate(Rails.sound().withRail(rail));
        for (Requirement requirement : List.of(Requirement.DAMPING, Requirement.DEVIATION, Requirement.WINDOW)) {
            assertThat(evaluation.verdict(requirement).outcome()).isEqualTo(Outcome.UNKNOWN);
            assertThat(evaluation.verdict(requirement).sentence()).contains("half the switching frequency");
        }
        assertThat(evaluation.loop()).isNull();
        assertThat(evaluation.claim().fits()).isFalse();
    }

    @Test
    void anUnstableLoopIsNotMetAndHasNoStep() {
        ControlFigures control = new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, 1.0, null, null, null, 1e7, List.of(), List.of(), null, null);
        Evaluation evaluation = Evaluation.evaluate(Rails.sound().withRail(Rails.with(oneInput(), Rails.converter(control))));
        assertThat(evaluation.verdict(Requirement.DAMPING).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(evaluation.verdict(Requirement.DAMPING).sentence()).contains("unstable");
        assertThat(evaluation.verdict(Requirement.DEVIATION).outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(evaluation.verdicts().get(0).requirement()).isEqualTo(Requirement.DAMPING);
    }

    @Test
    void aGivenCompensatorSetsTheCrossoverThatTheBankIsReadAt() {
        Compensator placed = Evaluation.evaluate(sound()).loop().compensator();
        ControlFigures control = new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, 1.0, null, null, null, placed.gain(), placed.zerosHz(),
                placed.polesHz(), null, null);
        Evaluation given = Evaluation.evaluate(sound().withRail(Rails.with(oneInput(), Rails.converter(control))));
        assertThat(given.frequencies().crossoverHz()).isCloseTo(CROSSOVER_HZ, within(1.0));
        assertThat(given.frequencies().crossoverGiven()).isTrue();
    }

    @Test
    void aCompensatorGivenByItsPartsIsTheSameLoop() {
        Compensator placed = Evaluation.evaluate(sound()).loop().compensator();
        ControlFigures control = new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, 1.0, null, null, null, null, null, null, null, null,
                CompensatorParts.of(placed, 10e3));
        Evaluation given = Evaluation.evaluate(sound().withRail(Rails.with(oneInput(), Rails.converter(control))));
        assertThat(given.loop().crossoverHz()).isCloseTo(CROSSOVER_HZ, within(1.0));
        assertThat(given.loop().phaseMarginDeg()).isCloseTo(Evaluation.evaluate(sound()).loop().phaseMarginDeg(), within(1e-6));
    }

    private static RailFigures asking(Double phaseDeg, Double gainDb) {
        RailFigures rail = oneInput();
        return new RailFigures(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.input(), rail.converter(), rail.ripple(), rail.window(), rail.loadStep(),
                rail.esrWindow(), rail.ambient(), rail.life(), rail.space(), rail.startUp(), rail.bleed(),
                new LoopMarginLimits(phaseDeg, gainDb, Rails.CITATION));
    }

    private static Verdict asked(Requirement requirement, Double phaseDeg, Double gainDb) {
        return Evaluation.evaluate(sound().withRail(asking(phaseDeg, gainDb))).verdict(requirement);
    }

    @Test
    void marginsAreJudgedWhereTheRailAsksForThem() {
        double leastDeg = Rails.verdicts(sound()).figures().stream().mapToDouble(each -> each.loop().value().phaseMarginDeg()).min().orElseThrow();
        Verdict met = asked(Requirement.PHASE_MARGIN, leastDeg - 0.01, null);
        assertThat(met.outcome()).isEqualTo(Outcome.MET);
        assertThat(met.value()).isCloseTo(leastDeg, within(1e-9));
        assertThat(asked(Requirement.PHASE_MARGIN, leastDeg + 0.01, null).outcome()).isEqualTo(Outcome.NOT_MET);
        double leastDb = Rails.verdicts(sound()).figures().stream().mapToDouble(each -> each.loop().value().gainMarginDb()).min().orElseThrow();
        assertThat(asked(Requirement.GAIN_MARGIN, null, leastDb - 0.01).outcome()).isEqualTo(Outcome.MET);
        Verdict missed = asked(Requirement.GAIN_MARGIN, null, leastDb + 0.01);
        assertThat(missed.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(missed.citation()).isEqualTo(Rails.CITATION);
        assertThat(asked(Requirement.GAIN_MARGIN, 45.0, null).outcome()).isEqualTo(Outcome.NOT_ASKED);
        assertThat(Evaluation.evaluate(sound()).verdict(Requirement.PHASE_MARGIN).outcome()).isEqualTo(Outcome.NOT_ASKED);
    }

    @Test
    void anUnstableLoopHasNoMargin() {
        ControlFigures control = new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, 1.0, null, null, null, 1e7, List.of(), List.of(), null, null);
        RailFigures asking = asking(45.0, 8.0);
        RailFigures unstable = new RailFigures(asking.nominalVoltageV(), asking.nominalCurrentA(), asking.input(), Rails.converter(control), asking.ripple(),
                asking.window(), asking.loadStep(), asking.esrWindow(), asking.ambient(), asking.life(), asking.space(), null, null, asking.margins());
        for (Requirement requirement : List.of(Requirement.PHASE_MARGIN, Requirement.GAIN_MARGIN)) {
            Verdict verdict = Evaluation.evaluate(sound().withRail(unstable)).verdict(requirement);
            assertThat(verdict.outcome()).isEqualTo(Outcome.NOT_MET);
            assertThat(verdict.sentence()).contains("unstable");
        }
    }

    @Test
    void currentModeIsJudgedToo() {
        ControlFigures control = new ControlFigures(ControlFigures.Kind.CURRENT_MODE, null, 0.05, 3e6, null, null, null, null, 40e3, 60.0);
        Evaluation evaluation = Evaluation.evaluate(sound().withRail(Rails.with(oneInput(), Rails.converter(control))));
        assertThat(evaluation.verdict(Requirement.DAMPING).outcome()).isEqualTo(Outcome.MET);
        assertThat(evaluation.loop().phaseMarginDeg()).isCloseTo(60, within(0.01));
    }

    @Test
    void withoutAControlThereIsNoLoopToAskAbout() {
        Evaluation evaluation = Evaluation.evaluate(Rails.input(Rails.rippleOnly(0.1), Rails.polymer(1)));
        assertThat(evaluation.verdict(Requirement.DAMPING).outcome()).isEqualTo(Outcome.NOT_ASKED);
        assertThat(evaluation.verdict(Requirement.DEVIATION).outcome()).isEqualTo(Outcome.NOT_ASKED);
        assertThat(evaluation.loop()).isNull();
        assertThat(evaluation.steps()).isNull();
    }

    @Test
    void esrWindowOnBothSidesOfBothBounds() {
        double ohm = Evaluation.evaluate(sound()).atCrossover().resistanceOhm();
        assertThat(esr(ohm * 0.999, null).outcome()).isEqualTo(Outcome.MET);
        assertThat(esr(ohm * 1.001, null).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(esr(null, ohm * 1.001).outcome()).isEqualTo(Outcome.MET);
        assertThat(esr(null, ohm * 0.999).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(esr(ohm * 0.9, ohm * 1.3).margin()).isCloseTo((ohm - ohm * 0.9) / (ohm * 0.9), within(1e-9));
        assertThat(esr(null, null).outcome()).isEqualTo(Outcome.NOT_ASKED);
        assertThat(Evaluation.evaluate(sound()).verdict(Requirement.ESR_WINDOW).outcome()).isEqualTo(Outcome.NOT_ASKED);
    }

    private static Verdict esr(Double least, Double most) {
        RailFigures rail = Rails.with(oneInput(), new EsrWindow(least, most, Rails.CITATION));
        return Evaluation.evaluate(Rails.sound().withRail(rail)).verdict(Requirement.ESR_WINDOW);
    }
}

package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.damping.OptimalDamping;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;

/** Figures of loop, load step and damping beside the verdicts. */
class DynamicFigureTest {

    private static DynamicFigure figure(Evaluation evaluation, String name) {
        return evaluation.dynamics().stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void theWorstPhaseMarginIsTheLeastOverTheCornersAndNamesItsCorner() {
        EvaluationInput input = Rails.sound();
        DynamicFigure margin = figure(Evaluation.evaluate(input), "Phase margin");
        CornerFigures least = null;
        for (CornerFigures each : Rails.verdicts(input).figures()) {
            if (least == null || each.loop().value().phaseMarginDeg() < least.loop().value().phaseMarginDeg()) {
                least = each;
            }
        }
        assertThat(margin.worst()).isEqualTo(least.loop().value().phaseMarginDeg()).isLessThan(margin.shown());
        assertThat(margin.corner()).isEqualTo(least.corner().name());
        assertThat(margin.shown()).isCloseTo(60, within(1e-6));
    }

    @Test
    void noSingleStepDoesMoreThanTheWorstPattern() {
        Evaluation evaluation = Evaluation.evaluate(Rails.sound());
        DynamicFigure pattern = figure(evaluation, "Worst load pattern");
        assertThat(pattern.shown()).isGreaterThanOrEqualTo(figure(evaluation, "Undershoot").shown() * (1 - 1e-6));
        assertThat(pattern.note()).contains("one step alone");
    }

    /** What was found by adding up swings is what the pattern does when it is run as a load. */
    @Test
    void thePatternThatIsDrawnDoesWhatItsFigureSays() {
        Evaluation evaluation = Evaluation.evaluate(Rails.sound());
        LoadPattern pattern = evaluation.pattern();
        double[] deviationV = pattern.linear().deviationV();
        double largestV = Math.max(pattern.linear().undershootV(), pattern.linear().overshootV());
        assertThat(largestV).isCloseTo(pattern.worst().deviationV(), withinPercentage(0.5));
        assertThat(pattern.linear().undershootAtS()).isCloseTo(pattern.worst().deviationAtS(), within(10e-9));
        assertThat(deviationV[0]).isZero();
        assertThat(pattern.limited().undershootV()).isPositive();
        assertThat(Arrays.stream(pattern.worst().course().loadA())).allMatch(loadA -> loadA > 1 - 1e-9 && loadA < 5 + 1e-9);
        assertThat(figure(evaluation, "Worst load pattern").shown()).isEqualTo(pattern.worst().deviationV());
    }

    @Test
    void theWorstOfTheStepIsTheValueOfItsVerdict() {
        Evaluation evaluation = Evaluation.evaluate(Rails.sound());
        assertThat(Math.max(figure(evaluation, "Undershoot").worst(), figure(evaluation, "Overshoot").worst()))
                .isEqualTo(evaluation.verdict(Requirement.DEVIATION).value());
    }

    @Test
    void theBankAloneStandsBesideTheStepAtTheSameInstant() {
        Evaluation evaluation = Evaluation.evaluate(Rails.sound());
        DynamicFigure alone = figure(evaluation, "Fall of the bank alone by then");
        assertThat(alone.shown()).isGreaterThan(figure(evaluation, "Undershoot").shown() * 0.8);
    }

    /** A band as wide as the deviation is never left; the narrower it is the longer it takes. */
    @Test
    void theTimeToSettleGoesWithTheBand() {
        LoadStep asked = Rails.everything().loadStep();
        double[] bandsV = {0.2, 0.02, 0.001};
        double[] last = {-1, -1};
        for (double bandV : bandsV) {
            LoadStep step = new LoadStep(asked.fromA(), asked.toA(), asked.slewAPerS(), asked.allowedDeviationV(), null, bandV, null);
            Evaluation evaluation = Evaluation.evaluate(Rails.sound().withRail(Rails.with(Rails.everything(), step)));
            DynamicFigure[] settled = {figure(evaluation, "Settled after the step"), figure(evaluation, "Settled after the release")};
            for (int i = 0; i < settled.length; i++) {
                assertThat(settled[i].shown()).isGreaterThan(last[i]);
                assertThat(settled[i].worst()).isGreaterThanOrEqualTo(settled[i].shown());
                last[i] = settled[i].shown();
            }
        }
        assertThat(asked.settledWithinV()).isCloseTo(0.01, within(1e-12));
    }

    @Test
    void thePeakOfTheClosedLoopIsTheWorstOverTheCornersAndAtLeastTheShownOne() {
        DynamicFigure peak = figure(Evaluation.evaluate(Rails.sound()), "Peak of the output impedance, loop closed");
        assertThat(peak.worst()).isGreaterThanOrEqualTo(peak.shown());
        assertThat(peak.corner()).isNotEmpty();
    }

    @Test
    void aFastLoopIsWarnedOfWhateverCornerIsShown() {
        ConverterFigures fast = Rails.converter(Rails.placed(0.19 * Rails.SWITCHING_HZ, 45));
        Evaluation evaluation = Evaluation.evaluate(Rails.sound().withRail(Rails.with(Rails.everything(), fast)));
        assertThat(evaluation.loop().crossoverHz()).isLessThan(0.2 * Rails.SWITCHING_HZ);
        assertThat(evaluation.warnings()).anyMatch(words -> words.matches("The crossover is above a fifth of the switching frequency at \\d+ of "
                + evaluation.corners().size() + " corners, .*bank alone.*"));
        assertThat(Evaluation.evaluate(Rails.sound()).warnings()).noneMatch(words -> words.contains("above a fifth"));
    }

    /** L dI^2 / 2 of 2.2 uH from 5 to 1 A into the bank's 500 uF or so at 3.3 V: sqrt(3.3^2 + L 16 / C) - 3.3. */
    @Test
    void theInductorsEnergyLiftsTheOutput() {
        Evaluation evaluation = Evaluation.evaluate(Rails.sound());
        double capacitanceF = ChargeNeed.capacitanceF(evaluation.shown().bank(), evaluation.frequencies().crossoverHz() / 3);
        assertThat(figure(evaluation, "Overshoot by the inductor's energy on release").shown())
                .isCloseTo(Math.sqrt(3.3 * 3.3 + 2.2e-6 * 16 / capacitanceF) - 3.3, within(1e-9));
    }

    @Test
    void dampingIsToldOfBulkBesideCeramicsOnly() {
        Evaluation mixed = Evaluation.evaluate(Rails.sound());
        DynamicFigure peak = figure(mixed, "Peak of bank and inductor, loop open");
        assertThat(peak.worst()).isGreaterThanOrEqualTo(peak.shown());
        assertThat(peak.note()).matches("with .* times as much bulk as ceramics .*\u03a9 would damp best; the bulk has .*\u03a9, (more than|less than|about) that");
        assertThat(figure(mixed, "Bulk over ceramics").shown()).isCloseTo(440.0 / 60, within(0.01));
        assertThat(Evaluation.evaluate(Rails.input(Rails.everything(), Rails.ceramic(8))).dynamics())
                .noneMatch(figure -> figure.name().equals("Best ESR of the bulk"));
    }

    /** 0.1 V over 4 A are 25 mohm. A bank of plain parts with just that ratio and its best ESR peaks at 25 mohm. */
    @Test
    void theLeastBulkKeepsThePeakAtTheTargetImpedance() {
        EvaluationInput input = Rails.sound();
        DynamicFigure least = figure(Evaluation.evaluate(input), "Least bulk over ceramics for the target impedance");
        double squared = 2.2e-6 / 60e-6 / (0.025 * 0.025);
        assertThat(least.shown()).isCloseTo(squared * (1 + Math.sqrt(1 + 4 / squared)), withinPercentage(0.01));
        assertThat(least.note()).contains("keep the peak at " + Words.quantity(0.025, "\u03a9"))
                .contains("the bank has " + Words.quantity(figure(Evaluation.evaluate(input), "Bulk over ceramics").shown(), "") + " times");
        double bestOhm = OptimalDamping.ofRatio(2.2e-6, 60e-6, least.shown()).resistanceOhm();
        EvaluationInput built = Rails.input(Rails.everything(),
                Rails.part("bulk", 1, Technology.POLYMER_ALUMINIUM, 6.3, new SeriesRlc(least.shown() * 60e-6, bestOhm, 0)),
                Rails.part("ceramics", 1, Technology.CERAMIC_CLASS_2, 10, new SeriesRlc(60e-6, 0, 0)));
        assertThat(figure(Evaluation.evaluate(built), "Peak of bank and inductor, loop open").shown()).isCloseTo(0.025, withinPercentage(0.1));
    }

    @Test
    void withoutALoadStepThereIsNoPatternAndNoTarget() {
        assertThat(Evaluation.evaluate(Rails.sound().withRail(Rails.with(Rails.everything(), (LoadStep) null))).dynamics())
                .noneMatch(figure -> figure.name().equals("Worst load pattern")).noneMatch(figure -> figure.name().contains("target impedance"))
                .anyMatch(figure -> figure.name().equals("Bulk over ceramics"));
    }

    @Test
    void aBoostHasNone() {
        EvaluationInput boost = Rails.sound().withRail(Rails.with(Rails.with(Rails.everything(), Rails.converter(Topology.BOOST)), new InputRange(1.8, 2.5, 3)));
        assertThat(Evaluation.evaluate(boost).dynamics()).isEqualTo(List.of());
    }
}

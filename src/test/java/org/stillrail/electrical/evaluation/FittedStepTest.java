package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.step.SeriesEquivalent;

/** The load step of branches that are no series R-L-C, in the verdicts and in what is drawn. */
class FittedStepTest {

    private static final SeriesRlc BULK = new SeriesRlc(330e-6, 0.02, 5e-9);
    private static final SeriesRlc CERAMIC = new SeriesRlc(22e-6, 0.004, 0.8e-9);

    /** What a bench would see of both in parallel: a part with two slopes, which no constant R, L and C has. */
    private static ImpedanceModel both() {
        Bank pair = new Bank(List.of(new Branch("bulk", 1, BULK, SeriesPath.NONE, SeriesPath.NONE),
                new Branch("ceramic", 4, CERAMIC, SeriesPath.NONE, SeriesPath.NONE)));
        FrequencyGrid points = FrequencyGrid.logSpaced(100, 1e8, 401);
        Curve z = pair.on(points).bank();
        double[] r = new double[points.size()];
        double[] x = new double[points.size()];
        for (int i = 0; i < r.length; i++) {
            r[i] = z.real(i);
            x[i] = z.imaginary(i);
        }
        return TableModel.of(points.toArray(), r, x);
    }

    private static EvaluationInput asOneTable() {
        return Rails.input(Rails.everything(), Rails.part("both", 1, Technology.HYBRID, 10, both()));
    }

    private static EvaluationInput asCircuits() {
        return Rails.input(Rails.everything(), Rails.part("bulk", 1, Technology.HYBRID, 10, BULK), Rails.part("ceramic", 4, Technology.HYBRID, 10, CERAMIC));
    }

    /** The reference is the exact step of the two circuits; their common equivalent at the crossover is far off. 0.2 % of the deviation. */
    @Test
    void aMeasuredPartIsJudgedByTheStepOfWhatWasMeasured() {
        Verdict circuits = Evaluation.evaluate(asCircuits()).verdict(Requirement.DEVIATION);
        Verdict table = Evaluation.evaluate(asOneTable()).verdict(Requirement.DEVIATION);
        assertThat(table.value()).isCloseTo(circuits.value(), within(2e-3 * circuits.value()));
        SeriesRlc equivalent = SeriesEquivalent.equivalent(both().at(40e3), 40e3);
        Verdict replaced = Evaluation.evaluate(Rails.input(Rails.everything(), Rails.part("both", 1, Technology.HYBRID, 10, equivalent)))
                .verdict(Requirement.DEVIATION);
        assertThat(Math.abs(replaced.value() - circuits.value())).isGreaterThan(0.03 * circuits.value());
    }

    @Test
    void theWindowHoldsTheSameSteps() {
        Evaluation table = Evaluation.evaluate(asOneTable());
        Evaluation circuits = Evaluation.evaluate(asCircuits());
        assertThat(table.window().minus().stepV()).isCloseTo(circuits.window().minus().stepV(), within(2e-3 * circuits.window().minus().stepV()));
    }

    @Test
    void whatIsDrawnTellsTheErrorOfItsFit() {
        assertThat(Evaluation.evaluate(asOneTable()).steps().fitErrorPercent()).isBetween(0.0, 1.0);
        assertThat(Evaluation.evaluate(asCircuits()).steps().fitErrorPercent()).isNull();
    }

    /** Corner by corner the screening may be off, but the verdict is never one of its figures. */
    @Test
    void theVerdictIsThatOfACornerThatWentThroughTheFits() {
        Judgement verdicts = Rails.verdicts(asOneTable());
        for (Requirement requirement : List.of(Requirement.DEVIATION, Requirement.WINDOW)) {
            CornerFigures setting = verdicts.setting(requirement);
            assertThat(setting.stepsFinal()).isTrue();
            assertThat(setting.steps().value()).isNotEqualTo(setting.screened().value());
        }
    }

    /** One ceramic more or fewer changes the step by a few per cent; the remedy says so to a hundredth of the deviation. */
    @Test
    void aRemedyIsToldInTheFitsFiguresToo() {
        EvaluationInput input = Rails.input(Rails.everything(), Rails.part("both", 2, Technology.HYBRID, 10, both()));
        double told = Rails.verdicts(input).withCount(0, 1).stream()
                .filter(verdict -> verdict.requirement() == Requirement.DEVIATION).findFirst().orElseThrow().value();
        double exact = Evaluation.evaluate(input.withCount(0, 1)).verdict(Requirement.DEVIATION).value();
        assertThat(told).isCloseTo(exact, within(0.05 * exact));
    }

    @Test
    void aPartWithoutAPassiveFitIsReplacedAndThePageSaysSo() {
        FrequencyGrid points = FrequencyGrid.logSpaced(100, 1e8, 301);
        double[] r = new double[301];
        double[] x = new double[301];
        BULK.addImpedanceTo(points, r, x);
        for (int i = 0; i < 100; i++) {
            r[i] = -0.05;
        }
        EvaluationInput input = Rails.input(Rails.with(Rails.everything(), new LoadStep(1, 5, 10e6, 0.2, Rails.CITATION)),
                Rails.part("odd", 1, Technology.HYBRID, 10, TableModel.of(points.toArray(), r, x)), Rails.ceramic(4));
        Evaluation evaluation = Evaluation.evaluate(input);
        assertThat(evaluation.warnings()).anyMatch(warning -> warning.contains("'odd'") && warning.contains("no passive fit"));
        assertThat(evaluation.verdict(Requirement.DEVIATION).sentence()).contains("'odd'").contains("no passive fit");
    }
}

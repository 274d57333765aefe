package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.evaluation.FigureComparison.Difference;
import org.stillrail.electrical.requirement.EsrWindow;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.Space;

/** Input and figures survive being stored, and what was stored is compared with what is worked out again. */
class StoredEvaluationTest {

    private static EvaluationInput input() {
        FrequencyGrid points = FrequencyGrid.logSpaced(100, 1e8, 121);
        double[] r = new double[121];
        double[] x = new double[121];
        new SeriesRlc(22e-6, 0.003, 0.8e-9).addImpedanceTo(points, r, x);
        BranchInput measured = new BranchInput("measured", 3, "TEST-7", Technology.CERAMIC_CLASS_2, 10.0,
                PartInput.fixed(TableModel.of(points.toArray(), r, x)), new SeriesPath(1e-4, 2e-10), new SeriesPath(0, 1e-10),
                "measured: test sweep", true).withEvidence(new BranchEvidence(2, null, List.of()));
        BranchInput datasheet = Rails.part("sheet", 1, Technology.HYBRID, 10, Rails.datasheet(2.2e-4, 0.08, 0.015, 3e-9));
        return Rails.input(Rails.with(Rails.with(Rails.everything(), new EsrWindow(1e-3, null, Rails.CITATION)),
                new Space(4e-3, null, new java.math.BigDecimal("4.20"), Rails.CITATION)), measured, datasheet, Rails.polymer(2));
    }

    @Test
    void inputIsReadBackAsItWas() {
        String stored = CanonicalJson.write(input());
        EvaluationInput read = CanonicalJson.read(stored, EvaluationInput.class);
        assertThat(CanonicalJson.write(read)).isEqualTo(stored);
        assertThat(read.rail()).isEqualTo(input().rail());
        assertThat(read.settings()).isEqualTo(input().settings());
    }

    @Test
    void inputReadBackGivesTheSameFigures() {
        EvaluationInput read = CanonicalJson.read(CanonicalJson.write(input()), EvaluationInput.class);
        assertThat(EvaluationFigures.of(Evaluation.evaluate(read))).isEqualTo(EvaluationFigures.of(Evaluation.evaluate(input())));
    }

    @Test
    void figuresAreReadBackAsTheyWere() {
        EvaluationFigures figures = EvaluationFigures.of(Evaluation.evaluate(input()));
        assertThat(CanonicalJson.read(CanonicalJson.write(figures), EvaluationFigures.class)).isEqualTo(figures);
    }

    @Test
    void aScratchBankIsStoredToo() {
        EvaluationInput scratch = Rails.input(Rails.rippleOnly(0.01), Rails.inline("typed", 1, 1e-4, 0.01, 1e-9));
        EvaluationFigures figures = EvaluationFigures.of(Evaluation.evaluate(scratch));
        assertThat(CanonicalJson.read(CanonicalJson.write(figures), EvaluationFigures.class)).isEqualTo(figures);
    }

    @Test
    void anOlderInputWithoutSettingsTakesTheDefaults() {
        String stored = CanonicalJson.write(Rails.sound());
        String older = stored.replaceFirst(",\"settings\":.*}$", "}");
        assertThat(older).doesNotContain("settings");
        assertThat(CanonicalJson.read(older, EvaluationInput.class)).isEqualTo(Rails.sound());
    }

    /** Before parts had ratings, every figure of stress was missing, so it is unknown now and nothing is made up. */
    @Test
    void anOlderInputWithoutRatingsIsReadAndItsStressUnknown() {
        String older = CanonicalJson.write(Rails.sound()).replaceAll(",\"ratings\":\\{(?:[^{}]|\\{[^{}]*\\})*\\}", "");
        assertThat(older).doesNotContain("ratings");
        EvaluationInput read = CanonicalJson.read(older, EvaluationInput.class);
        assertThat(read.branches()).allMatch(branch -> branch.ratings().equals(RatingInput.NONE));
        assertThat(Evaluation.evaluate(read).verdict(Requirement.TEMPERATURE).outcome()).isEqualTo(Outcome.UNKNOWN);
    }

    @Test
    void equalFiguresDoNotDiffer() {
        EvaluationFigures figures = EvaluationFigures.of(Evaluation.evaluate(input()));
        assertThat(FigureComparison.compare(figures, figures, 0)).isEmpty();
    }

    @Test
    void aChangedFigureIsNamedOutsideTheToleranceOnly() {
        EvaluationFigures stored = EvaluationFigures.of(Evaluation.evaluate(Rails.sound()));
        double limit = 0.03;
        EvaluationFigures other = EvaluationFigures.of(Evaluation.evaluate(
                Rails.sound().withRail(Rails.with(Rails.everything(), new RippleLimit(limit * (1 + 1e-4), Rails.CITATION)))));
        List<Difference> differences = FigureComparison.compare(stored, other, FigureComparison.TOLERANCE);
        assertThat(differences).extracting(Difference::name).containsExactlyInAnyOrder("ripple limit", "quiet-band limit");
        assertThat(differences.get(0).sentence()).startsWith("ripple limit was 0.03 and is now");
        assertThat(FigureComparison.compare(stored, other, 1e-3)).isEmpty();
    }

    @Test
    void aChangedOutcomeIsNamedWhateverTheTolerance() {
        EvaluationFigures stored = EvaluationFigures.of(Evaluation.evaluate(Rails.sound()));
        EvaluationFigures other = EvaluationFigures.of(Evaluation.evaluate(
                Rails.sound().withRail(Rails.with(Rails.everything(), (RippleLimit) null))));
        assertThat(FigureComparison.compare(stored, other, 10)).extracting(Difference::name)
                .contains("ripple outcome", "ripple value", "limits asked");
    }
}

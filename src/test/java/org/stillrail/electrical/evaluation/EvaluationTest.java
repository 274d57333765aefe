package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.VoltageWindow;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.Verdict;

/** The evaluation as a whole: claim, order, evidence, remedies, brackets. */
class EvaluationTest {

    private static EvaluationInput mixed() {
        return Rails.input(Rails.everything(),
                Rails.part("wet", 1, Technology.WET_ALUMINIUM, 10, Rails.datasheet(4.7e-4, 0.12, 0.05, 8e-9)),
                Rails.part("polymer", 2, Technology.POLYMER_ALUMINIUM, 6.3, Rails.datasheet(2.2e-4, 0.08, 0.015, 3e-9)),
                Rails.ceramic(4),
                Rails.part("small", 2, Technology.CERAMIC_CLASS_2, 16, new SeriesRlc(1e-6, 0.01, 5e-10)));
    }

    @Test
    void aSoundBankFitsAndSaysWhatIsNearestToItsLimit() {
        Evaluation evaluation = Evaluation.evaluate(Rails.sound());
        assertThat(evaluation.claim().fits()).isTrue();
        assertThat(evaluation.claim().met()).isEqualTo(10);
        assertThat(evaluation.claim().sentence()).matches("The bank fits: 10 limits met at the worst of " + evaluation.corners().size() + " corners\\..*")
                .contains(evaluation.verdicts().get(0).requirement().label() + " comes nearest to its limit");
    }

    @Test
    void aBankThatMissesALimitSaysWhichAndWhere() {
        EvaluationInput input = Rails.sound().withRail(Rails.with(Rails.everything(), new RippleLimit(0.003, Rails.CITATION)));
        Evaluation evaluation = Evaluation.evaluate(input);
        assertThat(evaluation.claim().fits()).isFalse();
        assertThat(evaluation.claim().sentence()).startsWith("The bank does not fit: 8 of 10 limits met")
                .contains(evaluation.claim().corner());
    }

    @Test
    void anUnknownVerdictKeepsABankFromFitting() {
        EvaluationInput input = Rails.input(Rails.rippleOnly(1), Rails.inline("typed", 1, 1e-4, 0.01, 1e-9));
        Evaluation evaluation = Evaluation.evaluate(input);
        assertThat(evaluation.claim().fits()).isFalse();
        assertThat(evaluation.claim().sentence()).contains("Voltage rating is unknown");
        assertThat(evaluation.weakestEvidence().kind()).isEqualTo(Evidence.Kind.UNKNOWN);
    }

    @Test
    void everyRequirementHasOneVerdictAndTheWorstComesFirst() {
        Evaluation evaluation = Evaluation.evaluate(mixed());
        assertThat(evaluation.verdicts()).extracting(Verdict::requirement).containsExactlyInAnyOrder(Requirement.values());
        assertThat(evaluation.verdicts()).isSortedAccordingTo(Verdict.WORST_FIRST);
    }

    @Test
    void theSameInputGivesTheSameFiguresToTheLastDigit() {
        assertThat(CanonicalJson.write(EvaluationFigures.of(Evaluation.evaluate(mixed()))))
                .isEqualTo(CanonicalJson.write(EvaluationFigures.of(Evaluation.evaluate(mixed()))));
    }

    @Test
    void theOrderOfBranchesDoesNotMatter() {
        EvaluationFigures expected = EvaluationFigures.of(Evaluation.evaluate(mixed()));
        List<BranchInput> branches = new ArrayList<>(mixed().branches());
        Random random = new Random(7);
        for (int i = 0; i < 3; i++) {
            Collections.shuffle(branches, random);
            EvaluationFigures shuffled = EvaluationFigures.of(Evaluation.evaluate(mixed().withBranches(branches)));
            assertThat(FigureComparison.compare(expected, shuffled, 1e-7)).isEmpty();
        }
    }

    @Test
    void remediesSayWhatTheChangedBankItselfSays() {
        RailFigures oneCondition = Rails.with(Rails.with(Rails.everything(), InputRange.fixed(12)),
                new VoltageWindow(0.165, 0.165, 0, 0.01, Rails.CITATION));
        EvaluationInput input = mixed().withRail(oneCondition);
        Evaluation now = Evaluation.evaluate(input);
        assertThat(now.remedies()).hasSize(8);
        for (Remedy remedy : now.remedies()) {
            Evaluation changed = Evaluation.evaluate(input.withCount(remedy.branch(), remedy.count()));
            for (VerdictChange change : remedy.changes()) {
                Verdict itself = changed.verdict(change.requirement());
                assertThat(change.after()).as("%s, %s", remedy.sentence(), change.requirement()).isEqualTo(itself.outcome());
                if (itself.margin() != null) {
                    assertThat(change.marginAfter()).as("%s, %s", remedy.sentence(), change.requirement()).isCloseTo(itself.margin(), within(2e-3));
                }
            }
        }
    }

    @Test
    void aVerdictThatOnePartWouldMendSaysSo() {
        double now = Evaluation.evaluate(Rails.input(Rails.rippleOnly(1), Rails.ceramic(4))).ripple().peakToPeakV();
        Evaluation evaluation = Evaluation.evaluate(Rails.input(Rails.rippleOnly(now * 0.9), Rails.ceramic(4)));
        assertThat(evaluation.verdict(Requirement.RIPPLE).outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(evaluation.verdict(Requirement.RIPPLE).explanation().whatWouldChange()).startsWith("One more 'ceramic' (5 in all) meets it.");
        assertThat(evaluation.remedies().get(0).mended()).extracting(VerdictChange::requirement).contains(Requirement.RIPPLE);
        assertThat(evaluation.remedies().get(1).broken()).isEmpty();
    }

    @Test
    void bracketsFollowTheLoopAndTheSwitching() {
        List<Bracket> brackets = Evaluation.evaluate(Rails.sound()).brackets();
        assertThat(brackets).extracting(Bracket::task)
                .containsExactly(Bracket.Task.HOLDS_CHARGE, Bracket.Task.CALMS_LOOP, Bracket.Task.SWALLOWS_SWITCHING);
        assertThat(brackets.get(1).fromHz()).isCloseTo(40e3 / 3, within(1.0));
        assertThat(brackets.get(2).toHz()).isEqualTo(10 * Rails.SWITCHING_HZ);
    }

    @Test
    void evidenceIsRankedFromTheWeakest() {
        BranchInput maximum = Rails.polymer(2).withEvidence(new BranchEvidence(null, BranchEvidence.EsrMeaning.MAXIMUM, List.of()));
        BranchInput estimated = Rails.part("film", 4, Technology.FILM, 10, new SeriesRlc(15e-6, 0.003, 0.7e-9)).withEvidence(new BranchEvidence(null, null, List.of("ESL is not given: taken as 0.6 nH.")));
        Evaluation evaluation = Evaluation.evaluate(Rails.input(Rails.everything(), maximum, estimated, Rails.ceramic(4)));
        assertThat(evaluation.evidence()).extracting(Evidence::kind).containsExactly(
                Evidence.Kind.TAKEN_AS_FLAT, Evidence.Kind.ESTIMATE, Evidence.Kind.DATASHEET_MAXIMUM);
        assertThat(evaluation.weakestEvidence().branch()).isEqualTo(2);
        assertThat(evaluation.weakestEvidence().sentence()).contains("no curve of capacitance over bias");
        assertThat(evaluation.evidence().get(1).sentence()).contains("ESL is not given");
        assertThat(evaluation.warnings()).anyMatch(warning -> warning.startsWith("Of 'ceramic' no tolerance, no curve of capacitance over bias"))
                .noneMatch(warning -> warning.contains("'film' no curve of capacitance over bias"));
    }

    @Test
    void whatPhysicsRefusesIsSaidInOneKindOfException() {
        double hz = Rails.SWITCHING_HZ;
        double inductance = 1 / (4 * Math.PI * Math.PI * hz * hz * 1e-6);
        assertThatThrownBy(() -> Evaluation.evaluate(Rails.input(Rails.rippleOnly(0.1), Rails.inline("lossless", 1, 1e-6, 0, inductance))))
                .isInstanceOf(EvaluationRefusedException.class).hasMessageContaining("lossless").hasMessageContaining("resonance");
        assertThatThrownBy(() -> Evaluation.evaluate(Rails.input(Rails.rippleOnly(0.1)))).isInstanceOf(EvaluationRefusedException.class)
                .hasMessageContaining("at least one branch");
        EvaluationInput tooLow = Rails.sound().withRail(Rails.with(Rails.everything(), InputRange.fixed(3)));
        assertThatThrownBy(() -> Evaluation.evaluate(tooLow)).isInstanceOf(EvaluationRefusedException.class).hasMessageContaining("outputV");
    }

    @Test
    void aStepThatCannotBeFollowedIsUnknownAndTheRestStands() {
        EvaluationInput input = Rails.sound().withRail(Rails.with(Rails.everything(), new LoadStep(1200, 1300, 10e6, 0.1, Rails.CITATION)));
        Evaluation evaluation = Evaluation.evaluate(input);
        assertThat(evaluation.verdict(Requirement.DEVIATION).outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(evaluation.verdict(Requirement.DEVIATION).sentence()).contains("steady state");
        assertThat(evaluation.verdict(Requirement.RIPPLE).outcome()).isEqualTo(Outcome.MET);
    }

    @Test
    void aStepThatTookTooLongIsNotTriedAgain() {
        EvaluationInput input = Rails.sound();
        CornerFigures nominal = Rails.verdicts(input).figures().get(0);
        Tried<StepPair> exhausted = new Tried<>(null, "too long", true);
        CornerFigures slow = new CornerFigures(nominal.corner(), nominal.bank(), nominal.ripplePeakToPeakV(), nominal.quiet(), nominal.loop(),
                exhausted, nominal.need(), null, exhausted, nominal.stress());
        Tried<Compensation> compensation = Compensation.of(input.rail(), input.bank());
        for (Probe probe : List.of(Probe.everything(slow, false), Probe.of(EnumSet.allOf(Probe.Item.class), slow))) {
            CornerFigures figures = CornerFigures.of(input, nominal.corner(), input.bank(), compensation, probe, Fits.none());
            assertThat(figures.steps()).isEqualTo(exhausted);
            assertThat(new DeviationJudge(input.rail()).at(figures).outcome()).isEqualTo(Outcome.UNKNOWN);
        }
    }
}

package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Verdicts on a bank at two nodes: all of them at the load. */
class TwoNodeEvaluationTest {

    private static final SeriesPath PLANE = new SeriesPath(1e-3, 0.5e-9);

    private static EvaluationInput at(Distance distance) {
        return Rails.input(Rails.everything(), Rails.polymer(2).withPlace(Node.CONVERTER, null), Rails.ceramic(4).withPlace(Node.LOAD, null))
                .withDistance(distance);
    }

    @ParameterizedTest
    @EnumSource(Node.class)
    void shortPathGivesTheVerdictsOfOneNode(Node sense) {
        Evaluation one = Evaluation.evaluate(Rails.sound());
        Evaluation two = Evaluation.evaluate(at(new Distance(new SeriesPath(1e-12, 1e-18), sense, null)));
        for (Verdict expected : one.verdicts()) {
            Verdict got = two.verdict(expected.requirement());
            assertThat(got.outcome()).as(expected.requirement().label()).isEqualTo(expected.outcome());
            if (expected.value() != null) {
                assertThat(got.value()).as(expected.requirement().label()).isCloseTo(expected.value(), withPercentage(0.1));
            }
        }
        assertThat(two.rippleAtConverter().peakToPeakV()).isCloseTo(one.ripple().peakToPeakV(), withPercentage(0.01));
        assertThat(two.steps().undershootV()).isCloseTo(one.steps().undershootV(), withPercentage(0.1));
    }

    /** Without inductance in the parts nothing jumps, so a plain sum of 2000 harmonics of the triangle on 8000 points tells: within 0.1 %. */
    @Test
    void converterCurrentIsFollowedToTheLoad() {
        EvaluationInput input = Rails.input(Rails.everything(),
                Rails.part("polymer", 2, Technology.POLYMER_ALUMINIUM, 6.3, new SeriesRlc(220e-6, 0.012, 0)).withPlace(Node.CONVERTER, null),
                Rails.part("ceramic", 4, Technology.CERAMIC_CLASS_2, 10, new SeriesRlc(15e-6, 0.003, 0)).withPlace(Node.LOAD, null));
        Evaluation evaluation = Evaluation.evaluate(input.withDistance(new Distance(new SeriesPath(2e-3, 5e-9), Node.LOAD, new SeriesRlc(1e-6, 1e-3, 0))));
        Bank bank = evaluation.shown().bank();
        Check.that(Topic.RIPPLE, "Bank at two nodes: ripple at the load and at the converter, peak to peak")
                .source(Source.independent("2000 harmonics of the triangle summed on 8000 points in the test"))
                .expected("V", peakToPeak(bank, Node.LOAD), peakToPeak(bank, Node.CONVERTER)).relative(1e-3)
                .got(evaluation.ripple().peakToPeakV(), evaluation.rippleAtConverter().peakToPeakV());
        assertThat(Ripple.quickPeakToPeakV(bank, new BuckCurrent(12, 3.3, 2.2e-6, 500e3, 1)))
                .isCloseTo(evaluation.ripple().peakToPeakV(), withPercentage(0.1));
        assertThat(evaluation.verdict(Requirement.RIPPLE).sentence()).contains("Ripple at the load").contains("at the converter's node");
        assertThat(evaluation.quiet()).allSatisfy(harmonic -> assertThat(harmonic.impedanceOhm())
                .isCloseTo(bank.nodesAt(harmonic.frequencyHz()).transfer().magnitude(), withPercentage(1e-6)));
        assertThat(evaluation.curves().bank().magnitude(500))
                .isCloseTo(bank.nodesAt(evaluation.curves().bank().grid().hz(500)).atLoad().magnitude(), withPercentage(1e-6));
    }

    private static double peakToPeak(Bank bank, Node read) {
        int n = 8000;
        double duty = 3.3 / 12;
        double peakToPeakA = (12 - 3.3) * duty / (2.2e-6 * 500e3);
        double[] v = new double[n];
        for (int k = 1; k <= 2000; k++) {
            // A triangle that rises for the share D and falls for the rest, by its Fourier coefficients.
            double b = peakToPeakA * Math.sin(k * Math.PI * duty) / (k * k * Math.PI * Math.PI * duty * (1 - duty));
            Complex z = read == Node.LOAD ? bank.nodesAt(k * 500e3).transfer() : bank.nodesAt(k * 500e3).atConverter();
            for (int i = 0; i < n; i++) {
                double angle = 2 * Math.PI * k * ((double) i / n - duty / 2);
                v[i] += b * (z.re() * Math.sin(angle) + z.im() * Math.cos(angle));
            }
        }
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (double each : v) {
            high = Math.max(high, each);
            low = Math.min(low, each);
        }
        return high - low;
    }

    /** Where the converter is sensed, the step leaves the path's drop at the load. */
    @Test
    void stepIsSeenAtTheLoad() {
        SeriesPath path = new SeriesPath(10e-3, 1e-9);
        Evaluation held = Evaluation.evaluate(at(new Distance(path, Node.CONVERTER, null)));
        Evaluation remote = Evaluation.evaluate(at(new Distance(path, Node.LOAD, null)));
        double[] deviation = held.steps().step().deviationV();
        assertThat(deviation[deviation.length - 1]).isCloseTo(-4 * 10e-3, withPercentage(5));
        double[] back = remote.steps().step().deviationV();
        assertThat(Math.abs(back[back.length - 1])).isLessThan(3e-3);
        assertThat(held.verdict(Requirement.DEVIATION).value()).isGreaterThan(40e-3);
    }

    /** 220 nH of path against 22 uF of the load: 72 kHz, between a third and three times the crossover of 40 kHz. */
    @Test
    void dampingNamesTheLoadsCapacitanceAsThePartner() {
        EvaluationInput input = Rails.input(Rails.everything(), Rails.ceramic(1).withPlace(Node.CONVERTER, null), Rails.polymer(4).withPlace(Node.CONVERTER, null))
                .withDistance(new Distance(new SeriesPath(1e-3, 220e-9), Node.CONVERTER, new SeriesRlc(22e-6, 1e-3, 0)));
        Verdict damping = Evaluation.evaluate(input).verdict(Requirement.DAMPING);
        assertThat(damping.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(damping.sentence()).contains("'polymer' rings against the load's capacitance at");
        assertThat(damping.explanation().whichBranch()).isEqualTo("'polymer' is the inductor there and the load's capacitance the capacitor.");
        assertThat(damping.branch()).isEqualTo(1);
    }

    @Test
    void branchThatOnlySwallowsTheConvertersCurrentIsNotIdle() {
        EvaluationInput input = Rails.input(Rails.everything(), Rails.polymer(2).withPlace(Node.LOAD, null), Rails.ceramic(4).withPlace(Node.LOAD, null),
                Rails.ceramic(2).withPlace(Node.CONVERTER, null)).withDistance(new Distance(new SeriesPath(5e-3, 220e-9), Node.CONVERTER, null));
        Evaluation evaluation = Evaluation.evaluate(input);
        assertThat(evaluation.idle()).extracting(IdleBranch::branch).doesNotContain(2);
    }

    @Test
    void storedInputGivesTheSameFigures() {
        EvaluationInput input = at(new Distance(PLANE, Node.LOAD, new SeriesRlc(1e-6, 1e-3, 1e-11)));
        EvaluationInput read = CanonicalJson.read(CanonicalJson.write(input), EvaluationInput.class);
        assertThat(read.distance()).isEqualTo(input.distance());
        EvaluationFigures figures = EvaluationFigures.of(Evaluation.evaluate(input));
        assertThat(EvaluationFigures.of(Evaluation.evaluate(read))).isEqualTo(figures);
        assertThat(figures.rippleAtConverterV()).isPositive();
        assertThat(CanonicalJson.write(EvaluationFigures.of(Evaluation.evaluate(Rails.sound())))).doesNotContain("rippleAtConverterV");
        assertThat(CanonicalJson.write(Rails.sound())).doesNotContain("distance", "node", "mountingSource");
    }

    @Test
    void everyBranchMayBeTakenAway() {
        Evaluation evaluation = Evaluation.evaluate(Rails.input(Rails.everything(), Rails.polymer(1).withPlace(Node.CONVERTER, null),
                Rails.ceramic(1).withPlace(Node.LOAD, null)).withDistance(new Distance(PLANE, Node.LOAD, null)));
        assertThat(evaluation.remedies()).hasSize(4);
        assertThat(evaluation.verdicts()).noneMatch(verdict -> verdict.requirement() == Requirement.RIPPLE && verdict.outcome() == Outcome.UNKNOWN);
        assertThat(List.of(evaluation.effects().get(0), evaluation.effects().get(1)))
                .allSatisfy(effect -> assertThat(effect.figures()).allSatisfy(figure -> assertThat(figure.none()).isNotNull()));
    }
}

package org.stillrail.electrical.evaluation;

import java.util.Comparator;
import java.util.List;
import org.stillrail.electrical.converter.LoopResult;
import org.stillrail.electrical.curve.Extremum;

/**
 * The figures of an evaluation that are kept with a review: verdicts and key numbers, no curves. SI units; null where the
 * evaluation has none.
 *
 * @param verdicts    in the order of the requirements
 * @param undershootV of the nominal corner, step and release; with {@code overshootV}
 * @param rippleAtConverterV peak to peak at the converter's node of a bank at two nodes
 */
public record EvaluationFigures(
        int methodVersion,
        boolean fits,
        int met,
        int asked,
        String claim,
        List<VerdictFigures> verdicts,
        double crossoverHz,
        Double phaseMarginDeg,
        Double gainMarginDb,
        Double sensitivityPeak,
        Boolean stable,
        Reading atCrossover,
        Reading atSwitching,
        List<Extremum> extrema,
        Double ripplePeakToPeakV,
        Double rippleRmsV,
        Double undershootV,
        Double overshootV,
        WindowShares window,
        Double rippleAtConverterV) {

    public EvaluationFigures {
        verdicts = List.copyOf(verdicts);
        extrema = List.copyOf(extrema);
    }

    public static EvaluationFigures of(Evaluation evaluation) {
        LoopResult loop = evaluation.loop();
        StepPair steps = evaluation.steps();
        return new EvaluationFigures(
                evaluation.input().methodVersion(), evaluation.claim().fits(), evaluation.claim().met(), evaluation.claim().asked(),
                evaluation.claim().sentence(),
                evaluation.verdicts().stream().map(VerdictFigures::of).sorted(Comparator.comparing(VerdictFigures::requirement)).toList(),
                evaluation.frequencies().crossoverHz(),
                loop == null ? null : loop.phaseMarginDeg(),
                loop == null ? null : loop.gainMarginDb(),
                loop == null ? null : (Double) loop.sensitivityPeak(),
                loop == null ? null : (Boolean) loop.stable(),
                evaluation.atCrossover(), evaluation.atSwitching(), finite(evaluation.extrema()),
                evaluation.ripple() == null ? null : (Double) evaluation.ripple().peakToPeakV(),
                evaluation.ripple() == null ? null : (Double) evaluation.ripple().rmsV(),
                steps == null ? null : (Double) steps.undershootV(),
                steps == null ? null : (Double) steps.overshootV(),
                evaluation.window(),
                evaluation.rippleAtConverter() == null ? null : (Double) evaluation.rippleAtConverter().peakToPeakV());
    }

    /** An extremum that nothing damps has no finite Q, which JSON cannot hold. */
    private static List<Extremum> finite(List<Extremum> extrema) {
        return extrema.stream()
                .filter(extremum -> Double.isFinite(extremum.qualityFactor()) && Double.isFinite(extremum.magnitudeOhm())).toList();
    }
}
